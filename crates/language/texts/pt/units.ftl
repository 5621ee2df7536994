# Palavras que acompanham unidades e tipos de números.
unit-pressure = Pressão
unit-speed = Velocidade
unit-load = Carga
unit-distance = Distância
unit-temperature = Temperatura
unit-time = Tempo
unit-cold = { $pressure } a frio
unit-cold-at = { $pressure } a frio, a { $temperature }
unit-warm = { $pressure } a quente, como mostra o manômetro
unit-at-least = pelo menos { $value }
unit-at-most = no máximo { $value }
unit-from-to = { $low } a { $high }
unit-unknown = não se sabe
unit-none = –
unit-percent-deflection = { $percent } da altura da seção
unit-at-place = em { $distance }
