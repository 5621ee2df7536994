# La página del plan, de arriba abajo.
plan-title = Plan de presión
plan-for-haul = Plan de presión del acarreo { $haul }
plan-combination = Conjunto
plan-route = Ruta
plan-draft = Borrador: sin emitir, no es para el conductor
plan-issued = Plan { $number }, emitido el { $date }

plan-ladder = Escala
plan-rung = Escalón
plan-rungs = Escalones
plan-speed-cap = Tope de velocidad
plan-hold-limit = Límite de permanencia
plan-hold-limit-both = { $time } o { $distance }, lo que ocurra primero; después deténgase o suba la presión
plan-no-hold-limit = sin límite
plan-channel = Circuito de aire
plan-axle-group = Grupo de ejes
plan-load-state = Estado de carga
plan-laden = cargado
plan-empty = vacío
plan-chain-state = Cadenas
plan-chains-on = puestas
plan-chains-off = sacadas
plan-value-to-set = Fijar el controlador en
plan-cold-pressure = Presión en frío
plan-deflection = Deflexión

plan-window = Rango
plan-lowest = Más baja
plan-highest = Más alta
plan-minimum = Mínimo
plan-maximum = Máximo
plan-governed-by = Decide
plan-next-closest = Siguiente
plan-source = Fuente
plan-approval = Aprobación
plan-approval-maker = aprobado por el fabricante del neumático
plan-approval-standard = dentro de la norma
plan-approval-needed = por aprobar
plan-approval-not-possible = no es posible
plan-approval-expired = la aprobación venció el { $date }: vuelve a borrador
plan-no-window = No es posible: la más baja permitida, { $lowest }, supera la más alta permitida, { $highest }

plan-stack = Lo que se sumó
plan-stack-gauge = error del manómetro
plan-stack-deadband = banda muerta del controlador
plan-stack-duals = diferencia entre duales
plan-stack-load-share = reparto desigual de la carga
plan-stack-warmest = neumático más caliente en este escalón
plan-stack-snap = hasta el paso siguiente del controlador
plan-stack-total = sumado en total

plan-change-points = Puntos de cambio
plan-change-count = { $count ->
    [one] { $count } punto de cambio
   *[other] { $count } puntos de cambio
}
plan-start-raising = EMPIECE A SUBIR
plan-start-lowering = EMPIECE A BAJAR
plan-stop-and-change = DETÉNGASE Y CAMBIE
plan-lead = Adelanto
plan-reach-by = Completo en
plan-change-time = Tiempo del cambio
plan-change-time-slow = Tiempo, uno de cada diez viajes tarda más
plan-cap-while-changing = Tope de velocidad durante el cambio
plan-from-rung = De
plan-to-rung = A

plan-cycle = Ciclo
plan-cycle-time = Tiempo de un ciclo
plan-cycle-time-added = Agregado por los cambios de presión
plan-cycle-fuel = Combustible de un ciclo
plan-compressor-loaded = Compresor en carga
plan-lowest-supply = Presión de suministro más baja
plan-before-first-move = Antes del primer movimiento
plan-before-first-move-raise = Suba a { $pressure } en frío antes de moverse: tras la noche más fría un neumático podría estar muy bajo
plan-shift-end = Fin de turno: suba a la presión de carretera antes de estacionar

plan-effects = Lo que cambia
plan-cost = Costo
plan-what-decided = Qué decidió cada número
plan-cautions = Advertencias
plan-problems = Sin resolver

plan-standing-read = leído en la fuente
plan-standing-given = dado para esta flota
plan-standing-practice = práctica común, sin fuente
plan-standing-memory = de memoria: compare con la fuente antes de usarlo
plan-extrapolated = fuera del alcance de su fuente

# La página en una terminal: rótulos de tablas y líneas breves.
plan-route-forward = { $route }, { $length }; la carga va hacia el kilometraje creciente
plan-route-backward = { $route }, { $length }; la carga va hacia el kilometraje decreciente
plan-cold-named-at = Temperaturas
plan-temperatures = las presiones en frío son a { $reference }; planificado de { $coldest } a { $warmest }
plan-for-units = Unidades
plan-measured-delivery = el caudal del compresor
plan-measured-conductance = la conductancia de { $channel }
plan-measured-tire-volume = el volumen de aire de los neumáticos de { $channel }
plan-measured-counted = Contado: { $what } de la unidad { $unit } es { $share } % del de su tipo, medido el { $date }.
plan-measured-not-counted = No contado: { $what } de la unidad { $unit } es { $share } % del de su tipo, medido el { $date }. Sus cambios tardan más que aquí; planifíquela con --unit { $unit }.
plan-controller = Controlador
plan-controller-unit = trabaja en { $unit }
plan-controller-other-unit = trabaja en { $unit }; el valor a fijar se muestra también en { $unit }, y ese es el que vale
plan-breaks-limits = { $count ->
    [one] NO CONDUZCA CON ESTE PLAN COMO ESTÁ: rompe un límite.
   *[other] NO CONDUZCA CON ESTE PLAN COMO ESTÁ: rompe { $count } límites.
}
plan-axle-groups = Grupos de ejes y cargas
plan-tire = Neumático
plan-tires = Neumáticos
plan-single = simples
plan-dual = duales
plan-fixed-pressure = presión fija

