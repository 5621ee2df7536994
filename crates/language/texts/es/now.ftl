# La llamada desde el camino.
now-go = SIGA, NO MÁS RÁPIDO QUE { $speed }
now-go-slow = NO MÁS RÁPIDO QUE { $speed }, Y SOLO HASTA DONDE SE PUEDA REPARAR
now-walk = A PASO DE HOMBRE, FUERA DEL CAMINO. DESPUÉS MIDA LA PRESIÓN.
now-stop = DETÉNGASE

now-how-far = Hasta dónde
now-far-nowhere = nada hasta repararlo
now-far-off-the-road = fuera del camino hasta el lugar seguro más cercano, no más
now-far-hold = { $limit }; después deténgase o suba la presión
now-far-next-stop = hasta la próxima detención; mida otra vez ahí
now-truck = Camión
now-truck-unit = unidad { $unit }, { $combination }, acarreo { $haul }
now-truck-combination = { $combination }, acarreo { $haul }
now-holds-rung = Tiene el escalón
now-why = Por qué
now-next = Revise después
now-safety = Siempre
now-groups = Grupo de ejes por grupo de ejes
now-read = Lectura
now-air = Aire del neumático
now-at-most = Máximo
now-kept = sin medir
now-not-gauged = SIN MEDIR
now-set-for = Lo que estaba fijado, frente a lo que pide esta carga
now-was-set = Fijado
now-needed = Necesario

# Por qué.
now-reason-not-gauged = { $axle_group }: nadie lo midió. Lo que no se sabe no cuenta como bueno.
now-reason-kept-as-surveyed = { $axle_group }: sin medir; se toman los { $kept } en frío que da el levantamiento.
now-reason-under-service-share = { $axle_group }: { $cold } en frío son { $share } de los { $needed } que pide su carga a paso de hombre. Con 80 % o menos, no infle.
now-reason-too-soft = { $axle_group }: { $cold } en frío es muy blando para cualquier velocidad con esta carga; lo mínimo es { $needed } en frío.
now-reason-too-soft-approved = { $axle_group }: { $cold } en frío está bajo { $needed }, lo mínimo que el fabricante del neumático o una norma respalda con esta carga.
now-reason-nothing-approved = { $axle_group }: con { $cold } en frío nadie respalda ninguna velocidad con esta carga.
now-reason-cannot-be-reached = { $axle_group }: { $reading } no supera { $closes }, donde se cierran sus válvulas de rueda. El inflado desde la cabina no le llega.
now-reason-above-highest = { $axle_group }: { $cold } en frío supera la más alta, { $highest } ({ $governed_by }). Bájela antes de seguir.
now-reason-mates-differ = { $axle_group }: los neumáticos duales difieren en { $difference }; 5 psi (34 kPa) es lo máximo. Cuenta el más blando.
now-reason-overloaded = { $axle_group }: lleva { $load }, más que los { $highest } que resiste. Ninguna presión lo arregla.
now-reason-impossible = { $axle_group }: ninguna presión sirve: { $why }.
now-reason-sets-the-speed = { $axle_group } fija la velocidad. Lo que sigue por encima: { $governed_by }.
now-reason-load-unknown = Nadie conoce la carga: debe resistir todo estado de carga, { $load_state } el más pesado.
now-reason-warmth-unknown = Nadie dijo si los neumáticos estaban fríos: cuentan como calientes, o sea más blandos que la lectura.
now-reason-ran-last-hour = Anduvo en la última hora: ningún neumático está frío, se haya dicho lo que se haya dicho.
now-reason-trailer-unknown = Nadie conoce el remolque: necesita la presión de carretera a cualquier velocidad.
now-reason-trailer-left-low = El remolque quedó con presión baja: súbala y compare con el plan antes de moverlo.
now-reason-trailer-left-shut = El remolque quedó con las puntas de eje cerradas: ábralas y compare con el plan antes de moverlo.
now-reason-trailer-other-tires = El remolque tiene otros neumáticos; se juzgaron esos.
now-reason-other-load-state-selected = El controlador aún tiene las presiones de { $load_state }.
now-reason-held-shortly = El escalón { $rung } se mantiene solo por poco tiempo.
now-reason-unit-slip = { $axle_group }: { $reading } parece un número en { $meant } dado en { $typed }. Se tomó como se dio.
now-reason-unapproved-counted = PARA EL ESPECIALISTA, NO PARA EL CONDUCTOR: se contaron presiones que nadie aprobó.

# Qué revisar o hacer después.
now-check-gauge = { $axle_group }: mida cada neumático a mano, también los interiores.
now-check-raise = { $channel }: suba a { $set } (escalón { $rung }) detenido, espere a que termine y mida otra vez.
now-check-lower = { $axle_group }: deje enfriar los neumáticos, después baje a { $highest } en frío o menos.
now-check-leave-to-trained-people = { $axle_group }: no infle. Personas capacitadas sacan el aire, retiran la rueda y miran por dentro.
now-check-deflate-before-service = { $axle_group }: puede rodar así, pero el fabricante del neumático cuenta { $recommended } como recomendada. Antes de quitar una rueda, personas capacitadas lo desinflan por completo y lo inspeccionan.
now-check-find-why-softer = { $axle_group }: averigüe por qué un neumático está más blando: fuga, punta de eje cerrada o línea tapada.
now-check-wheel-ends-shut = { $axle_group }: { $count } puntas de eje están cerradas a mano y no siguen; mida esos neumáticos uno por uno.
now-check-raise-before-parking = { $axle_group }: suba la presión antes de estacionar; en la noche más fría sus válvulas de rueda se cerrarían.
now-check-ask-maker = { $channel }: no se puede fijar ninguna presión que alguien respalde con esta carga. Pregunte al fabricante del neumático antes de andar así.
now-check-find-out-load = Averigüe qué carga lleva, o péselo.
now-check-take-load-off = { $axle_group }: quite carga.
now-check-read-sidewalls = Remolque: lea la medida, el rango de carga y el máximo grabado en cada flanco, y compare.
now-check-open-wheel-ends = Remolque: abra todas las puntas de eje.
now-check-select-load-state = Elija { $load_state }, espere a que termine en todos los circuitos, y mida.
now-check-read-unit-again = { $axle_group }: lea otra vez el manómetro, con su unidad.
now-check-ask-again = Después pregunte otra vez con lo que marca el manómetro.

# Lo mismo como tabla para una tarjeta.
now-table-title = Velocidad más alta según el manómetro, acarreo { $haul }
now-table-cold = Para neumáticos fríos: detenidos tres horas, o movidos una milla (1600 m) como máximo.
now-table-warm = Para neumáticos calientes.
now-table-not-known = Para neumáticos de los que nadie sabe si están fríos: cuentan como calientes.
now-table-how = Cuenta el circuito más lento. –: no conduzca; muy blando encima de la primera velocidad de una columna, muy duro bajo la última. Lectura entre dos filas: tome la más blanda, y un guion como guion.
