# O que decide a pressão mais baixa e a mais alta de uma faixa.
limit-load-table = tabela de carga e pressão
limit-load-power-law = carga pelo ponto nominal (lei de potência)
limit-low-speed-allowance = tolerância da tabela em baixa velocidade
limit-maker-row = linha aprovada pelo fabricante do pneu
limit-lowest-row = a mais baixa publicada: tabelas e prática não descem mais com este teto
limit-deflection = deflexão para o teto de velocidade
limit-bead = talão e aro
limit-wheel-valve = válvula de roda de fechamento automático, no maior frio
limit-flat-rule = via pública: abaixo da metade do máximo gravado conta como vazio
limit-roadside-hot = via pública: fiscalização de pneu quente
limit-permit-minimum = licença, mínimo
limit-permit-maximum = licença, máximo
limit-dual-gap = vão entre os pneus do rodado duplo
limit-mate-diameter = diâmetro do pneu par
limit-chains = correntes: pressão de estrada
limit-chains-shared = correntes em outro grupo do mesmo circuito de ar
limit-turning-scrub = arrasto em curva
limit-tire-heat = calor do pneu
limit-tire-maximum = máximo gravado no pneu
limit-rim-maximum = aro
limit-supply = pressão de alimentação com que se pode contar
limit-ground = solo (conselho)
limit-fixed = fixa: este grupo não tem circuito de ar
limit-hand-set = ajustada à mão no levantamento
limit-other-group = outro grupo de eixos do mesmo circuito de ar
limit-service-rule = 80 % da pressão necessária
limit-heavier-state = estado de carga desconhecido: usa-se o seguinte mais pesado
limit-unknown-trailer = reboque desconhecido: pressão de estrada
limit-restricted-speed = tabela de velocidade restrita

# O mesmo numa coluna.
limit-brief-load-table = tabela de carga
limit-brief-restricted-speed = tabela velocidade
limit-brief-maker-row = linha fabricante
limit-brief-deflection = deflexão
limit-brief-bead = talão
limit-brief-lowest-row = menor publicada
limit-brief-wheel-valve = válvula de roda
limit-brief-flat-rule = metade do máx
limit-brief-roadside-hot = fiscaliz. quente
limit-brief-dual-gap = vão do duplo
limit-brief-chains = correntes
limit-brief-turning-scrub = arrasto
limit-brief-tire-heat = calor do pneu
limit-brief-tire-maximum = máximo gravado
limit-brief-rim-maximum = aro
limit-brief-supply = alimentação
limit-brief-permit-minimum = licença
limit-brief-permit-maximum = licença
limit-brief-ground = solo (conselho)

# Por que uma célula não é possível.
why-overloaded = o pior pneu leva { $load }, mais que os { $highest } permitidos a { $cap }
why-too-fast = o teto de velocidade de { $cap } passa dos { $rated } do símbolo de velocidade do pneu
why-too-hot = o ar no pneu passa de { $highest } em qualquer pressão
why-duals-touch = os pneus do rodado duplo se tocam em qualquer pressão com distância de { $spacing }
why-no-deflection = nenhuma pressão mantém a deflexão abaixo de { $share }
why-empty-supply = seria preciso ajustar { $lowest }, e a alimentação chega a { $highest }
why-empty-rim = seria preciso ajustar { $lowest }, e o aro suporta { $highest }
why-empty-tire = seria preciso ajustar { $lowest }, e o máximo gravado é { $highest }
why-empty-permit = seria preciso ajustar { $lowest }, e a licença admite { $highest }
why-not-rated = o pneu não tem carga nominal para esta montagem

# O mesmo numa coluna.
why-brief-overloaded = SOBRECARGA
why-brief-too-fast = rápido demais
why-brief-too-hot = quente demais
why-brief-duals-touch = duplos se tocam
why-brief-no-deflection = deflexão
why-brief-not-rated = sem carga nominal
why-brief-empty-supply = acima da aliment.
why-brief-empty-rim = acima do aro
why-brief-empty-tire = acima do gravado
why-brief-empty-permit = acima da licença
