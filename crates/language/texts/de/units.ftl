# Wörter zu Einheiten und Arten von Zahlen.
unit-pressure = Druck
unit-speed = Geschwindigkeit
unit-load = Last
unit-distance = Strecke
unit-temperature = Temperatur
unit-time = Zeit
unit-cold = { $pressure } kalt
unit-cold-at = { $pressure } kalt, bei { $temperature }
unit-warm = { $pressure } warm, wie abgelesen
unit-at-least = mindestens { $value }
unit-at-most = höchstens { $value }
unit-from-to = { $low } bis { $high }
unit-unknown = nicht bekannt
unit-none = –
unit-percent-deflection = { $percent } der Querschnittshöhe
unit-at-place = bei { $distance }
