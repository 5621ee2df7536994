# O cartão do motorista. Curto: é lido na cabine.
card-up-to = até { $unit }
card-set = { $load_state }: ajuste do controlador, { $unit }
card-set-both = { $load_state }: ajuste, { $unit } (controlador: { $controller })
card-road-mark = * Vale a pressão de estrada: a própria do degrau não está aprovada.
card-dash-mark = Um traço: não use este degrau com esta carga.
card-fixed = Fixa, posta à mão, a frio: { $groups }.
card-hold = { $rung }: no máximo { $limit }
card-hold-one = { $limit }; depois pare ou suba a pressão
card-chains = Com { $chains }, { $load_state }: { $cells }.
card-elsewhere = Fora desta rota, reboque desconhecido ou carga desconhecida: pressão de estrada.
card-elsewhere-road = Degrau { $rung }, carregado: { $figures } { $unit }. Se não for atingida: não passe da velocidade que o manômetro permite.
card-elsewhere-stand = Nenhuma pressão de estrada deste plano está aprovada para todos os circuitos: fique parado e ligue.

card-strip = A rota
card-strip-described = Rota { $route } em faixa: superfícies, marcos e { $changes ->
    [one] { $changes } ponto de mudança com seu número
   *[other] { $changes } pontos de mudança com seus números
}; viagem carregada em cima, viagem vazia embaixo. Triângulo cheio para cima: subir. Triângulo vazio para baixo: baixar.
card-number = N.º
card-not-driven = Este transporte não pode ser feito segundo o levantamento; não há pontos de mudança conhecidos.
card-not-complete = NÃO TERMINA A TEMPO: mantenha o teto menor até terminar em todos os circuitos.
card-before-first-move = Antes de sair, suba a pressão: { $channels }.
card-laden-after-loading = Carregado: escolha { $state }, espere terminar em todos os circuitos ({ $time }) e só então saia.
card-laden-while-loading = Durante o carregamento: escolha { $state } ({ $time }). Não saia antes de terminar em todos os circuitos.
card-laden-rolling = Antes de carregar, em { $at }: escolha { $state } ({ $time }). Carregado, não saia antes de terminar em todos os circuitos.
card-laden-not-possible = { $state }: não se conhece modo de chegar às pressões de carga. Não carregue; ligue.
card-unloaded = Descarregado: escolha { $state } antes de sair.

card-gauge = O que o manômetro permite
card-gauge-how = Cada manômetro deve mostrar ao menos o número da linha; o pneu mais lento dá a velocidade. Um traço, ou menos que a última linha: não dirija. Mais que a primeira linha: não dirija, baixe antes a pressão. Quente ou frio.
card-gauge-none = Nenhuma leitura permite dirigir com o que está aprovado. Não dirija; ligue.
card-drive-up-to = Dirija até, { $unit }
card-not-above = não mais que

card-event = Se
card-do = então
card-event-brake-air = O ar do freio está baixo
card-do-brake-air = Pare de encher na hora. Reduza, pare em lugar seguro, puxe o freio de estacionamento. Não saia antes de achar a causa.
card-event-not-rising = Um circuito não acompanha
card-do-not-rising = Não passe do que seu manômetro permite. Pare no próximo lugar seguro e ligue.
card-event-late = Você começou tarde
card-do-late = Mantenha o teto menor até terminar em todos os circuitos. Nunca ande à frente da pressão.
card-event-too-fast = Você está acima do teto
card-do-too-fast = Reduza com calma até o teto; depois siga devagar, ou suba a pressão. Após muito tempo acima: pare, deixe os pneus esfriarem, avise.
card-event-display = O mostrador está apagado ou duvidoso
card-do-display = A pressão não é conhecida. Meça cada pneu à mão; até lá, a passo de homem, fora da estrada.
card-event-stuck = Você atolou
card-do-stuck = Siga o procedimento impresso ou espere ajuda. Nenhum número se inventa por telefone.
card-event-shift-end = O turno acaba
card-supply-touches-brakes = O ar fica baixo neste transporte: os freios vêm primeiro. Se o enchimento parar sozinho, mantenha o teto menor.
card-change-told = N.º { $number }: { $told }
