# O que os documentos em papel têm em comum.
paper-kind-driver-card = Cartão do motorista
paper-kind-sign-list = Lista de placas
paper-kind-driver-lesson = Aula do motorista
paper-kind-plan-report = Relatório do plano
paper-kind-authority-report = Relatório à autoridade viária
paper-issued = Plano { $plan }, emitido em { $date }
paper-draft = RASCUNHO, não emitido: não é para o motorista
paper-page = Página
paper-about = Transporte { $haul }, { $combination }
paper-about-units = Transporte { $haul }, { $combination }, unidades { $units }
paper-sources = Fontes
paper-source-what = O que se apoia nela
paper-source = Fonte
paper-source-standing = Quão segura é
paper-drawing = Desenho
paper-fill-in = Preencher
paper-unit = Unidade

# O comando.
paper-written = { $kind }: { $file }
paper-draft-note = rascunho: o plano do levantamento atual não foi emitido. Planos emitidos deste transporte: { $plans }; imprima um com --plan.
paper-draft-note-none = rascunho: nenhum plano deste transporte foi emitido; airtide plan SURVEY --haul NAME --issue faz isso.
paper-kind-setup-sheet = Folha de ajuste
paper-kind-commissioning-record = Ata de comissionamento
paper-kind-service-list = Lista de manutenção
paper-kind-recovery-procedure = Procedimento de desatolamento
paper-kind-approval-request = Pedido de aprovação
paper-more-pages = toma { $pages } páginas onde se pensam { $most }: em tamanho legível, { $channels } circuitos de ar e { $changes } pontos de mudança não cabem em { $paper }. Um --paper maior pode bastar.
