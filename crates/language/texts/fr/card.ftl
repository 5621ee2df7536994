# Carte du chauffeur. Courte : elle se lit en cabine.
card-up-to = jusqu'à { $unit }
card-set = { $load_state } : consigne du contrôleur, { $unit }
card-set-both = { $load_state } : consigne, { $unit } (contrôleur : { $controller })
card-road-mark = * La pression de route la remplace : celle de l'échelon n'est pas approuvée.
card-dash-mark = Un tiret : ne pas rouler sur cet échelon avec cette charge.
card-fixed = Fixe, réglée à la main, à froid : { $groups }.
card-hold = { $rung } : au plus { $limit }
card-hold-one = { $limit }; ensuite s'arrêter ou monter la pression
card-chains = Avec { $chains }, { $load_state } : { $cells }.
card-elsewhere = Hors de ce trajet, remorque inconnue ou charge inconnue : pression de route.
card-elsewhere-road = Échelon { $rung }, chargé : { $figures } { $unit }. Pas atteinte : ne pas dépasser la vitesse que permet le manomètre.
card-elsewhere-stand = Aucune pression de route de ce plan n'est approuvée pour tous les circuits : rester sur place et appeler.

card-strip = Le trajet
card-strip-described = Trajet { $route } en bande : surfaces, repères et { $changes ->
    [one] { $changes } point de changement avec son numéro
   *[other] { $changes } points de changement avec leurs numéros
} ; parcours chargé en haut, parcours vide en bas. Triangle plein vers le haut : monter. Triangle vide vers le bas : baisser.
card-number = N°
card-not-driven = Ce transport ne peut pas se faire tel que relevé; aucun point de changement n'est connu.
card-not-complete = PAS FINI À TEMPS : garder le plafond le plus bas jusqu'à la fin sur tous les circuits.
card-before-first-move = Avant de bouger, monter la pression : { $channels }.
card-laden-after-loading = Chargé : choisir { $state }, attendre la fin sur tous les circuits ({ $time }), puis partir.
card-laden-while-loading = Pendant le chargement : choisir { $state } ({ $time }). Ne pas partir avant la fin sur tous les circuits.
card-laden-rolling = Avant le chargement, à { $at } : choisir { $state } ({ $time }). Chargé, ne pas partir avant la fin sur tous les circuits.
card-laden-not-possible = { $state } : aucun moyen connu d'atteindre les pressions en charge. Ne pas charger; appeler.
card-unloaded = Déchargé : choisir { $state } avant de partir.

card-gauge = Ce que permet le manomètre
card-gauge-how = Chaque manomètre doit indiquer au moins le nombre de la ligne; le pneu le plus lent fixe la vitesse. Un tiret, ou moins que la dernière ligne : ne pas rouler. Plus que la première ligne : ne pas rouler, baisser d'abord la pression. À chaud comme à froid.
card-gauge-none = Aucune lecture ne permet de rouler avec ce qui est approuvé. Ne pas rouler; appeler.
card-drive-up-to = Rouler jusqu'à, { $unit }
card-not-above = au plus

card-event = Si
card-do = alors
card-event-brake-air = L'air des freins est bas
card-do-brake-air = Arrêter aussitôt de gonfler. Ralentir, s'arrêter en lieu sûr, serrer le frein de stationnement. Ne pas repartir avant d'avoir trouvé la cause.
card-event-not-rising = Un circuit ne suit pas
card-do-not-rising = Ne pas dépasser ce que permet son manomètre. S'arrêter au prochain lieu sûr et appeler.
card-event-late = Vous avez commencé tard
card-do-late = Garder le plafond le plus bas jusqu'à la fin sur tous les circuits. Ne jamais devancer la pression.
card-event-too-fast = Vous dépassez le plafond
card-do-too-fast = Ralentir doucement au plafond; puis rester lent, ou monter la pression. Après un long dépassement : s'arrêter, laisser refroidir les pneus, le signaler.
card-event-display = L'affichage est éteint ou douteux
card-do-display = La pression n'est pas connue. Mesurer chaque pneu à la main; d'ici là au pas, hors de la route.
card-event-stuck = Vous êtes enlisé
card-do-stuck = Suivre la procédure imprimée, ou attendre de l'aide. Aucun nombre ne s'invente au téléphone.
card-event-shift-end = Le quart finit
card-supply-touches-brakes = L'air baisse sur ce transport : les freins passent d'abord. Si le gonflage s'arrête seul, garder le plafond le plus bas.
card-change-told = No { $number } : { $told }
