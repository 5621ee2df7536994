# Tarjeta del conductor. Corta: se lee en la cabina.
card-up-to = hasta { $unit }
card-set = { $load_state }: ajuste del controlador, { $unit }
card-set-both = { $load_state }: ajuste, { $unit } (controlador: { $controller })
card-road-mark = * Va la presión de carretera: la propia del escalón no está aprobada.
card-dash-mark = Un guion: no use este escalón con esta carga.
card-fixed = Fija, puesta a mano, en frío: { $groups }.
card-hold = { $rung }: como máximo { $limit }
card-hold-one = { $limit }; después pare o suba la presión
card-chains = Con { $chains }, { $load_state }: { $cells }.
card-elsewhere = Fuera de esta ruta, remolque desconocido o carga desconocida: presión de carretera.
card-elsewhere-road = Escalón { $rung }, cargado: { $figures } { $unit }. Si no se alcanza: no pase la velocidad que permite el manómetro.
card-elsewhere-stand = Ninguna presión de carretera de este plan está aprobada para todos los circuitos: quédese y llame.

card-strip = La ruta
card-strip-described = Ruta { $route } como franja: superficies, señas y { $changes ->
    [one] { $changes } punto de cambio con su número
   *[other] { $changes } puntos de cambio con sus números
}; viaje cargado arriba, viaje vacío abajo. Triángulo lleno hacia arriba: subir. Triángulo vacío hacia abajo: bajar.
card-number = N.º
card-not-driven = Este acarreo no se puede conducir como está relevado; no se conocen puntos de cambio.
card-not-complete = NO TERMINA A TIEMPO: mantenga el tope menor hasta que termine en todos los circuitos.
card-before-first-move = Antes de moverse, suba la presión: { $channels }.
card-laden-after-loading = Cargado: elija { $state }, espere a que termine en todos los circuitos ({ $time }) y entonces salga.
card-laden-while-loading = Durante la carga: elija { $state } ({ $time }). No salga antes de que termine en todos los circuitos.
card-laden-rolling = Antes de cargar, en { $at }: elija { $state } ({ $time }). Cargado, no salga antes de que termine en todos los circuitos.
card-laden-not-possible = { $state }: no se conoce manera de llegar a las presiones de carga. No cargue; llame.
card-unloaded = Descargado: elija { $state } antes de salir.

card-gauge = Lo que permite el manómetro
card-gauge-how = Cada manómetro debe marcar al menos el número de la fila; el neumático más lento fija la velocidad. Un guion, o menos que la última fila: no conduzca. Más que la primera fila: no conduzca, baje primero la presión. En caliente o en frío.
card-gauge-none = Ninguna lectura permite conducir con lo aprobado. No conduzca; llame.
card-drive-up-to = Conduzca hasta, { $unit }
card-not-above = no más de

card-event = Si
card-do = entonces
card-event-brake-air = Hay poco aire de frenos
card-do-brake-air = Deje de inflar en el acto. Reduzca, pare en un lugar seguro, ponga el freno de estacionamiento. No se mueva antes de hallar la causa.
card-event-not-rising = Un circuito no sigue
card-do-not-rising = No pase lo que permite su manómetro. Pare en el próximo lugar seguro y llame.
card-event-late = Empezó tarde
card-do-late = Mantenga el tope menor hasta que termine en todos los circuitos. Nunca se adelante a la presión.
card-event-too-fast = Va por encima del tope
card-do-too-fast = Reduzca la velocidad con suavidad hasta el tope; después siga lento, o suba la presión. Tras mucho tiempo por encima: pare, deje enfriar los neumáticos, avise.
card-event-display = La pantalla está apagada o es dudosa
card-do-display = La presión no se conoce. Mida cada neumático a mano; hasta entonces a paso de hombre, fuera del camino.
card-event-stuck = Está atascado
card-do-stuck = Siga el procedimiento impreso o espere ayuda. Ningún número se inventa por teléfono.
card-event-shift-end = Termina el turno
card-supply-touches-brakes = En este acarreo falta aire: los frenos tienen prioridad. Si el inflado se detiene solo, mantenga el tope menor.
card-change-told = N.º { $number }: { $told }