plan-ladder-how = Fijar: lo que recibe el controlador, para el neumático más caliente del escalón. En frío: lo que eso deja en un neumático frío. Más baja y más alta: el rango, en frío.
plan-ladder-same = { $cells }: igual que { $chains }
plan-cap = Tope
plan-set = Fijar
plan-cold = En frío
plan-channel-brief = Circuito
plan-approval-brief-maker = fabricante
plan-approval-brief-standard = norma
plan-cell-not-possible = { $cell } no es posible: { $why }.
plan-cell-hold = { $cell }: como máximo { $distance } por vez, según la fila del fabricante; después deténgase o suba la presión.
plan-rung-unused = Este acarreo no usa: { $rungs }.

plan-more-cells = { $count ->
    [one] Una celda más no se muestra: otro estado de carga o de cadenas, escalones que este acarreo no usa.
   *[other] { $count } celdas más no se muestran: otros estados de carga y de cadenas, escalones que este acarreo no usa.
}
plan-more-not-possible = { $count ->
    [one] Una de ellas no es posible – { $cells }.
   *[other] { $count } de ellas no son posibles – { $cells }.
}
plan-more-possible = Todas son posibles.
plan-more-how = Agregue --full para ver todo, con la cuenta completa de cada número.
plan-decided-by = decide
plan-decided-lowest = más baja
plan-decided-next = siguiente
plan-decided-set = fijar
plan-decided-how = Más baja: el límite que decidió, en frío. Siguiente: el que decidiría sin él. Fijar: la más baja y lo que se sumó.
plan-decided-allowance = +{ $share }

plan-ground = el suelo pediría { $advice } o menos (consejo)
plan-stack-sealed-gauge = manómetro sellado a esta altitud
plan-stack-hand-set = fijado más alto a mano
plan-stack-brief-gauge = manómetro
plan-stack-brief-deadband = banda muerta
plan-stack-brief-duals = duales
plan-stack-brief-warmest = neumático caliente y paso
plan-stack-brief-sealed-gauge = manómetro sellado
plan-stack-brief-hand-set = a mano
plan-stack-sums-to = { $items }: fijar { $set } (neumático más caliente { $warmest })
plan-deflection-then = deflexión { $percent } de la altura de sección
plan-other-tire = donde va montado el neumático { $tire }
plan-worst-tire = { $load } en el peor neumático
plan-covers = cubre { $speed }
plan-load-allowance = margen de carga { $share }
plan-pressure-added = { $pressure } sumados por la fila
plan-deflection-at-most = como máximo { $share } de la altura de sección
plan-from-reading = desde { $pressure }
plan-at-temperature = a { $temperature }
plan-least-gap = { $gap } como mínimo
plan-standing-brief-read = leído
plan-standing-brief-given = dado
plan-standing-brief-memory = de memoria

plan-fixed-groups = Grupos con presión fija
plan-worst-tire-load = Peor neumático
plan-holds-cold = Tiene, en frío
plan-needs-cold = Necesita, en frío
plan-verdict = Veredicto
plan-enough = suficiente
plan-too-low = MUY BAJA
plan-morning-after = A la mañana siguiente
plan-morning-how = Estacionado en el escalón más bajo, tras una noche a { $coldest }: lo que lee un manómetro, y lo que necesita ahí el neumático vacío de carga.
plan-parked-on = Estacionado en
plan-reads = Lee
plan-needs = Necesita
plan-share = Parte
plan-may-move = puede salir
plan-raise-first = SUBA PRIMERO

plan-change-points-how = En el orden del viaje. Empiece en el lugar o antes; el nuevo tope de velocidad vale desde el inicio de una bajada de presión, y desde el fin de una subida. { $times }
plan-times-nominal = Tiempos y adelantos nominales, sin variación entre camiones y viajes.
plan-times-sampled = Tiempo: el medio de muchos viajes, entre paréntesis lo que cumplen nueve de diez; los adelantos son para nueve de diez.
plan-times-partly-sampled = Tiempo: el medio de muchos viajes, entre paréntesis lo que cumplen nueve de diez; los adelantos son para nueve de diez. Un tiempo sin paréntesis es nominal, y su adelanto también.
plan-time-sampled = Tiempo
    (9 de 10)
