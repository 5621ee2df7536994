# La page du plan, de haut en bas.
plan-title = Plan de pression
plan-for-haul = Plan de pression du transport { $haul }
plan-combination = Ensemble
plan-route = Trajet
plan-draft = Ébauche : plan non émis, pas pour le chauffeur
plan-issued = Plan { $number }, émis le { $date }

plan-ladder = Échelle
plan-rung = Échelon
plan-rungs = Échelons
plan-speed-cap = Plafond de vitesse
plan-hold-limit = Limite de maintien
plan-hold-limit-both = { $time } ou { $distance }, selon ce qui vient en premier; puis s'arrêter ou augmenter la pression
plan-no-hold-limit = sans limite
plan-channel = Circuit d'air
plan-axle-group = Groupe d'essieux
plan-load-state = État de charge
plan-laden = chargé
plan-empty = à vide
plan-chain-state = Chaînes
plan-chains-on = montées
plan-chains-off = enlevées
plan-value-to-set = Régler le contrôleur à
plan-cold-pressure = Pression à froid
plan-deflection = Écrasement

plan-window = Plage
plan-lowest = Plus bas
plan-highest = Plus haut
plan-minimum = Minimum
plan-maximum = Maximum
plan-governed-by = Décidé par
plan-next-closest = Suivant
plan-source = Source
plan-approval = Accord
plan-approval-maker = approuvé par le fabricant du pneu
plan-approval-standard = dans la norme
plan-approval-needed = à approuver
plan-approval-not-possible = impossible
plan-approval-expired = approbation expirée le { $date } : retour à l'ébauche
plan-no-window = Impossible : le plus bas permis, { $lowest }, dépasse le plus haut permis, { $highest }

plan-stack = Ce qui est ajouté
plan-stack-gauge = erreur du manomètre
plan-stack-deadband = zone morte du contrôleur
plan-stack-duals = différence entre jumelés
plan-stack-load-share = partage inégal de la charge
plan-stack-warmest = pneu le plus chaud sur cet échelon
plan-stack-snap = jusqu'au pas suivant du contrôleur
plan-stack-total = ajouté en tout

plan-change-points = Points de changement
plan-change-count = { $count ->
    [one] { $count } point de changement
   *[other] { $count } points de changement
}
plan-start-raising = COMMENCER À MONTER
plan-start-lowering = COMMENCER À BAISSER
plan-stop-and-change = ARRÊTER ET CHANGER
plan-lead = Avance
plan-reach-by = Terminé à
plan-change-time = Durée du changement
plan-change-time-slow = Durée, un trajet sur dix est plus lent
plan-cap-while-changing = Plafond de vitesse pendant le changement
plan-from-rung = De
plan-to-rung = À

plan-cycle = Cycle
plan-cycle-time = Durée d'un cycle
plan-cycle-time-added = Ajouté par les changements de pression
plan-cycle-fuel = Carburant d'un cycle
plan-compressor-loaded = Compresseur en charge
plan-lowest-supply = Pression d'alimentation la plus basse
plan-before-first-move = Avant le premier départ
plan-before-first-move-raise = Monter à { $pressure } à froid avant de bouger : après la nuit la plus froide, un pneu pourrait être trop bas
plan-shift-end = Fin de quart : monter à la pression de route avant de stationner

plan-effects = Ce que cela change
plan-cost = Coût
plan-what-decided = Ce qui a décidé chaque nombre
plan-cautions = Mises en garde
plan-problems = Non résolu

plan-standing-read = lu dans la source
plan-standing-given = donné pour ce parc
plan-standing-practice = pratique courante, sans source
plan-standing-memory = de mémoire : comparer à la source avant usage
plan-extrapolated = hors du domaine de sa source

