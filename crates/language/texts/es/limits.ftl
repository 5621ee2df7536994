# Qué decide la presión más baja y la más alta de un rango.
limit-load-table = tabla de carga e inflado
limit-load-power-law = carga y punto nominal (ley de potencia)
limit-low-speed-allowance = margen de la tabla a baja velocidad
limit-maker-row = fila aprobada por el fabricante del neumático
limit-lowest-row = la más baja publicada: tablas y práctica no bajan más con este tope
limit-deflection = deflexión para el tope de velocidad
limit-bead = talón y llanta
limit-wheel-valve = válvula de rueda de cierre automático, con el mayor frío
limit-flat-rule = camino público: bajo la mitad del máximo grabado cuenta como desinflado
limit-roadside-hot = camino público: control en ruta de un neumático caliente
limit-permit-minimum = permiso, mínimo
limit-permit-maximum = permiso, máximo
limit-dual-gap = separación entre duales
limit-mate-diameter = diámetro del dual vecino
limit-chains = cadenas: presión de carretera
limit-chains-shared = cadenas en otro grupo del mismo circuito de aire
limit-turning-scrub = arrastre al girar
limit-tire-heat = calor del neumático
limit-tire-maximum = máximo grabado en el neumático
limit-rim-maximum = llanta
limit-supply = presión de suministro con la que se puede contar
limit-ground = suelo (consejo)
limit-fixed = fija: este grupo no tiene circuito de aire
limit-hand-set = fijada a mano en el levantamiento
limit-other-group = otro grupo de ejes del mismo circuito de aire
limit-service-rule = 80 % de la presión necesaria
limit-heavier-state = estado de carga desconocido: se usa el siguiente más pesado
limit-unknown-trailer = remolque desconocido: presión de carretera
limit-restricted-speed = tabla de velocidad restringida

# Lo mismo en una columna.
limit-brief-load-table = tabla de carga
limit-brief-restricted-speed = tabla velocidad
limit-brief-maker-row = fila fabricante
limit-brief-deflection = deflexión
limit-brief-bead = talón
limit-brief-lowest-row = menor publicada
limit-brief-wheel-valve = válvula de rueda
limit-brief-flat-rule = mitad del máx
limit-brief-roadside-hot = control caliente
limit-brief-dual-gap = entre duales
limit-brief-chains = cadenas
limit-brief-turning-scrub = arrastre
limit-brief-tire-heat = calor
limit-brief-tire-maximum = máximo grabado
limit-brief-rim-maximum = llanta
limit-brief-supply = suministro
limit-brief-permit-minimum = permiso
limit-brief-permit-maximum = permiso
limit-brief-ground = suelo (consejo)

# Por qué una celda no es posible.
why-overloaded = el peor neumático lleva { $load }, más que los { $highest } permitidos a { $cap }
why-too-fast = el tope de velocidad de { $cap } supera los { $rated } del símbolo de velocidad del neumático
why-too-hot = el aire del neumático pasa de { $highest } con cualquier presión
why-duals-touch = los duales se tocan con cualquier presión con una separación de { $spacing }
why-no-deflection = ninguna presión mantiene la deflexión bajo { $share }
why-empty-supply = hay que fijarla en { $lowest }, y el suministro llega a { $highest }
why-empty-rim = hay que fijarla en { $lowest }, y la llanta resiste { $highest }
why-empty-tire = hay que fijarla en { $lowest }, y el máximo grabado es { $highest }
why-empty-permit = hay que fijarla en { $lowest }, y el permiso admite { $highest }
why-not-rated = el neumático no tiene carga nominal para este montaje

# Lo mismo en una columna.
why-brief-overloaded = SOBRECARGA
why-brief-too-fast = muy rápido
why-brief-too-hot = muy caliente
why-brief-duals-touch = duales se tocan
why-brief-no-deflection = deflexión
why-brief-not-rated = sin carga nominal
why-brief-empty-supply = sobre suministro
why-brief-empty-rim = sobre llanta
why-brief-empty-tire = sobre máx grabado
why-brief-empty-permit = sobre permiso
