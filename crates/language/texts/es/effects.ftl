# Efectos de un plan en suelo, camino, tracción, calor, combustible y confort.
effects-how = Frente a presión plena en toda la ruta: las presiones con carga del escalón más rápido, también vacío. Los números son bajo – medio – alto; una relación de 1 es ningún cambio. Roderas y desgaste son los de las mismas pasadas.
effects-way = Forma de andar
effects-way-plan = este plan
effects-way-full-pressure = presión plena
effects-way-constant-reduced = una presión reducida
effects-way-less-load = un quinto menos de carga
effects-cycle = Ciclo
effects-gravel-rut = Rodera
    en grava ×
effects-asphalt-wear = Desgaste
    asfalto ×
effects-trips = Viajes por
    lo mismo
effects-not-assessed = Tramos
    incompletos
effects-unknown = ?
effects-heat-load = Carga térmica de los neumáticos en el ciclo, el día más caluroso, en t km/h, corregida por largo y calor: { $groups }. Compárela con el valor del fabricante para cada neumático.
effects-heat-load-too-long = Carga térmica de los neumáticos (t km/h): el ciclo es más largo que los { $length } de la corrección por largo; pregunte al fabricante del neumático.

effects-leg = Tramo
effects-run = Viaje
effects-leg-title = { $leg }, { $run }, { $from } a { $to }
effects-patch = Huella
    ×
effects-road = Lo que siente
    el camino
effects-rolling = Rodadura
    ×
effects-climb = Subida, %
effects-descent = Bajada, %
effects-road-rut = rodera { $ratio }
effects-road-wear = desgaste { $ratio }
effects-road-stress = esfuerzo { $ratio }
effects-go = pasa
effects-doubtful = dudoso
effects-no-go = NO PASA
effects-grade = { $word }: { $possible } de { $needed }
effects-legs-how = Huella de contacto, rodera, desgaste y resistencia a la rodadura sobre las de presión plena, promedio de los ejes. Subida y bajada: la mayor pendiente que se logra, de la mayor que hay; en bajada queda un décimo de la gravedad para frenar. Un signo de interrogación: primero hay que dar un dato, vea abajo.
effects-legs-more = Agregue --full para ver cada forma de andar y cada grupo de ejes.
effects-spread = { $leg }, { $run }: de diez casos, uno sube menos de { $p10 } %, cinco menos de { $p50 } %, nueve menos de { $p90 } %; el tramo tiene { $needed } %. { $first }
effects-spread-by = La mayor parte de la duda viene de un dato, { $input } ({ $share } de la varianza): revíselo primero.
effects-spread-nothing = Ningún dato decide por sí solo.
effects-uncertain-strength = la resistencia del suelo
effects-uncertain-moisture = su humedad
effects-uncertain-load = la carga
effects-uncertain-grip = el agarre de la superficie
effects-uncertain-model = la elección del modelo
effects-easiest = { $leg }, { $run }: rueda más fácil con { $groups }.
effects-easiest-group = { $group } a { $pressure } (lleva { $held }: { $more } más duro de rodar)
effects-easiest-lowest = { $group } a { $pressure }, la más baja permitida aquí (lleva { $held }: { $more } más duro de rodar)
effects-easiest-how = Rodar más fácil, de suelo débil a fuerte: más blandos, los neumáticos pierden más en sí mismos; más duros, se hunden. Se busca solo entre la presión más baja y la más alta del escalón. Sirve para comparar, no como nivel, y nunca es razón para bajar más.

effects-groups-how = Cada grupo de ejes según el plan. Aire: en el neumático el día más caluroso, si el tramo alcanza para calentarlo. Confort: cambio de la vibración de la carrocería a la misma velocidad.
effects-bends = Deflexión
effects-area = Huella
effects-mean-pressure = Presión
    en ella
effects-stress-below = Esfuerzo
    a 30 cm
effects-gap = Entre duales
effects-air = Aire
effects-ride = Confort
effects-asphalt-strain = Deformación
    asfalto, µm/m
effects-asphalt-life = Vida del
    asfalto ×
effects-subgrade-strain = Deformación
    suelo, µm/m
effects-subgrade-life = Vida suelo ×
    (por carga)