# La page dans un terminal : étiquettes de tableaux et lignes courtes.
plan-route-forward = { $route }, { $length }; la charge va vers les chaînages croissants
plan-route-backward = { $route }, { $length }; la charge va vers les chaînages décroissants
plan-cold-named-at = Températures
plan-temperatures = les pressions à froid valent à { $reference }; prévu de { $coldest } à { $warmest }
plan-for-units = Unités
plan-measured-delivery = le débit du compresseur
plan-measured-conductance = la conductance de { $channel }
plan-measured-tire-volume = le volume d'air des pneus de { $channel }
plan-measured-counted = Compté : { $what } de l'unité { $unit } est à { $share } % de celui de son type, mesuré le { $date }.
plan-measured-not-counted = Non compté : { $what } de l'unité { $unit } est à { $share } % de celui de son type, mesuré le { $date }. Ses changements durent plus qu'ici; la planifier avec --unit { $unit }.
plan-controller = Contrôleur
plan-controller-unit = travaille en { $unit }
plan-controller-other-unit = travaille en { $unit }; la valeur à régler est aussi donnée en { $unit }, et c'est elle qui compte
plan-breaks-limits = { $count ->
    [one] NE PAS ROULER SELON CE PLAN : il dépasse une limite.
   *[other] NE PAS ROULER SELON CE PLAN : il dépasse { $count } limites.
}
plan-axle-groups = Groupes d'essieux et charges
plan-tire = Pneu
plan-tires = Pneus
plan-single = simples
plan-dual = jumelés
plan-fixed-pressure = pression fixe

plan-ladder-how = Réglage : ce que reçoit le contrôleur, pour le pneu le plus chaud de l'échelon. À froid : ce qui reste dans un pneu froid. Plus bas et plus haut : la plage, à froid.
plan-ladder-same = { $cells } : comme { $chains }
plan-cap = Plafond
plan-set = Réglage
plan-cold = À froid
plan-channel-brief = Circuit
plan-approval-brief-maker = fabricant
plan-approval-brief-standard = norme
plan-cell-not-possible = { $cell } est impossible : { $why }.
plan-cell-hold = { $cell } : au plus { $distance } à la fois, selon la ligne du fabricant; puis s'arrêter ou augmenter la pression.
plan-rung-unused = Ce transport n'utilise pas : { $rungs }.

plan-more-cells = { $count ->
    [one] Une autre case n'est pas montrée : autre état de charge ou de chaînes, échelons non utilisés sur ce transport.
   *[other] { $count } autres cases ne sont pas montrées : autres états de charge et de chaînes, échelons non utilisés sur ce transport.
}
plan-more-not-possible = { $count ->
    [one] L'une d'elles est impossible – { $cells }.
   *[other] { $count } d'entre elles sont impossibles – { $cells }.
}
plan-more-possible = Toutes sont possibles.
plan-more-how = Ajouter --full pour tout voir, avec le compte entier de chaque nombre.
plan-decided-by = décidé par
plan-decided-lowest = plus bas
plan-decided-next = suivant
plan-decided-set = réglage
plan-decided-how = Plus bas : la limite qui a décidé, à froid. Suivant : celle qui déciderait sans elle. Réglage : le plus bas et ce qui est ajouté.
plan-decided-allowance = +{ $share }

plan-ground = le sol voudrait { $advice } ou moins (conseil)
plan-stack-sealed-gauge = manomètre scellé à cette altitude
plan-stack-hand-set = réglé plus haut à la main
plan-stack-brief-gauge = manomètre
plan-stack-brief-deadband = zone morte
plan-stack-brief-duals = jumelés
plan-stack-brief-warmest = pneu chaud et pas
plan-stack-brief-sealed-gauge = manomètre scellé
plan-stack-brief-hand-set = à la main
plan-stack-sums-to = { $items } : réglage { $set } (pneu le plus chaud { $warmest })
plan-deflection-then = écrasement { $percent } de la hauteur de section
plan-other-tire = là où le pneu { $tire } est monté
plan-worst-tire = { $load } sur le pire pneu
plan-covers = couvre { $speed }
plan-load-allowance = tolérance de charge { $share }
plan-pressure-added = { $pressure } ajoutés par la ligne
plan-deflection-at-most = au plus { $share } de la hauteur de section
plan-from-reading = de { $pressure }
plan-at-temperature = à { $temperature }
plan-least-gap = { $gap } au moins
plan-standing-brief-read = lu
plan-standing-brief-given = donné
plan-standing-brief-memory = de mémoire

