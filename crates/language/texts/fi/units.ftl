# Sanoja yksiköiden ja lukujen viereen.
unit-pressure = Paine
unit-speed = Nopeus
unit-load = Kuorma
unit-distance = Matka
unit-temperature = Lämpötila
unit-time = Aika
unit-cold = { $pressure } kylmänä
unit-cold-at = { $pressure } kylmänä, { $temperature }
unit-warm = { $pressure } lämpimänä, mittarin lukema
unit-at-least = vähintään { $value }
unit-at-most = enintään { $value }
unit-from-to = { $low } – { $high }
unit-unknown = ei tiedossa
unit-none = –
unit-percent-deflection = { $percent } poikkileikkauksen korkeudesta
unit-at-place = kohdassa { $distance }
