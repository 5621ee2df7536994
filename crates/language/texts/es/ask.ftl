# El plan preguntado al revés.
ask-change = Punto de cambio { $number }, { $load_state }: de { $from } a { $to }, empezado en { $at }, completo en { $reach_by }.
ask-judged-nine-of-ten = Juzgado por nueve de diez cambios. Cada medio por sí solo, todo lo demás como está; planificado de nuevo con él.
ask-judged-nominal = Juzgado por el cambio nominal. Cada medio por sí solo, todo lo demás como está; planificado de nuevo con él.

ask-supply-title = Qué suministro de aire alcanza
ask-supply-fits = Alcanza como está: no hay que agregar nada.
ask-supply-compressor = Compresor
ask-supply-times = { $times } veces la entrega actual
ask-supply-times-not = ni siquiera { $times } veces la entrega actual
ask-supply-tank = Depósito de reserva
ask-supply-reserve = { $volume } más
ask-supply-reserve-not = ni siquiera { $volume } más

ask-cap-title = Circuito de aire { $channel }, { $load_state }, { $pressure } en frío
ask-cap-approved = Fabricante o norma respalda
ask-cap-window = Los rangos permiten
ask-cap-exact = Lo mismo, sin redondear
ask-cap-governed = Lo que sigue por encima
ask-cap-none = ninguna velocidad
ask-cap-above-highest = SOBRE LA MÁS ALTA: BÁJELA PRIMERO

ask-late-title = Desde cuándo es demasiado tarde
ask-late-latest = En un viaje usual, el último inicio es en { $latest }. El plan deja { $in_hand } de holgura antes, para nueve de diez viajes.
ask-late-never = Ningún inicio llega a tiempo: desde ningún lugar el cambio termina donde debe.
ask-late-standing = Se hace detenido, así que no hay un inicio más tarde.
ask-late-by = Más tarde por
ask-late-complete = Completo
ask-late-wrong-road = Con presión incorrecta
ask-late-descent = Bajada
ask-late-on-descent = INFLA EN UNA BAJADA
ask-late-how = Más tarde que el último inicio. Tiempo frente a un inicio ahí, en todo el ciclo; nominal, sin variación entre camiones y viajes.