plan-fixed-groups = Groupes à pression fixe
plan-worst-tire-load = Pire pneu
plan-holds-cold = Garde, à froid
plan-needs-cold = Requis, à froid
plan-verdict = Verdict
plan-enough = suffisant
plan-too-low = TROP BAS
plan-morning-after = Le lendemain matin
plan-morning-how = Stationné sur l'échelon le plus bas, après une nuit à { $coldest } : ce que lit un manomètre, et ce qu'il faut au pneu à vide à cet endroit.
plan-parked-on = Stationné sur
plan-reads = Lecture
plan-needs = Requis
plan-share = Part
plan-may-move = peut partir
plan-raise-first = MONTER D'ABORD

plan-change-points-how = Dans l'ordre du trajet. Commencer à l'endroit ou avant; le nouveau plafond de vitesse vaut dès le début d'une baisse, et dès la fin d'une montée. { $times }
plan-times-nominal = Durées et avances nominales, sans dispersion entre camions et trajets.
plan-times-sampled = Durée : le milieu de nombreux trajets, entre parenthèses ce que neuf sur dix tiennent; les avances valent pour neuf sur dix.
plan-times-partly-sampled = Durée : le milieu de nombreux trajets, entre parenthèses ce que neuf sur dix tiennent; les avances valent pour neuf sur dix. Une durée sans parenthèses est nominale, son avance aussi.
plan-time-sampled = Durée
    (9 sur 10)
plan-does-not-fit-p90 = Le point de changement { $number } convient à un trajet habituel; plus d'un trajet sur dix n'est pas terminé là où il doit l'être.
plan-no-change-points = Aucun : un seul échelon sert tout le trajet.
plan-done-by = Terminé à
plan-run = Trajet { $load_state }
plan-number = Nº
plan-at = À
plan-place = Endroit
plan-call = Ordre
plan-from-to = Échelons
plan-time = Durée
plan-at-landmark = à { $landmark }
plan-before-landmark = { $distance } avant { $landmark }
plan-beyond-landmark = { $distance } après { $landmark }
plan-does-not-fit = Le point de changement { $number } ne convient pas : le changement n'est pas terminé là où il doit l'être.
plan-refused-compressor-limit = Le point de changement { $number } serait terminé à temps et il est refusé : le compresseur tournerait sans pause plus longtemps que permis.
plan-refused-supply-before-descent = Le point de changement { $number } serait terminé à temps et il est refusé : les réservoirs ne seraient pas au seuil d'enclenchement en haut de la longue descente suivante.
plan-chosen-way = Le point de changement { $number } se fait ainsi : { $way }.
plan-other-ways = Point de changement { $number }, autres façons : { $ways }.
plan-before-descent = Le point de changement { $number } est plus tôt qu'il ne le serait, parce qu'aucun air n'est pris dans une longue descente ni juste avant.
plan-way-rolling = en roulant
plan-way-go-on-slowly = continuer au plafond plus bas sur { $distance } après l'endroit
plan-way-lay-by = arrêter à { $place }, à { $km }, jusqu'à la fin
plan-way-slower = rouler le tronçon d'avant à { $speed } en moyenne
plan-way-other-rung = rouler sur l'échelon { $rung }, atteint à temps
plan-way-more-air = { $times } fois le débit actuel du compresseur
plan-way-more-road = commencer { $distance } plus tôt
plan-loses = perd { $time }
plan-gains = gagne { $time }
plan-loses-nothing = ne coûte pas de temps
plan-wrong-road = mauvaise pression sur { $distance }
plan-on-descent = { $what }, et gonfle les pneus dans une longue descente, où les freins ont besoin de l'air
plan-late = Si le chauffeur commence tard : temps, route à la mauvaise pression, air de chaque changement
plan-late-by = En retard de { $distance }
plan-never = Jamais
plan-run-ends = le trajet finit avant
plan-lowest-supply-brief = Alim. basse
plan-compressor-run = Compresseur
    à la fois

