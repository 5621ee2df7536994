# Prática e veredito.
practice-title = Prática de { $haul }, semente { $seed }
practice-arrived = Chegou.
practice-not-arrived = NÃO CHEGOU: A VIAGEM TERMINOU NO CAMINHO
practice-no-surprise = Nada foi diferente do planejado.
practice-surprise = Diferente do planejado: { $what }
surprise-slow-compressor = um compressor gasto
surprise-leak = um vazamento depois do compressor
surprise-unexpected-stop = um obstáculo na viagem carregada
surprise-closed-lay-by = um recuo estava fechado
surprise-wrong-load-state = o estado vazio ainda estava escolhido quando as pressões de carga foram pedidas
surprise-soft-leg = um trecho amolecido pela chuva
practice-findings = Constatações
practice-no-finding = Sem constatações: a viagem seguiu o plano.
practice-finding = Constatação
practice-when = Após
practice-at = Em
practice-lasted = Duração
practice-evidence = O que se viu
practice-severity = Peso
practice-price = Em relação à viagem do plano
practice-item = Item
practice-yours = O seu
practice-plans = Plano
practice-more = A mais
practice-cost = Custo
practice-no-price = sem preço
practice-item-time = Tempo
practice-item-fuel = Combustível
practice-item-compressor = Compressor em carga
practice-item-changes = Mudanças pedidas
practice-item-road = Mais duro do que a estrada quer
practice-item-tires = Abaixo do mínimo, por tempo
practice-cost-together = No total { $cost } { $currency }, do que tem preço no levantamento.
practice-nothing-priced = O levantamento não tem preços para este transporte; informe-os no arquivo para ver dinheiro.
practice-on-the-real-road = Uma prática não é licença: o caminhão, a estrada e a lei decidem no dia.
practice-problems = { $count ->
    [one] 1 linha da viagem não serve
   *[other] { $count } linhas da viagem não servem
}
step-practising = dirigindo
