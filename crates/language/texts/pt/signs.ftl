# Placas a pôr ou conferir.
signs-how = As placas ficam do lado do motorista, viradas para a viagem indicada, legíveis a tempo da cabine. Meça a partir do marco, no sentido da viagem.
signs-facing = Placas viradas para a viagem { $load_state }
signs-board = Placa
signs-words = Texto
signs-for = Pertence a
signs-stands = Posta
signs-of-change = ponto de mudança { $number }
signs-where-complete = onde a mudança deve estar terminada
signs-complete = { $rung }: até { $cap }
    NÃO TERMINADA: { $slow }
signs-road-owner = Pergunte ao dono da estrada antes de pôr uma placa.
signs-work = Quem põe placas é visto e fica fora do trânsito.
signs-check = Faça cada viagem uma vez com a lista e marque cada placa da cabine.