plan-laden-change = Des pressions à vide aux pressions chargées
plan-way = Façon
plan-time-lost = Temps perdu
plan-ordered-at = Ordre à
plan-empty-road-hard = À vide, aux
    pressions chargées
plan-choice = Choix
plan-chosen = choisi
plan-chosen-not-possible = choisi, IMPOSSIBLE
plan-laden-not-allowed-while-loading = le relevé ne permet pas de changement pendant le chargement
plan-laden-road-too-short = le dernier bout de route avant le chargement est trop court
plan-laden-never-complete = l'air n'atteint pas la pression
plan-laden-why = { $way } : impossible, { $why }.
plan-laden-rolling = en roulant, avant le chargement
plan-laden-while-loading = pendant le chargement
plan-laden-after-loading = à l'arrêt, après le chargement

plan-cycle-waited = Attente pour la pression seule
plan-cycle-water = Eau aspirée, pour le dessiccateur
plan-cycles-per-day = Cycles par jour
plan-part = Partie
plan-waited = Attente
plan-fuel = Carburant
plan-compressor-time = Compresseur
plan-phase-shift-start = début de quart
plan-phase-empty = trajet à vide
plan-phase-loading = chargement
plan-phase-laden = trajet chargé
plan-phase-unloading = déchargement

plan-sources = Sources
plan-cautions-broken = Ceci dépasse une limite. Ne pas rouler selon le plan avant correction :
plan-cautions-told = À savoir aussi :

# Comment une échelle a été trouvée.
plan-search = Pourquoi cette échelle
plan-search-asked = Recherche : au plus { $asked } échelons demandés, { $found } gardés, parmi { $caps } plafonds de vitesse de { $lowest } à { $highest }.
plan-search-required = Exigé par le relevé : { $caps }.
plan-search-term = Un cycle prend
plan-search-amount = Quantité
plan-search-price = Prix
plan-search-time = conduite et attente
plan-search-hard-road = plus dur que le sol ne le veut, kPa km
plan-search-changes = changements
plan-search-compressor = compresseur en charge
plan-search-in-all = en tout
plan-search-price-time = { $price } l'heure
plan-search-price-hard-road = { $price } le kPa km
plan-search-price-changes = { $price } le changement
plan-search-price-compressor = { $price } l'heure
plan-search-fewer-more = Un échelon de moins : { $difference } { $currency } de plus par cycle.
plan-search-fewer-less = Un échelon de moins : { $difference } { $currency } de moins par cycle.
plan-search-fewer-same = Un échelon de moins coûte autant.
plan-search-no-fewer = Un échelon de moins : aucune échelle ainsi faite ne couvre tous les tronçons.
plan-search-more-more = Un échelon de plus : { $difference } { $currency } de plus par cycle.
plan-search-more-less = Un échelon de plus : { $difference } { $currency } de moins par cycle.
plan-search-more-same = Un échelon de plus n'économise rien.
plan-search-no-more = Un échelon de plus : il ne reste aucun plafond de vitesse à essayer.
plan-search-exact = Écart 0 : sur la route découpée en tronçons et les plafonds essayés, aucun autre choix ne coûte moins.
plan-search-gap = Écart { $gap } { $currency } : la recherche a été abrégée, et un autre choix pourrait coûter cela de moins.
plan-search-rounds = { $count ->
    [one] L'échelle trouvée a ensuite été planifiée en entier, une fois.
   *[other] L'échelle trouvée a été planifiée en entier { $count } fois, avec le coût réel de chaque changement.
}

# Cases dans une ligne de texte.
cells-every-rung = tous les échelons
cells-on = { $states } ({ $rungs })
