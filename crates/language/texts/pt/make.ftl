# Registros feitos.
step-making = criando registros
make-log = Registro
make-frames = Quadros
make-lost = Perdidos
make-hours = Horas
make-distance = Percorrido
make-asked =
    Mudanças
    pedidas
make-complete = concluídas
make-forgotten = esquecidas
make-truth-beside = Ao lado de cada registro está a sua verdade, em .truth.json. Nada neles é real.

make-fault = Falha
make-fault-range = Tamanho
make-fault-what = O que é
make-fault-examples = Peça uma com --fault, por exemplo:

make-fault-tire-leak = um furo em um pneu, tão largo quanto diz o tamanho
make-fault-line-leak = um furo na linha de um canal
make-fault-line-off = a linha de um canal se soltou
make-fault-line-narrowed = uma linha dobrada ou entupida; o tamanho é o que resta da condutância
make-fault-line-shut = a linha está fechada antes das rodas
make-fault-fill-stuck-shut = a válvula de enchimento não abre
make-fault-fill-slow = a válvula de enchimento abre em parte; o tamanho é o que resta
make-fault-exhaust-stuck-shut = o escape não abre
make-fault-exhaust-stuck-open = o escape não fecha
make-fault-exhaust-slow = o escape abre em parte; o tamanho é o que resta
make-fault-exhaust-frozen = o escape não abre enquanto faz menos de 0 °C
make-fault-wheel-end-shut = uma roda fechada à mão que deveria estar aberta
make-fault-core-left-in = um núcleo de válvula deixado em um pneu; o tamanho é o que resta da condutância
make-fault-weak-compressor = um compressor gasto ou uma entrada entupida; o tamanho é o que resta da vazão
make-fault-cut-in-off = o regulador liga em outra pressão, desviada do tamanho
make-fault-cut-out-off = o regulador desliga em outra pressão, desviada do tamanho
make-fault-protection-off = a válvula de proteção atua em outras pressões, desviadas do tamanho
make-fault-brake-leak = os freios perdem tanto ar livre
make-fault-gauge-off = o manômetro do controlador lê a mais o tamanho em um canal
make-fault-gauge-other-kind = o manômetro do controlador em um canal é selado em vez de aberto ao ar, ou o contrário
make-fault-hot-wheel = um freio arrastando ou um rolamento ruim aquece do tamanho os pneus de uma roda
make-fault-sensor-off = o sensor de um pneu lê a mais o tamanho
make-fault-sensor-drift = o sensor de um pneu lê a cada hora mais o tamanho
make-fault-sensor-stuck = o sensor de um pneu repete o que dizia quando a falha começou
make-fault-sensor-dead = o sensor de um pneu não diz nada
make-fault-sensors-swapped = os sensores de dois pneus trocaram de lugar
make-fault-log-gap = nada é gravado; precisa de for=
make-fault-clock-off = o relógio do gravador adianta do tamanho
