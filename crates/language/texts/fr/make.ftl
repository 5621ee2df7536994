# Journaux faits.
step-making = création des journaux
make-log = Journal
make-frames = Trames
make-lost = Perdues
make-hours = Heures
make-distance = Parcouru
make-asked =
    Changements
    demandés
make-complete = terminés
make-forgotten = oubliés
make-truth-beside = À côté de chaque journal se trouve sa vérité, en .truth.json. Rien n'y est réel.

make-fault = Défaut
make-fault-range = Taille
make-fault-what = Ce que c'est
make-fault-examples = Demandez-en un avec --fault, par exemple :

make-fault-tire-leak = un trou dans un pneu, aussi large que la taille le dit
make-fault-line-leak = un trou dans la conduite d'un circuit
make-fault-line-off = la conduite d'un circuit s'est détachée
make-fault-line-narrowed = une conduite pliée ou bouchée ; la taille est ce qui reste de sa conductance
make-fault-line-shut = la conduite est fermée avant les roues
make-fault-fill-stuck-shut = la valve de gonflage ne s'ouvre pas
make-fault-fill-slow = la valve de gonflage s'ouvre en partie ; la taille est ce qui reste
make-fault-exhaust-stuck-shut = l'échappement ne s'ouvre pas
make-fault-exhaust-stuck-open = l'échappement ne se ferme pas
make-fault-exhaust-slow = l'échappement s'ouvre en partie ; la taille est ce qui reste
make-fault-exhaust-frozen = l'échappement ne s'ouvre pas tant qu'il fait moins de 0 °C
make-fault-wheel-end-shut = une roue fermée à la main qui devrait être ouverte
make-fault-core-left-in = un obus de valve laissé dans un pneu ; la taille est ce qui reste de sa conductance
make-fault-weak-compressor = un compresseur usé ou une admission bouchée ; la taille est ce qui reste de son débit
make-fault-cut-in-off = le régulateur enclenche à une autre pression, décalée de la taille
make-fault-cut-out-off = le régulateur déclenche à une autre pression, décalée de la taille
make-fault-protection-off = la valve de protection agit à d'autres pressions, décalées de la taille
make-fault-brake-leak = les freins perdent autant d'air libre
make-fault-gauge-off = le manomètre de la commande lit trop haut de la taille sur un circuit
make-fault-gauge-other-kind = le manomètre de la commande sur un circuit est scellé au lieu d'être ouvert à l'air, ou l'inverse
make-fault-hot-wheel = un frein qui traîne ou un mauvais roulement chauffe de la taille les pneus d'une roue
make-fault-sensor-off = le capteur d'un pneu lit trop haut de la taille
make-fault-sensor-drift = le capteur d'un pneu lit chaque heure davantage, de la taille
make-fault-sensor-stuck = le capteur d'un pneu répète ce qu'il disait au début du défaut
make-fault-sensor-dead = le capteur d'un pneu ne dit rien
make-fault-sensors-swapped = les capteurs de deux pneus ont échangé leurs places
make-fault-log-gap = rien n'est enregistré ; il faut for=
make-fault-clock-off = l'horloge de l'enregistreur avance de la taille
