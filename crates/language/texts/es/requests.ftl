# Solicitudes de aprobación: una carta al fabricante de cada neumático.
request-title = Solicitud de aprobación: { $size }, índice de carga { $index }, símbolo de velocidad { $symbol }
request-from = De
request-from-who = { $responsible }, por { $survey }
request-tire = Neumático
request-tire-what = { $size }, cargas según { $body }; en nuestro levantamiento { $name }
request-rim = Llanta
request-rim-what = { $rim }, máximo estampado { $maximum }
request-rim-unknown = aún no la conocemos, máximo estampado { $maximum }; leemos el estampado y les avisamos
request-molded = Máximo grabado
request-so-far = Su respuesta hasta hoy
request-none-so-far = ninguna
request-lapsed = { $document }; ya no cuenta
request-haul = Acarreo { $haul }: { $distance } por ciclo, { $cycles } ciclos por día, aire de { $coldest } a { $warmest }. Las presiones son en frío, a { $reference }.
request-line = Línea
request-state = Estado de
    carga
request-load = Carga
request-speed = Velocidad
request-distance = Por ciclo
request-stay = Seguido
request-hold = Seguido
    min
request-wanted = Se pide
request-today = Hoy
request-ground = Línea { $line }: el suelo pediría { $pressure } o menos.
request-none-left = Línea { $line }: con lo que tenemos ninguna presión es posible. ¿Qué aprobarían?
request-how = Carga: el peor neumático, con el peralte del camino, duales desiguales y el error de pesaje. Por ciclo: camino en esta línea en un ciclo. Seguido: el trecho y el tiempo más largos sin pausa, detenciones incluidas. Se pide: la presión más baja de cualquier neumático que el plan usaría.
request-please = Por favor indíquennos para cada línea
request-please-pressure = la presión en frío más baja que aprueban;
request-please-hold = el trecho y el tiempo más largos seguidos, si los limitan;
request-please-standing = una fila para un camión detenido cuyos neumáticos cambian mientras se carga ({ $time }), si dan una;
request-please-service = qué cuenta como presión recomendada de un neumático en servicio: su fila, o su tabla ordinaria;
request-please-days = número, fecha y último día de su respuesta, y el neumático y la llanta a que se refiere.
request-nothing = Nada que pedir: el fabricante o la norma respalda cada presión que usan estos acarreos.
request-no-tire = ningún neumático «{ $tire }» espera respuesta; los que sí: { $tires }
request-csv-written = Escrito, para que lo llene el fabricante: { $file }
