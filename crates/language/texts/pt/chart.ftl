# Gráficos de uma viagem ao longo da rota.
chart-strip-title = Viagem ao longo da rota
chart-strip-haul = Transporte { $haul }, rota { $route }
chart-strip-description = Duas metades lado a lado, cada uma ao longo do estaqueamento: à esquerda a viagem vazio, à direita a viagem carregado. De cima para baixo: altitude e superfície, velocidade, pressão dos pneus, pressão de alimentação. { $changes ->
    [one] { $changes } ponto de mudança está marcado.
   *[other] { $changes } pontos de mudança estão marcados.
}
chart-empty-run = Viagem vazio
chart-laden-run = Viagem carregado
chart-load-state = estado { $name }
chart-travel-up = no sentido crescente do estaqueamento
chart-travel-down = no sentido decrescente do estaqueamento
chart-no-run = Nenhuma amostra desta viagem em movimento

chart-elevation = Altitude
chart-elevation-and-surface = Altitude e superfície
chart-no-elevation = Altitude não dada
chart-speed = Velocidade
chart-tire-pressure = Pressão dos pneus
chart-supply-pressure = Pressão de alimentação
chart-own-scale = cada viagem tem sua própria escala
chart-chainage = Estaqueamento
chart-in-unit = { $what }, { $unit }
chart-names-hidden = { $count ->
    [one] { $count } nome não mostrado por falta de espaço
   *[other] { $count } nomes não mostrados por falta de espaço
}

chart-surface-paved = pavimentado
chart-surface-sealed = com tratamento
chart-surface-gravel = cascalho
chart-surface-earth = terra
chart-surface-soft-ground = solo mole
chart-surface-sand = areia
chart-surface-snow-or-ice = neve ou gelo

chart-label-speed = velocidade
chart-label-cap = teto
chart-label-limit = limite
chart-label-supply = aliment.

chart-flag-place = desde { $from }, completo em { $to }
chart-flag-place-open = desde { $from }
chart-flag-list = Pontos de mudança

chart-standing = Parado
chart-standing-loading = { $time } min de carregamento
chart-standing-waiting-change = { $time } min à espera da pressão antes de sair
chart-standing-before-off = { $time } min antes de sair
chart-standing-unloading = { $time } min de descarga
chart-standing-on-the-way = { $time } min em { $place }
chart-standing-more = mais { $count }, { $time } min no total
chart-standing-none = nenhuma parada de um minuto ou mais

chart-legend-speed = velocidade rodada
chart-legend-cap = teto de velocidade das pressões mantidas
chart-legend-limit = limite de velocidade do trecho
chart-legend-tire = pressão dos pneus como o manômetro lê, um tipo de linha por circuito de ar
chart-legend-minimum = fina, mesmo tipo: menor permitida, a frio, no degrau ordenado
chart-legend-supply = pressão de alimentação
chart-legend-compressor = o compressor fornece ar
chart-legend-change = do ponto de mudança até onde a mudança deve estar completa
chart-legend-changing = barra: há uma mudança em curso
chart-legend-landmark = marco
chart-legend-lay-by = recuo

# Gráficos do que um plano muda.
chart-effects-title = O que o plano muda
chart-effects-description = Acima, barras de área de contato, desgaste ou trilha da estrada e resistência ao rolamento, divididos pelos da pressão plena, para cada trecho, viagem e modo de rodar, com suas bandas. Abaixo, a tensão vertical no solo pela profundidade sob o caminhão carregado.
chart-effects-band = As barras vão da pressão plena (1) à razão esperada; os traços, de baixo a alto.
chart-effects-patch = Área de contato, razão
chart-effects-road = Trilha ou desgaste da estrada, razão
chart-effects-rolling = Resistência ao rolamento, razão
chart-effects-unknown = não informado: veja A preencher
chart-effects-depth = Tensão no solo sob o caminhão carregado: { $leg }
chart-effects-depth-note = As linhas são a tensão esperada, a sombra é a banda do plano, de solo firme a mole. De 0,3 m para baixo as medições quase não acharam efeito da pressão; ali manda a carga.
chart-effects-stress = tensão
chart-effects-below = profundidade
