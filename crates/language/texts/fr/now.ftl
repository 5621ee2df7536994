# L'appel de la route.
now-go = ROULER, PAS PLUS VITE QUE { $speed }
now-go-slow = PAS PLUS VITE QUE { $speed }, ET SEULEMENT JUSQU'AU LIEU DE RÉPARATION
now-walk = AU PAS, HORS DE LA ROUTE. PUIS MESURER LA PRESSION.
now-stop = ARRÊTER

now-how-far = Jusqu'où
now-far-nowhere = pas du tout avant réparation
now-far-off-the-road = hors de la route jusqu'à l'endroit sûr le plus proche, pas plus loin
now-far-hold = { $limit }; puis s'arrêter ou monter la pression
now-far-next-stop = jusqu'au prochain arrêt; mesurer de nouveau là
now-truck = Camion
now-truck-unit = unité { $unit }, { $combination }, transport { $haul }
now-truck-combination = { $combination }, transport { $haul }
now-holds-rung = Tient l'échelon
now-why = Pourquoi
now-next = À vérifier ensuite
now-safety = Toujours
now-groups = Groupe d'essieux par groupe d'essieux
now-read = Lecture
now-air = Air du pneu
now-at-most = Au plus
now-kept = non mesuré
now-not-gauged = NON MESURÉ
now-set-for = Ce qui était réglé, par rapport à ce que demande cette charge
now-was-set = Réglé
now-needed = Requis

# Pourquoi.
now-reason-not-gauged = { $axle_group } : personne ne l'a mesuré. Ce qui est inconnu ne compte pas comme bon.
now-reason-kept-as-surveyed = { $axle_group } : non mesuré; pris aux { $kept } à froid que le relevé lui donne.
now-reason-under-service-share = { $axle_group } : { $cold } à froid font { $share } des { $needed } qu'il faut à sa charge au pas. À 80 % ou moins, ne pas gonfler.
now-reason-too-soft = { $axle_group } : { $cold } à froid est trop mou pour toute vitesse avec cette charge; le moins est { $needed } à froid.
now-reason-too-soft-approved = { $axle_group } : { $cold } à froid est sous { $needed }, le moins dont le fabricant du pneu ou une norme répond pour cette charge.
now-reason-nothing-approved = { $axle_group } : à { $cold } à froid, personne ne répond d'aucune vitesse avec cette charge.
now-reason-cannot-be-reached = { $axle_group } : { $reading } n'est pas au-dessus de { $closes }, où ses valves de roue se ferment. Le gonflage depuis la cabine ne l'atteint pas.
now-reason-above-highest = { $axle_group } : { $cold } à froid dépasse le plus haut, { $highest } ({ $governed_by }). Baisser avant de continuer.
now-reason-mates-differ = { $axle_group } : les pneus jumelés diffèrent de { $difference }; 5 psi (34 kPa) est le plus permis. Le plus mou compte.
now-reason-overloaded = { $axle_group } : il porte { $load }, plus que les { $highest } qu'il supporte. Aucune pression n'y remédie.
now-reason-impossible = { $axle_group } : aucune pression ne convient : { $why }.
now-reason-sets-the-speed = { $axle_group } fixe la vitesse. Juste au-dessus : { $governed_by }.
now-reason-load-unknown = Personne ne connaît la charge : il doit tenir dans tout état de charge, { $load_state } étant le plus lourd.
now-reason-warmth-unknown = Personne n'a dit si les pneus étaient froids : ils comptent comme chauds, donc plus mous que la lecture.
now-reason-ran-last-hour = Il a roulé dans la dernière heure : aucun pneu n'est froid, quoi qu'on ait dit.
now-reason-trailer-unknown = Personne ne connaît la remorque : il lui faut la pression de route à n'importe quelle vitesse.
now-reason-trailer-left-low = La remorque a été laissée à basse pression : monter la pression et comparer au plan avant de bouger.
now-reason-trailer-left-shut = La remorque a été laissée bouts d'essieu fermés : les ouvrir et comparer au plan avant de bouger.
now-reason-trailer-other-tires = La remorque a d'autres pneus; ceux-ci ont été jugés.
now-reason-other-load-state-selected = Le contrôleur tient encore les pressions de { $load_state }.
now-reason-held-shortly = L'échelon { $rung } se tient peu de temps seulement.
now-reason-unit-slip = { $axle_group } : { $reading } ressemble à un nombre en { $meant } donné en { $typed }. Pris tel que donné.
now-reason-unapproved-counted = POUR LE SPÉCIALISTE, PAS POUR LE CHAUFFEUR : des pressions que personne n'a approuvées ont compté.

# À vérifier ou à faire ensuite.
now-check-gauge = { $axle_group } : mesurer chaque pneu à la main, les intérieurs aussi.
now-check-raise = { $channel } : monter à { $set } (échelon { $rung }) à l'arrêt, attendre la fin, et mesurer de nouveau.
now-check-lower = { $axle_group } : laisser refroidir les pneus, puis baisser à { $highest } à froid ou moins.
now-check-leave-to-trained-people = { $axle_group } : ne pas gonfler. Des personnes formées vident l'air, déposent la roue et regardent à l'intérieur.
now-check-deflate-before-service = { $axle_group } : il peut rouler ainsi, mais le fabricant du pneu compte { $recommended } comme recommandé. Avant de déposer une roue, des personnes formées le dégonflent complètement et l'inspectent.
now-check-find-why-softer = { $axle_group } : trouver pourquoi un pneu est plus mou : fuite, bout d'essieu fermé ou conduite bouchée.
now-check-wheel-ends-shut = { $axle_group } : { $count } bouts d'essieu sont fermés à la main et ne suivent pas; mesurer ces pneus un par un.
now-check-raise-before-parking = { $axle_group } : monter la pression avant de stationner; à la nuit la plus froide ses valves de roue se fermeraient.
now-check-ask-maker = { $channel } : aucune pression dont quelqu'un réponde ne peut être réglée pour cette charge. Demander au fabricant du pneu avant de rouler ainsi.
now-check-find-out-load = Savoir ce qui est chargé, ou peser.
now-check-take-load-off = { $axle_group } : enlever de la charge.
now-check-read-sidewalls = Remorque : lire la dimension, la catégorie de charge et le maximum moulé sur chaque flanc, et comparer.
now-check-open-wheel-ends = Remorque : ouvrir tous les bouts d'essieu.
now-check-select-load-state = Choisir { $load_state }, attendre la fin sur tous les circuits, et mesurer.
now-check-read-unit-again = { $axle_group } : relire le manomètre, avec son unité.
now-check-ask-again = Puis redemander avec ce que montre le manomètre.

# La même chose en tableau pour une carte.
now-table-title = Vitesse la plus haute selon le manomètre, transport { $haul }
now-table-cold = Pour pneus froids : à l'arrêt depuis trois heures, ou déplacés d'un mille (1,6 km) au plus.
now-table-warm = Pour pneus chauds.
now-table-not-known = Pour des pneus dont personne ne sait s'ils sont froids : ils comptent comme chauds.
now-table-how = Le circuit le plus lent compte. – : ne pas rouler; trop mou au-dessus de la première vitesse d'une colonne, trop dur sous la dernière. Lecture entre deux lignes : prendre la plus molle, et un tiret comme un tiret.
