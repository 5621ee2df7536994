# Registros dos caminhões.
logs-file = { $file }: { $format }, { $frames } quadros em { $span }
logs-buses = barramentos: { $names }
logs-clean = cada registro foi lido
logs-since-last-hint = O tempo volta atrás em tantas linhas que as marcas talvez contem da linha anterior: tente --timing since-last.
logs-loss-malformed = fora da forma do formato: { $count }
logs-loss-truncated = cortados: { $count }
logs-loss-corrupt = não descompactam ou se contradizem: { $count }
logs-loss-unsupported = de um tipo que não se lê: { $count }
logs-loss-error_frame = quadros de erro do barramento: { $count }
logs-loss-remote = quadros remotos, sem dados: { $count }
logs-loss-flexible_rate = quadros CAN FD, não lidos: { $count }
logs-loss-duplicate = o mesmo quadro de novo: { $count }
logs-loss-broken_message = mensagens em pacotes que nunca se completaram: { $count }
logs-loss-short_group = grupos curtos demais para um sinal: { $count }
logs-loss-too_many_senders = quadros de identificadores além dos distinguidos: { $count }
logs-loss-too_many_codes = códigos de falha além dos distinguidos: { $count }
logs-line = linha { $line }
logs-byte = byte { $byte }
logs-more-bad = e mais
logs-groups = Grupos
logs-col-pgn = grupo
logs-col-name = nome
logs-col-from = de
logs-col-count = quantidade
logs-col-bytes = bytes
logs-col-signal = sinal
logs-col-spn = SPN
logs-col-low = mais baixo
logs-col-high = mais alto
logs-col-unit = unidade
logs-col-values = valores
logs-col-absent = ausentes
logs-signals = Sinais com valores
logs-no-signals = Nenhum sinal conhecido tem valor.
logs-codes = Códigos de falha ativos
logs-code = SPN { $spn }, modo de falha { $failure }, de { $source }
logs-code-counted = SPN { $spn }, modo de falha { $failure }, { $count } vezes, de { $source }
logs-identification = Identificação do veículo
logs-stripped = Havia um número de identificação do veículo no registro; ele não é mostrado. --keep-identification o mostra.
logs-reading = lendo { $file }
logs-without-part = este airtide foi construído sem a leitura de registros; a versão completa a tem: cargo build --release -p cli --features logs
logs-written = { $rows } linhas de amostras nativas e os segundos em { $files } arquivos: { $folder }
logs-off-grid = números sem segundo, porque o relógio voltou ou havia lugares demais: { $count }
logs-left-out = { $file }: deixado de fora { $what }
logs-bad = { $count ->
    [one] um registro ruim
    [many] { $count } registros ruins
   *[other] { $count } registros ruins
}
logs-clock-back = { $count ->
    [one] o tempo volta uma vez
    [many] o tempo volta { $count } vezes
   *[other] o tempo volta { $count } vezes
}
logs-gaps = { $count ->
    [one] uma lacuna de mais de 5 s
    [many] { $count } lacunas de mais de 5 s
   *[other] { $count } lacunas de mais de 5 s
}
logs-on-route = Na rota { $route }: { $positions } segundos com posição, { $off } deles fora da rota
logs-wheels = caminho pela velocidade das rodas sobre caminho ao longo da rota: { $ratio } ({ $low } a { $high } em quatro de cinco), em { $stretches } trechos de meio quilômetro
logs-wheels-wrong = A velocidade das rodas não bate com a rota: a escala está errada, ou há outros pneus que os ajustados no caminhão. Velocidades e distâncias destes registros estão erradas na mesma medida.
logs-wheels-unknown = trechos de menos com posição e velocidade das rodas para julgar esta
