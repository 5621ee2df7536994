# Palabras que van con las unidades y las clases de números.
unit-pressure = Presión
unit-speed = Velocidad
unit-load = Carga
unit-distance = Distancia
unit-temperature = Temperatura
unit-time = Tiempo
unit-cold = { $pressure } en frío
unit-cold-at = { $pressure } en frío, a { $temperature }
unit-warm = { $pressure } en caliente, según el manómetro
unit-at-least = al menos { $value }
unit-at-most = como máximo { $value }
unit-from-to = { $low } a { $high }
unit-unknown = no se sabe
unit-none = –
unit-percent-deflection = { $percent } de la altura de sección
unit-at-place = en { $distance }
