# Mots qui vont avec les unités et les sortes de nombres.
unit-pressure = Pression
unit-speed = Vitesse
unit-load = Charge
unit-distance = Distance
unit-temperature = Température
unit-time = Temps
unit-cold = { $pressure } à froid
unit-cold-at = { $pressure } à froid, à { $temperature }
unit-warm = { $pressure } à chaud, lue au manomètre
unit-at-least = au moins { $value }
unit-at-most = au plus { $value }
unit-from-to = { $low } à { $high }
unit-unknown = inconnu
unit-none = –
unit-percent-deflection = { $percent } de la hauteur de section
unit-at-place = à { $distance }
