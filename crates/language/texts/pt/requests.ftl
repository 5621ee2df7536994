# Pedidos de aprovação: uma carta ao fabricante de cada pneu.
request-title = Pedido de aprovação: { $size }, índice de carga { $index }, símbolo de velocidade { $symbol }
request-from = De
request-from-who = { $responsible }, por { $survey }
request-tire = Pneu
request-tire-what = { $size }, cargas segundo { $body }; no nosso levantamento { $name }
request-rim = Aro
request-rim-what = { $rim }, máximo estampado { $maximum }
request-rim-unknown = ainda não conhecido por nós, máximo estampado { $maximum }; lemos a marca e informamos
request-molded = Máximo gravado
request-so-far = Sua resposta até agora
request-none-so-far = nenhuma
request-lapsed = { $document }; não conta mais
request-haul = Transporte { $haul }: { $distance } por ciclo, { $cycles } ciclos por dia, ar de { $coldest } a { $warmest }. As pressões são a frio, a { $reference }.
request-line = Linha
request-state = Estado
    de carga
request-load = Carga
request-speed = Velocidade
request-distance = Por ciclo
request-stay = Seguido
request-hold = Seguido
    min
request-wanted = Pedido
request-today = Hoje
request-ground = Linha { $line }: o solo pediria { $pressure } ou menos.
request-none-left = Linha { $line }: pelo que temos, nenhuma pressão é possível. O que vocês aprovariam?
request-how = Carga: o pior pneu, com a inclinação da estrada, pares desiguais e o erro de pesagem. Por ciclo: estrada nesta linha num ciclo. Seguido: maior trecho e maior tempo sem pausa, paradas incluídas. Pedido: a menor pressão de qualquer pneu que o plano rodaria.
request-please = Por favor, informem para cada linha
request-please-pressure = a menor pressão a frio que aprovam;
request-please-hold = o maior trecho e o maior tempo seguidos, se os limitam;
request-please-standing = uma linha para um caminhão parado cujos pneus mudam durante o carregamento ({ $time }), se derem uma;
request-please-service = o que conta como pressão recomendada de um pneu em serviço: a sua linha ou a sua tabela comum;
request-please-days = número, data e último dia da resposta, e o pneu e o aro a que se refere.
request-nothing = Nada a pedir: o fabricante ou a norma garante cada pressão que estes transportes rodam.
request-no-tire = nenhum pneu '{ $tire }' espera resposta; os que esperam: { $tires }
request-csv-written = Gravado, para o fabricante preencher: { $file }