plan-does-not-fit-p90 = El punto de cambio { $number } alcanza en un viaje usual; más de un viaje de cada diez no termina donde debe.
plan-no-change-points = Ninguno: un solo escalón sirve para toda la ruta.
plan-done-by = Listo en
plan-run = Viaje { $load_state }
plan-number = N.º
plan-at = En
plan-place = Lugar
plan-call = Orden
plan-from-to = Escalones
plan-time = Tiempo
plan-at-landmark = en { $landmark }
plan-before-landmark = { $distance } antes de { $landmark }
plan-beyond-landmark = { $distance } después de { $landmark }
plan-does-not-fit = El punto de cambio { $number } no alcanza: el cambio no termina donde debe.
plan-refused-compressor-limit = El punto de cambio { $number } terminaría a tiempo, y se rechaza: el compresor trabajaría sin pausa más de lo permitido.
plan-refused-supply-before-descent = El punto de cambio { $number } terminaría a tiempo, y se rechaza: los depósitos no estarían en la presión de conexión al inicio de la próxima bajada larga.
plan-chosen-way = El punto de cambio { $number } se hace así: { $way }.
plan-other-ways = Punto de cambio { $number }, otras formas: { $ways }.
plan-before-descent = El punto de cambio { $number } está antes de lo que estaría, porque no se toma aire en una bajada larga ni justo antes.
plan-way-rolling = en marcha
plan-way-go-on-slowly = seguir al tope menor por { $distance } después del lugar
plan-way-lay-by = detenerse en { $place }, en { $km }, hasta completar
plan-way-slower = recorrer el tramo anterior a { $speed } de promedio
plan-way-other-rung = ir en el escalón { $rung }, que se alcanza a tiempo
plan-way-more-air = { $times } veces la entrega actual del compresor
plan-way-more-road = empezar { $distance } antes
plan-loses = pierde { $time }
plan-gains = ahorra { $time }
plan-loses-nothing = no cuesta tiempo
plan-wrong-road = presión incorrecta por { $distance }
plan-on-descent = { $what }, e infla neumáticos en una bajada larga, donde los frenos necesitan el aire
plan-late = Si el conductor empieza tarde: tiempo, y camino con presión incorrecta; y el aire de cada cambio
plan-late-by = Tarde por { $distance }
plan-never = Nunca
plan-run-ends = el viaje acaba antes
plan-lowest-supply-brief = Sumin. mín.
plan-compressor-run = Compresor
    por vez

plan-laden-change = De presiones vacío a presiones cargado
plan-way = Forma
plan-time-lost = Tiempo perdido
plan-ordered-at = Orden en
plan-empty-road-hard = Vacío, con
    presión cargado
plan-choice = Elección
plan-chosen = elegido
plan-chosen-not-possible = elegido, NO ES POSIBLE
plan-laden-not-allowed-while-loading = el levantamiento no permite cambios durante la carga
plan-laden-road-too-short = el último trecho antes de cargar es muy corto
plan-laden-never-complete = el aire no alcanza la presión
plan-laden-why = { $way }: no es posible, { $why }.
plan-laden-rolling = en marcha, antes de cargar
plan-laden-while-loading = durante la carga
plan-laden-after-loading = detenido, después de cargar

plan-cycle-waited = Espera solo por la presión
plan-cycle-water = Agua aspirada, para el secador
plan-cycles-per-day = Ciclos por día
plan-part = Parte
plan-waited = Espera
plan-fuel = Combustible
plan-compressor-time = Compresor
plan-phase-shift-start = inicio de turno
plan-phase-empty = viaje vacío
plan-phase-loading = carga
plan-phase-laden = viaje cargado
plan-phase-unloading = descarga

plan-sources = Fuentes
plan-cautions-broken = Esto rompe un límite. No conduzca con el plan hasta corregirlo:
plan-cautions-told = También hay que saber:

# Cómo se halló una escala.
plan-search = Por qué esta escala
plan-search-asked = Búsqueda: se pidieron { $asked } escalones como máximo, quedan { $found }, de { $caps } topes de velocidad entre { $lowest } y { $highest }.
plan-search-required = Exigidos por el levantamiento: { $caps }.
plan-search-term = Un ciclo toma
plan-search-amount = Cantidad
plan-search-price = Precio
plan-search-time = conducción y espera
plan-search-hard-road = más duro de lo que pide el suelo, kPa km
plan-search-changes = cambios
plan-search-compressor = compresor en carga
plan-search-in-all = en total
plan-search-price-time = { $price } la hora
plan-search-price-hard-road = { $price } el kPa km
plan-search-price-changes = { $price } el cambio
plan-search-price-compressor = { $price } la hora
plan-search-fewer-more = Un escalón menos: { $difference } { $currency } más por ciclo.
plan-search-fewer-less = Un escalón menos: { $difference } { $currency } menos por ciclo.
plan-search-fewer-same = Un escalón menos cuesta lo mismo.
plan-search-no-fewer = Un escalón menos: ninguna escala así cubre todos los tramos.
plan-search-more-more = Un escalón más: { $difference } { $currency } más por ciclo.
plan-search-more-less = Un escalón más: { $difference } { $currency } menos por ciclo.
plan-search-more-same = Un escalón más no ahorra nada.
plan-search-no-more = Un escalón más: no queda ningún tope de velocidad por probar.
plan-search-exact = Brecha 0: con el camino cortado en tramos y los topes probados, ninguna otra elección cuesta menos.
plan-search-gap = Brecha { $gap } { $currency }: la búsqueda se cortó antes, y otra elección podría costar eso menos.
plan-search-rounds = { $count ->
    [one] La escala hallada se planificó después entera, una vez.
   *[other] La escala hallada se planificó entera { $count } veces, con lo que de verdad costó cada cambio.
}

# Celdas en una línea de texto.
cells-every-rung = todos los escalones
cells-on = { $states } ({ $rungs })
