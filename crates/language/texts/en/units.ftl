# Words that go with units and kinds of number.
unit-pressure = Pressure
unit-speed = Speed
unit-load = Load
unit-distance = Distance
unit-temperature = Temperature
unit-time = Time
unit-cold = { $pressure } cold
unit-cold-at = { $pressure } cold, at { $temperature }
unit-warm = { $pressure } warm, as the gauge reads
unit-at-least = at least { $value }
unit-at-most = at most { $value }
unit-from-to = { $low } to { $high }
unit-unknown = not known
unit-none = –
unit-percent-deflection = { $percent } of section height
unit-at-place = at { $distance }
