# A página do plano, de cima para baixo.
plan-title = Plano de pressão
plan-for-haul = Plano de pressão do transporte { $haul }
plan-combination = Composição
plan-route = Rota
plan-draft = Rascunho: não emitido, não é para o motorista
plan-issued = Plano { $number }, emitido em { $date }

plan-ladder = Escala
plan-rung = Degrau
plan-rungs = Degraus
plan-speed-cap = Teto de velocidade
plan-hold-limit = Limite de permanência
plan-hold-limit-both = { $time } ou { $distance }, o que vier primeiro; depois pare ou suba a pressão
plan-no-hold-limit = sem limite
plan-channel = Circuito de ar
plan-axle-group = Grupo de eixos
plan-load-state = Estado de carga
plan-laden = carregado
plan-empty = vazio
plan-chain-state = Correntes
plan-chains-on = montadas
plan-chains-off = retiradas
plan-value-to-set = Ajustar o controlador em
plan-cold-pressure = Pressão a frio
plan-deflection = Deflexão

plan-window = Faixa
plan-lowest = Menor
plan-highest = Maior
plan-minimum = Mínimo
plan-maximum = Máximo
plan-governed-by = Decide
plan-next-closest = Seguinte
plan-source = Fonte
plan-approval = Aprovação
plan-approval-maker = aprovado pelo fabricante do pneu
plan-approval-standard = dentro da norma
plan-approval-needed = a aprovar
plan-approval-not-possible = não é possível
plan-approval-expired = aprovação vencida em { $date }: volta a rascunho
plan-no-window = Não é possível: a menor permitida, { $lowest }, passa da maior permitida, { $highest }

plan-stack = O que foi somado
plan-stack-gauge = erro do manômetro
plan-stack-deadband = banda morta do controlador
plan-stack-duals = diferença no rodado duplo
plan-stack-load-share = divisão desigual da carga
plan-stack-warmest = pneu mais quente neste degrau
plan-stack-snap = até o passo seguinte do controlador
plan-stack-total = somado no total

plan-change-points = Pontos de mudança
plan-change-count = { $count ->
    [one] { $count } ponto de mudança
   *[other] { $count } pontos de mudança
}
plan-start-raising = COMECE A SUBIR
plan-start-lowering = COMECE A BAIXAR
plan-stop-and-change = PARE E MUDE
plan-lead = Antecedência
plan-reach-by = Completo em
plan-change-time = Tempo da mudança
plan-change-time-slow = Tempo, uma em dez viagens demora mais
plan-cap-while-changing = Teto de velocidade durante a mudança
plan-from-rung = De
plan-to-rung = Para

plan-cycle = Ciclo
plan-cycle-time = Tempo de um ciclo
plan-cycle-time-added = Acrescentado pelas mudanças de pressão
plan-cycle-fuel = Combustível de um ciclo
plan-compressor-loaded = Compressor em carga
plan-lowest-supply = Menor pressão de alimentação
plan-before-first-move = Antes da primeira saída
plan-before-first-move-raise = Suba a { $pressure } a frio antes de sair: depois da noite mais fria um pneu pode estar baixo demais
plan-shift-end = Fim de turno: suba à pressão de estrada antes de estacionar

plan-effects = O que isso muda
plan-cost = Custo
plan-what-decided = O que decidiu cada número
plan-cautions = Avisos
plan-problems = Não resolvido

plan-standing-read = lido na fonte
plan-standing-given = dado para esta frota
plan-standing-practice = prática comum, sem fonte
plan-standing-memory = de memória: compare com a fonte antes de usar
plan-extrapolated = fora do alcance da fonte

# A página num terminal: rótulos de tabelas e linhas curtas.
plan-route-forward = { $route }, { $length }; a carga vai no sentido crescente do estaqueamento
plan-route-backward = { $route }, { $length }; a carga vai no sentido decrescente do estaqueamento
plan-cold-named-at = Temperaturas
plan-temperatures = as pressões a frio são a { $reference }; planejado de { $coldest } a { $warmest }
plan-for-units = Unidades
plan-measured-delivery = a vazão do compressor
plan-measured-conductance = a condutância de { $channel }
plan-measured-tire-volume = o volume de ar dos pneus de { $channel }
plan-measured-counted = Contado: { $what } da unidade { $unit } é { $share } % da do seu tipo, medido em { $date }.
plan-measured-not-counted = Não contado: { $what } da unidade { $unit } é { $share } % da do seu tipo, medido em { $date }. As mudanças dela demoram mais do que aqui; planeje-a com --unit { $unit }.
plan-controller = Controlador
plan-controller-unit = trabalha em { $unit }
plan-controller-other-unit = trabalha em { $unit }; o valor a ajustar aparece também em { $unit }, e é esse que vale
plan-breaks-limits = { $count ->
    [one] NÃO RODE COM ESTE PLANO COMO ESTÁ: ele quebra um limite.
   *[other] NÃO RODE COM ESTE PLANO COMO ESTÁ: ele quebra { $count } limites.
}
plan-axle-groups = Grupos de eixos e cargas
plan-tire = Pneu
plan-tires = Pneus
plan-single = simples
plan-dual = duplos
plan-fixed-pressure = pressão fixa

