# Graphiques d'un trajet le long du parcours.
chart-strip-title = Trajet le long du parcours
chart-strip-haul = Transport { $haul }, parcours { $route }
chart-strip-description = Deux moitiés côte à côte, chacune le long du chaînage : à gauche le trajet à vide, à droite le trajet chargé. De haut en bas : altitude et surface, vitesse, pression des pneus, pression d'alimentation. { $changes ->
    [one] { $changes } point de changement est marqué.
   *[other] { $changes } points de changement sont marqués.
}
chart-empty-run = Trajet à vide
chart-laden-run = Trajet chargé
chart-load-state = état { $name }
chart-travel-up = vers les chaînages croissants
chart-travel-down = vers les chaînages décroissants
chart-no-run = Aucun échantillon de ce trajet en mouvement

chart-elevation = Altitude
chart-elevation-and-surface = Altitude et surface
chart-no-elevation = Altitude non donnée
chart-speed = Vitesse
chart-tire-pressure = Pression des pneus
chart-supply-pressure = Pression d'alimentation
chart-own-scale = chaque trajet a sa propre échelle
chart-chainage = Chaînage
chart-in-unit = { $what }, { $unit }
chart-names-hidden = { $count ->
    [one] { $count } nom non montré faute de place
   *[other] { $count } noms non montrés faute de place
}

chart-surface-paved = asphalté
chart-surface-sealed = enduit
chart-surface-gravel = gravier
chart-surface-earth = terre
chart-surface-soft-ground = sol mou
chart-surface-sand = sable
chart-surface-snow-or-ice = neige ou glace

chart-label-speed = vitesse
chart-label-cap = plafond
chart-label-limit = limite
chart-label-supply = alim.

chart-flag-place = de { $from }, terminé à { $to }
chart-flag-place-open = de { $from }
chart-flag-list = Points de changement

chart-standing = À l'arrêt
chart-standing-loading = { $time } min de chargement
chart-standing-waiting-change = { $time } min d'attente des pressions avant de partir
chart-standing-before-off = { $time } min avant de partir
chart-standing-unloading = { $time } min de déchargement
chart-standing-on-the-way = { $time } min à { $place }
chart-standing-more = { $count } autres, { $time } min en tout
chart-standing-none = aucun arrêt d'une minute ou plus

chart-legend-speed = vitesse roulée
chart-legend-cap = plafond de vitesse des pressions tenues
chart-legend-limit = limite de vitesse du tronçon
chart-legend-tire = pression des pneus lue au manomètre, un style de ligne par circuit d'air
chart-legend-minimum = mince, même style : plus bas permis, à froid, sur l'échelon ordonné
chart-legend-supply = pression d'alimentation
chart-legend-compressor = le compresseur débite
chart-legend-change = du point de changement à l'endroit où le changement doit être terminé
chart-legend-changing = barre : un changement est en cours
chart-legend-landmark = repère
chart-legend-lay-by = halte

# Graphiques de ce qu'un plan change.
chart-effects-title = Ce que le plan change
chart-effects-description = En haut, barres de la surface de contact, de l'usure ou de l'ornière de la route et de la résistance au roulement sur celles à pleine pression, pour chaque tronçon et trajet et chaque façon de rouler, avec leurs fourchettes. En bas, contrainte verticale dans le sol selon la profondeur sous le camion chargé.
chart-effects-band = Les barres vont de la pleine pression (1) au rapport attendu; les moustaches, du bas au haut.
chart-effects-patch = Surface de contact, rapport
chart-effects-road = Ornière ou usure de la route, rapport
chart-effects-rolling = Résistance au roulement, rapport
chart-effects-unknown = non donné : voir À remplir
chart-effects-depth = Contrainte dans le sol sous le camion chargé : { $leg }
chart-effects-depth-note = Lignes : contrainte attendue; ombre : fourchette du plan, du sol ferme au sol mou. À partir de 0,3 m de profondeur, les mesures n'ont trouvé presque aucun effet de la pression; la charge y commande.
chart-effects-stress = contrainte
chart-effects-below = profondeur
