# Ord som hör till enheter och slag av tal.
unit-pressure = Tryck
unit-speed = Hastighet
unit-load = Last
unit-distance = Sträcka
unit-temperature = Temperatur
unit-time = Tid
unit-cold = { $pressure } kallt
unit-cold-at = { $pressure } kallt, vid { $temperature }
unit-warm = { $pressure } varmt, enligt mätaren
unit-at-least = minst { $value }
unit-at-most = högst { $value }
unit-from-to = { $low } till { $high }
unit-unknown = okänt
unit-none = –
unit-percent-deflection = { $percent } av sektionshöjden
unit-at-place = vid { $distance }