plan-ladder-how = Ajustar: o que o controlador recebe, para o pneu mais quente do degrau. A frio: o que isso deixa num pneu frio. Menor e maior: a faixa, a frio.
plan-ladder-same = { $cells }: igual a { $chains }
plan-cap = Teto
plan-set = Ajustar
plan-cold = A frio
plan-channel-brief = Circuito
plan-approval-brief-maker = fabricante
plan-approval-brief-standard = norma
plan-cell-not-possible = { $cell } não é possível: { $why }.
plan-cell-hold = { $cell }: no máximo { $distance } por vez, pela linha do fabricante; depois pare ou suba a pressão.
plan-rung-unused = Este transporte não usa: { $rungs }.

plan-more-cells = { $count ->
    [one] Mais uma célula não é mostrada: outro estado de carga ou de correntes, degraus que este transporte não usa.
   *[other] Mais { $count } células não são mostradas: outros estados de carga e de correntes, degraus que este transporte não usa.
}
plan-more-not-possible = { $count ->
    [one] Uma delas não é possível – { $cells }.
   *[other] { $count } delas não são possíveis – { $cells }.
}
plan-more-possible = Todas são possíveis.
plan-more-how = Acrescente --full para ver tudo, com a conta inteira de cada número.
plan-decided-by = decide
plan-decided-lowest = menor
plan-decided-next = seguinte
plan-decided-set = ajustar
plan-decided-how = Menor: o limite que decidiu, a frio. Seguinte: o que decidiria sem ele. Ajustar: a menor e o que foi somado.
plan-decided-allowance = +{ $share }

plan-ground = o solo pediria { $advice } ou menos (conselho)
plan-stack-sealed-gauge = manômetro selado nesta altitude
plan-stack-hand-set = ajustado mais alto à mão
plan-stack-brief-gauge = manômetro
plan-stack-brief-deadband = banda morta
plan-stack-brief-duals = rodado duplo
plan-stack-brief-warmest = pneu quente e passo
plan-stack-brief-sealed-gauge = manômetro selado
plan-stack-brief-hand-set = à mão
plan-stack-sums-to = { $items }: ajustar { $set } (pneu mais quente { $warmest })
plan-deflection-then = deflexão { $percent } da altura da seção
plan-other-tire = onde o pneu { $tire } está montado
plan-worst-tire = { $load } no pior pneu
plan-covers = cobre { $speed }
plan-load-allowance = tolerância de carga { $share }
plan-pressure-added = { $pressure } somados pela linha
plan-deflection-at-most = no máximo { $share } da altura da seção
plan-from-reading = de { $pressure }
plan-at-temperature = a { $temperature }
plan-least-gap = { $gap } no mínimo
plan-standing-brief-read = lido
plan-standing-brief-given = dado
plan-standing-brief-memory = de memória

plan-fixed-groups = Grupos com pressão fixa
plan-worst-tire-load = Pior pneu
plan-holds-cold = Tem, a frio
plan-needs-cold = Precisa, a frio
plan-verdict = Veredito
plan-enough = suficiente
plan-too-low = BAIXA DEMAIS
plan-morning-after = Na manhã seguinte
plan-morning-how = Estacionado no degrau mais baixo, depois de uma noite a { $coldest }: o que o manômetro lê, e o que o pneu sem carga precisa ali.
plan-parked-on = Estacionado em
plan-reads = Lê
plan-needs = Precisa
plan-share = Parte
plan-may-move = pode sair
plan-raise-first = SUBA PRIMEIRO

plan-change-points-how = Na ordem da viagem. Comece no lugar ou antes; o novo teto de velocidade vale desde o início de uma baixa, e desde o fim de uma subida. { $times }
plan-times-nominal = Tempos e antecedências nominais, sem variação entre caminhões e viagens.
plan-times-sampled = Tempo: o meio de muitas viagens, entre parênteses o que nove em dez cumprem; as antecedências são para nove em dez.
plan-times-partly-sampled = Tempo: o meio de muitas viagens, entre parênteses o que nove em dez cumprem; as antecedências são para nove em dez. Tempo sem parênteses é nominal, e sua antecedência também.
plan-time-sampled = Tempo
    (9 em 10)
