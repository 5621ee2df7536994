# Registros de los camiones.
logs-file = { $file }: { $format }, { $frames } tramas en { $span }
logs-buses = buses: { $names }
logs-clean = se leyó cada registro
logs-since-last-hint = El tiempo retrocede en tantas líneas que las marcas quizá cuenten desde la línea anterior: pruebe --timing since-last.
logs-loss-malformed = sin la forma del formato: { $count }
logs-loss-truncated = cortados: { $count }
logs-loss-corrupt = no se descomprimen o se contradicen: { $count }
logs-loss-unsupported = de un tipo que no se lee: { $count }
logs-loss-error_frame = tramas de error del bus: { $count }
logs-loss-remote = tramas remotas, sin datos: { $count }
logs-loss-flexible_rate = tramas CAN FD, no leídas: { $count }
logs-loss-duplicate = la misma trama otra vez: { $count }
logs-loss-broken_message = mensajes en paquetes que nunca se completaron: { $count }
logs-loss-short_group = grupos demasiado cortos para una señal: { $count }
logs-loss-too_many_senders = tramas de identificadores de más, no distinguidos: { $count }
logs-loss-too_many_codes = códigos de falla de más, no distinguidos: { $count }
logs-line = línea { $line }
logs-byte = byte { $byte }
logs-more-bad = y más
logs-groups = Grupos
logs-col-pgn = grupo
logs-col-name = nombre
logs-col-from = de
logs-col-count = cantidad
logs-col-bytes = bytes
logs-col-signal = señal
logs-col-spn = SPN
logs-col-low = más bajo
logs-col-high = más alto
logs-col-unit = unidad
logs-col-values = valores
logs-col-absent = ausentes
logs-signals = Señales con valores
logs-no-signals = Ninguna señal conocida tiene valor.
logs-codes = Códigos de falla activos
logs-code = SPN { $spn }, modo de falla { $failure }, de { $source }
logs-code-counted = SPN { $spn }, modo de falla { $failure }, { $count } veces, de { $source }
logs-identification = Identificación del vehículo
logs-stripped = El registro tenía un número de identificación del vehículo; no se muestra. --keep-identification lo muestra.
logs-reading = leyendo { $file }
logs-without-part = este airtide se construyó sin la lectura de registros; la versión completa la tiene: cargo build --release -p cli --features logs
logs-written = { $rows } filas de muestras nativas y los segundos en { $files } archivos: { $folder }
logs-off-grid = números que no hallaron segundo, porque el reloj retrocedió o había demasiadas ubicaciones: { $count }
logs-left-out = { $file }: se dejó fuera { $what }
logs-bad = { $count ->
    [one] un registro malo
    [many] { $count } registros malos
   *[other] { $count } registros malos
}
logs-clock-back = { $count ->
    [one] el tiempo retrocede una vez
    [many] el tiempo retrocede { $count } veces
   *[other] el tiempo retrocede { $count } veces
}
logs-gaps = { $count ->
    [one] un hueco de más de 5 s
    [many] { $count } huecos de más de 5 s
   *[other] { $count } huecos de más de 5 s
}
logs-on-route = En la ruta { $route }: { $positions } segundos con posición, { $off } de ellos fuera de la ruta
logs-wheels = camino según la velocidad de rueda sobre camino a lo largo de la ruta: { $ratio } ({ $low } a { $high } en cuatro de cinco), en { $stretches } tramos de medio kilómetro
logs-wheels-wrong = La velocidad de rueda no cuadra con la ruta: su escala está mal, o el camión lleva otros neumáticos que los ajustados. Velocidades y distancias de estos registros están mal en la misma medida.
logs-wheels-unknown = muy pocos tramos con posición y velocidad de rueda para juzgar esta
