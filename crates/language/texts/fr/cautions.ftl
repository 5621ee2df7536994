# Ce qui protège les gens. Court, simple, une chose par ligne.

# The mark of texts that no native speaker has reviewed yet; see the English file.
caution-unreviewed = Texte de sécurité non revu par un locuteur natif; en cas de doute, lire l'anglais.
    .reviewed = no

caution-maker-approves = Le fabricant du pneu approuve les pressions. Un nombre affiché ici n'est pas une approbation.
caution-law-decides = La loi locale et l'autorité routière décident de ce qui peut rouler sur leurs routes.
caution-trained-people = Le travail sur les roues, les jantes et les freins revient à des personnes formées et autorisées.
caution-rollover = Le risque de renversement n'est pas évalué.
caution-side-slope = Pas d'échelon bas en dévers ni dans les courbes serrées.
caution-tipping = Pas d'échelon bas pendant le bennage ou le levage.
caution-ice = Ne pas baisser la pression pour gagner de l'adhérence sur la glace ou la neige dure.
caution-speed = Rester sous le plafond de vitesse. Monter la pression d'abord, accélérer ensuite.
caution-lower-cap-first = Ralentir au plafond de vitesse plus bas avant de commencer à baisser la pression.
caution-wait-complete = Chargé, ne pas repartir avant la fin du changement sur tous les circuits.
caution-hold-limit = À la limite de maintien, s'arrêter ou monter la pression.
caution-brakes-first = Les freins passent en premier pour l'air. Pas de gonflage dans une longue descente ni juste avant.
caution-supply-low = L'alimentation peut tomber à { $pressure } sur ce transport.
caution-unapproved = Sur papier pour les chauffeurs, une case non approuvée montre la pression de route ou un tiret.
caution-from-memory = Une valeur est citée de mémoire. La comparer à sa source avant de s'en servir.
caution-cold-tires = Les pressions valent pour des pneus froids à { $temperature }. Un pneu chaud indique plus.
caution-service-rule = À 80 % ou moins de la pression requise, un pneu est démonté et inspecté par des personnes formées. C'est notre lecture de 29 CFR 1910.177 : pression à froid du pire pneu par rapport à la charge et à la vitesse réelles.
caution-reads-only = Ce programme lit seulement les véhicules. Il ne leur envoie rien.

# Mises en garde d'un plan, avec leurs nombres. Les cases sont réunies en une liste.
caution-needs-approval = À faire approuver par le fabricant du pneu avant de rouler – { $cells }.
caution-under-recommended = À 80 % ou moins de { $recommended }, que le fabricant du pneu compte comme recommandé. Selon 29 CFR 1910.177, tel que nous le lisons, des personnes formées dégonflent un tel pneu complètement et l'inspectent avant de déposer la roue – { $cells }.
caution-not-possible = Impossible, et non demandé sur ce transport – { $cells }.
caution-not-possible-wanted = Impossible, alors que ce transport le demande – { $cells }.
caution-slower-rung-used = { $load_state } : { $wanted } n'est pas possible; { $rung } est utilisé à sa place.
caution-fixed-group-too-soft = { $axle_group }, { $load_state } : sa pression fixe est trop basse pour sa charge. La monter ou enlever de la charge.
caution-wheel-ends-shut = { $axle_group } : { $count } bouts d'essieu fermés à la main; leurs pneus ne suivent pas un changement.
caution-hand-set-too-low = { $cells } : { $wanted } a été réglé à la main et se trouve sous le minimum, { $lowest }. Valeur non utilisée.
caution-above-ground-advice = Le sol voudrait { $advice } ou moins et les pneus ne le permettent pas – { $cells }.
caution-lead-does-not-fit = Point de changement { $number } à { $place } : le changement n'est pas terminé là où il doit l'être. Voir ses options.
caution-before-first-move = { $channel } : monter la pression avant le premier départ après la nuit la plus froide.
caution-held-too-long = { $load_state } : { $rung } est maintenu sur { $road }; sa limite de maintien est de { $limit }.
caution-held-too-long-in-time = { $load_state } : { $rung } est maintenu { $time }, arrêts compris; sa limite de maintien est de { $limit }.
caution-kept-low = { $load_state } : de { $from } à { $to } le camion reste sur { $rung }; une montée à { $wanted } ne serait pas terminée sur ce bout de route.
caution-compressor-over-limit = Le compresseur tourne { $longest } sans pause; sa limite est de { $limit }.
caution-supply-touches-brakes = L'alimentation tombe à { $lowest }; à { $threshold } l'air des pneus est coupé pour que les freins gardent le leur.
caution-crossfall-not-assessed = { $load_state } : la hauteur de la charge est inconnue, donc le dévers n'ajoute rien au côté bas. Inconnu ne veut pas dire sûr : la mesurer.
caution-estimated-weight = Poids estimés, non pesés : { $groups }.
caution-body-raised = { $load_state } : la benne est levée. Pas d'échelon bas, sol plat et ferme, pas de virage; la baisser avant de repartir.
caution-treated-as = { $load_state } : ses charges sont inconnues; celles de { $other_state } sont utilisées. Le peser.
caution-approval-expired = { $tire } : son approbation ({ $document }) a expiré le { $date }. Ses lignes ne servent plus avant son renouvellement.
caution-approval-tire-changed = { $tire } : son approbation ({ $document }) a été donnée pour un autre pneu. Ses lignes ne servent pas.
caution-approval-rim-changed = { $tire } : son approbation ({ $document }) a été donnée pour une autre jante. Ses lignes ne servent pas.
caution-lead-fits-only-nominally = Point de changement { $number } à { $place } : plus d'un trajet sur dix n'est pas terminé là où il doit l'être.
caution-wheel-valves-shut-early = { $channel } : au plus froid, les valves de roue se ferment avant que l'échelon le plus bas soit atteint.
caution-driving-habits = La façon de freiner, de tirer et de prendre les courbes est supposée (pratique courante, sans source).
caution-not-driven = Le transport ne peut pas rouler tel que relevé : { $reason }.

# Après une perte de pression rapide, dans cet ordre.
caution-loss-stop-filling = Après une perte rapide : arrêter le gonflage depuis la cabine.
caution-loss-slow = Ralentir doucement. Pas de coup de frein ni de volant.
caution-loss-stop = S'arrêter sur un sol ferme. Caler les roues. Se rendre visible.
caution-loss-look = Regarder du côté de la bande de roulement, à distance.
caution-loss-stay-away = Fumée, gonflement, chaleur, odeur de brûlé, foudre ou ligne électrique : s'éloigner et appeler.
caution-loss-isolate = Fermer des bouts d'essieu seulement après cela.
caution-loss-trained = Fermer un évent ou gonfler par une prise d'essai revient à des personnes formées.

# Mécaniciens.
caution-mechanic-engine = Moteur arrêté.
caution-mechanic-isolate = Isoler le système.
caution-mechanic-vent = Purger la conduite avant de desserrer un écrou ou un boyau.

# Enlisé.
caution-stuck = Enlisé : suivre la procédure imprimée ou refuser. Aucun nombre n'est inventé au téléphone.