plan-does-not-fit-p90 = O ponto de mudança { $number } cabe numa viagem comum; mais de uma viagem em dez não termina onde deve.
plan-no-change-points = Nenhum: um só degrau serve a rota inteira.
plan-done-by = Pronto em
plan-run = Viagem { $load_state }
plan-number = N.º
plan-at = Em
plan-place = Lugar
plan-call = Ordem
plan-from-to = Degraus
plan-time = Tempo
plan-at-landmark = em { $landmark }
plan-before-landmark = { $distance } antes de { $landmark }
plan-beyond-landmark = { $distance } depois de { $landmark }
plan-does-not-fit = O ponto de mudança { $number } não cabe: a mudança não termina onde deve.
plan-refused-compressor-limit = O ponto de mudança { $number } terminaria a tempo, e é recusado: o compressor trabalharia sem pausa mais do que pode.
plan-refused-supply-before-descent = O ponto de mudança { $number } terminaria a tempo, e é recusado: os reservatórios não estariam na pressão de acionamento no topo da próxima descida longa.
plan-chosen-way = O ponto de mudança { $number } é feito assim: { $way }.
plan-other-ways = Ponto de mudança { $number }, outros jeitos: { $ways }.
plan-before-descent = O ponto de mudança { $number } fica mais cedo do que ficaria, porque não se toma ar numa descida longa nem logo antes.
plan-way-rolling = em movimento
plan-way-go-on-slowly = seguir no teto menor por { $distance } além do lugar
plan-way-lay-by = parar em { $place }, em { $km }, até terminar
plan-way-slower = rodar o trecho anterior a { $speed } em média
plan-way-other-rung = rodar no degrau { $rung }, alcançado a tempo
plan-way-more-air = { $times } vezes a vazão atual do compressor
plan-way-more-road = começar { $distance } antes
plan-loses = perde { $time }
plan-gains = ganha { $time }
plan-loses-nothing = não custa tempo
plan-wrong-road = pressão errada por { $distance }
plan-on-descent = { $what }, e enche pneus numa descida longa, onde os freios precisam do ar
plan-late = Se o motorista começa tarde: tempo, e estrada com a pressão errada; e o ar de cada mudança
plan-late-by = Tarde por { $distance }
plan-never = Nunca
plan-run-ends = a viagem acaba antes
plan-lowest-supply-brief = Aliment. mín.
plan-compressor-run = Compressor
    por vez

plan-laden-change = Das pressões vazio às pressões carregado
plan-way = Jeito
plan-time-lost = Tempo perdido
plan-ordered-at = Ordem em
plan-empty-road-hard = Vazio, com
    pressão carregado
plan-choice = Escolha
plan-chosen = escolhido
plan-chosen-not-possible = escolhido, NÃO É POSSÍVEL
plan-laden-not-allowed-while-loading = o levantamento não permite mudanças durante o carregamento
plan-laden-road-too-short = o último pedaço antes do carregamento é curto demais
plan-laden-never-complete = o ar não chega à pressão
plan-laden-why = { $way }: não é possível, { $why }.
plan-laden-rolling = em movimento, antes de carregar
plan-laden-while-loading = durante o carregamento
plan-laden-after-loading = parado, depois de carregar

plan-cycle-waited = Espera só pela pressão
plan-cycle-water = Água aspirada, para o secador
plan-cycles-per-day = Ciclos por dia
plan-part = Parte
plan-waited = Espera
plan-fuel = Combustível
plan-compressor-time = Compressor
plan-phase-shift-start = início de turno
plan-phase-empty = viagem vazio
plan-phase-loading = carregamento
plan-phase-laden = viagem carregado
plan-phase-unloading = descarga

plan-sources = Fontes
plan-cautions-broken = Isto quebra um limite. Não rode com o plano antes de corrigir:
plan-cautions-told = Também é preciso saber:

# Como uma escala foi achada.
plan-search = Por que esta escala
plan-search-asked = Busca: no máximo { $asked } degraus pedidos, { $found } ficam, de { $caps } tetos de velocidade entre { $lowest } e { $highest }.
plan-search-required = Exigidos pelo levantamento: { $caps }.
plan-search-term = Um ciclo leva
plan-search-amount = Quantidade
plan-search-price = Preço
plan-search-time = rodagem e espera
plan-search-hard-road = mais duro do que o solo pede, kPa km
plan-search-changes = mudanças
plan-search-compressor = compressor em carga
plan-search-in-all = no total
plan-search-price-time = { $price } por hora
plan-search-price-hard-road = { $price } por kPa km
plan-search-price-changes = { $price } por mudança
plan-search-price-compressor = { $price } por hora
plan-search-fewer-more = Um degrau a menos: { $difference } { $currency } a mais por ciclo.
plan-search-fewer-less = Um degrau a menos: { $difference } { $currency } a menos por ciclo.
plan-search-fewer-same = Um degrau a menos custa o mesmo.
plan-search-no-fewer = Um degrau a menos: nenhuma escala assim cobre todos os trechos.
plan-search-more-more = Um degrau a mais: { $difference } { $currency } a mais por ciclo.
plan-search-more-less = Um degrau a mais: { $difference } { $currency } a menos por ciclo.
plan-search-more-same = Um degrau a mais não economiza nada.
plan-search-no-more = Um degrau a mais: não resta teto de velocidade para tentar.
plan-search-exact = Folga 0: na estrada cortada em trechos e com os tetos tentados, nenhuma outra escolha custa menos.
plan-search-gap = Folga { $gap } { $currency }: a busca foi interrompida, e outra escolha poderia custar isso a menos.
plan-search-rounds = { $count ->
    [one] A escala achada foi depois planejada inteira, uma vez.
   *[other] A escala achada foi planejada inteira { $count } vezes, com o que cada mudança de fato custou.
}

# Células numa linha de texto.
cells-every-rung = todos os degraus
cells-on = { $states } ({ $rungs })
