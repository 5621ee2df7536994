# Gráficos de un viaje a lo largo de la ruta.
chart-strip-title = Viaje a lo largo de la ruta
chart-strip-haul = Acarreo { $haul }, ruta { $route }
chart-strip-description = Dos mitades lado a lado, cada una según el kilometraje: a la izquierda el viaje vacío, a la derecha el viaje cargado. De arriba abajo: elevación y superficie, velocidad, presión de los neumáticos, presión de suministro. { $changes ->
    [one] { $changes } punto de cambio está marcado.
   *[other] { $changes } puntos de cambio están marcados.
}
chart-empty-run = Viaje vacío
chart-laden-run = Viaje cargado
chart-load-state = estado { $name }
chart-travel-up = hacia el kilometraje creciente
chart-travel-down = hacia el kilometraje decreciente
chart-no-run = Ninguna muestra de este viaje en movimiento

chart-elevation = Elevación
chart-elevation-and-surface = Elevación y superficie
chart-no-elevation = Sin elevación dada
chart-speed = Velocidad
chart-tire-pressure = Presión de los neumáticos
chart-supply-pressure = Presión de suministro
chart-own-scale = cada viaje tiene su propia escala
chart-chainage = Kilometraje
chart-in-unit = { $what }, { $unit }
chart-names-hidden = { $count ->
    [one] { $count } nombre no se muestra por falta de espacio
   *[other] { $count } nombres no se muestran por falta de espacio
}

chart-surface-paved = pavimentado
chart-surface-sealed = con sello
chart-surface-gravel = ripio o grava
chart-surface-earth = tierra
chart-surface-soft-ground = suelo blando
chart-surface-sand = arena
chart-surface-snow-or-ice = nieve o hielo

chart-label-speed = velocidad
chart-label-cap = tope
chart-label-limit = límite
chart-label-supply = suministro

chart-flag-place = desde { $from }, completo en { $to }
chart-flag-place-open = desde { $from }
chart-flag-list = Puntos de cambio

chart-standing = Detenido
chart-standing-loading = { $time } min de carga
chart-standing-waiting-change = { $time } min de espera por la presión antes de salir
chart-standing-before-off = { $time } min antes de salir
chart-standing-unloading = { $time } min de descarga
chart-standing-on-the-way = { $time } min en { $place }
chart-standing-more = { $count } más, { $time } min en total
chart-standing-none = ninguna detención de un minuto o más

chart-legend-speed = velocidad recorrida
chart-legend-cap = tope de velocidad de las presiones que hay
chart-legend-limit = límite de velocidad del tramo
chart-legend-tire = presión de los neumáticos según el manómetro, un tipo de línea por circuito de aire
chart-legend-minimum = delgada, mismo tipo: la más baja permitida, en frío, en el escalón ordenado
chart-legend-supply = presión de suministro
chart-legend-compressor = el compresor entrega aire
chart-legend-change = del punto de cambio hasta donde el cambio debe estar completo
chart-legend-changing = barra: hay un cambio en curso
chart-legend-landmark = punto de referencia
chart-legend-lay-by = apartadero

# Gráficos de lo que cambia un plan.
chart-effects-title = Lo que cambia el plan
chart-effects-description = Arriba, barras de huella de contacto, desgaste o rodera del camino y resistencia a la rodadura sobre las de presión plena, para cada tramo y viaje y cada forma de andar, con sus bandas. Abajo, esfuerzo vertical en el suelo según la profundidad bajo el camión cargado.
chart-effects-band = Las barras van de presión plena (1) a la relación esperada; los bigotes, de bajo a alto.
chart-effects-patch = Huella de contacto, relación
chart-effects-road = Rodera o desgaste del camino, relación
chart-effects-rolling = Resistencia a la rodadura, relación
chart-effects-unknown = no se dio: vea Por llenar
chart-effects-depth = Esfuerzo en el suelo bajo el camión cargado: { $leg }
chart-effects-depth-note = Las líneas son el esfuerzo esperado; la sombra, la banda del plan de suelo firme a blando. Desde 30 cm hacia abajo las mediciones casi no hallaron efecto de la presión; ahí manda la carga.
chart-effects-stress = esfuerzo
chart-effects-below = profundidad