effects-missing = Por llenar
effects-missing-line = { $what }: { $place }, { $keys }. Sin esto no hay: { $decides }.
effects-missing-cost-line = { $what }: { $place }, { $keys }. Queda fuera del costo hasta que se dé; 0 dice que no hay.
effects-on-legs = { $file }, { $legs }
effects-or = o
effects-give-soil-strength = resistencia del suelo
effects-give-pavement-layers = capas del pavimento
effects-give-grip = agarre medido
effects-give-dual-spacing = separación entre duales
effects-give-money = dinero del acarreo
effects-give-fuel-price = precio del combustible
effects-give-season = días de temporada ganados
effects-give-payload = carga útil ganada
effects-give-tire-saving = costo de neumáticos ahorrado
effects-give-repair-saving = reparaciones ahorradas
effects-give-road-cost = mantenimiento del camino
effects-give-road-saving = parte ahorrada del mantenimiento del camino
effects-of-time = tiempo del ciclo
effects-of-contact = huella de contacto
effects-of-stress-below = esfuerzo en el suelo
effects-of-gravel-rut = rodera en grava
effects-of-soil-rut = rodera en suelo
effects-of-dual-gap = espacio entre duales
effects-of-heat-load = carga térmica
effects-of-washboard = ondulaciones
effects-of-pavement = desgaste del pavimento
effects-of-climb = subida
effects-of-descent = bajada
effects-of-rolling = resistencia a la rodadura y combustible
effects-of-heat = calor del neumático
effects-of-ride = confort
effects-of-wind-up = torsión entre ejes
effects-of-spread = variación
effects-of-cost = costo
effects-of-cost-item = línea del costo

effects-no-law = { $leg }: { $effect }, no se puede decir, porque { $reason }.
effects-flag-descent = CUIDADO AL BAJAR: con el valor más bajo, sube más de lo que puede retener al bajar en { $places }. Lo que los neumáticos blandos dan en subida no está para los frenos.
effects-flag-wind-up = Ejes motrices con presiones distintas se tuercen uno contra otro: { $places }. Deje los bloqueos abiertos en suelo firme.
effects-flag-washboard = Es probable que forme ondulaciones, porque los neumáticos van muy duros en vacío: { $places }.
effects-flag-gap = Podrían quedar menos de 10 mm entre duales: { $places }. Mida el espacio en el camión, con la presión más baja y carga completa. Con cadenas: mida primero, no se halló publicada ninguna holgura para cadenas de camión.
effects-flag-heat-stop = DEMASIADO CALIENTE el día más caluroso, si el tramo alcanza para calentar el neumático: { $places }.
effects-flag-heat-warn = Caliente el día más caluroso, si el tramo alcanza para calentar el neumático: { $places }. Busque por qué, o baje la velocidad.
effects-ride-less = Confort: { $least } a { $most } % menos de vibración de la carrocería a la misma velocidad. No en cada sección, y se pierde si el conductor acelera; no se puede dar un número para el asiento ni para la salud.
effects-ride-none = Confort: no hay menos vibración de la carrocería.
effects-note-top = La presión baja cuida la parte alta del camino. Desde 30 cm hacia abajo manda la carga, y las mediciones casi no hallaron diferencia; menos carga cuida también ese suelo.
effects-note-asphalt = El desgaste del asfalto es el mejor caso: el modelo presiona parejo, los neumáticos no. No dice nada de un sello que se levanta ni del borde del camino.
effects-note-memory = Las roderas en suelo, la rodera en grava y los modelos de tiro se apoyan en parte en ecuaciones escritas de memoria. Compare con la fuente, y con una rodera vista en el camino, antes de que dinero o un permiso dependan de ello.
effects-note-own-case = Cuánto gana un camino depende del camino, de su humedad y de la carga; ningún porcentaje vale para todos.

effects-trials = Lo que hallaron ensayos con presión más baja en suelo así, incluidos los que no hallaron nada (presión baja sobre alta):
effects-trials-brief = { $count ->
    [one] Ensayos con presión más baja en suelo así: { $count } halló una ganancia (--full dice cuánta), estos no hallaron ninguna:
   *[other] Ensayos con presión más baja en suelo así: { $count } hallaron una ganancia (--full dice cuánta), estos no hallaron ninguna:
}
effects-sources = Número de fuentes de los efectos: { $count }; --full las muestra. De memoria: { $memory }. Práctica común, sin fuente: { $practice }.
effects-trial = { $effect } en { $ground }: { $found } [{ $source }, { $read }]
effects-trial-between = { $low } a { $high }
effects-trial-up-to = hasta { $high }
effects-trial-less = menos, sin número dado
effects-trial-no-difference = ninguna diferencia
effects-trial-of-traffic-to-failure = tránsito hasta la falla
effects-trial-of-asphalt-strain = deformación del asfalto
effects-trial-of-asphalt-life = vida del asfalto
effects-trial-of-rutting = roderas
effects-trial-of-aggregate-thickness = áridos necesarios
effects-trial-of-maintenance = mantenimiento de la superficie
effects-trial-of-sediment = sedimento
effects-trial-of-deep-stress = esfuerzo a 30 cm y más abajo
effects-trial-on-asphalt = asfalto
effects-trial-on-asphalt-on-peat = asfalto delgado sobre turba
effects-trial-on-thawed-pavement = camino pavimentado en deshielo
effects-trial-on-thin-membrane = sello delgado
effects-trial-on-aggregate = áridos
effects-trial-on-dry-strong-gravel = grava seca y firme
effects-trial-on-subsoil = suelo
effects-trial-read-abstract = resumen leído
effects-trial-read-news = noticia leída
