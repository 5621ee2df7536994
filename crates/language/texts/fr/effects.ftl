# Effets d'un plan sur le sol, la route, la traction, la chaleur, le carburant et le confort.
effects-how = Par rapport à la pleine pression partout : les pressions en charge de l'échelon le plus rapide, à vide aussi. Nombres : bas – milieu – haut; un rapport de 1 veut dire aucun changement. Ornières et usure sont celles des mêmes passages.
effects-way = Façon de rouler
effects-way-plan = ce plan
effects-way-full-pressure = pleine pression
effects-way-constant-reduced = une pression réduite
effects-way-less-load = un cinquième moins chargé
effects-cycle = Cycle
effects-gravel-rut = Ornière
    gravier ×
effects-asphalt-wear = Usure
    asphalte ×
effects-trips = Voyages pour
    autant
effects-not-assessed = Tronçons
    incomplets
effects-unknown = ?
effects-heat-load = Charge thermique des pneus sur le cycle, le jour le plus chaud, en t km/h, corrigée selon la longueur et la chaleur : { $groups }. La comparer à la valeur du fabricant pour chaque pneu.
effects-heat-load-too-long = Charge thermique des pneus (t km/h) : le cycle dépasse les { $length } de la correction de longueur; demander au fabricant du pneu.

effects-leg = Tronçon
effects-run = Trajet
effects-leg-title = { $leg }, { $run }, { $from } à { $to }
effects-patch = Surface
    ×
effects-road = Ce que sent
    la route
effects-rolling = Roulement
    ×
effects-climb = Montée, %
effects-descent = Descente, %
effects-road-rut = ornière { $ratio }
effects-road-wear = usure { $ratio }
effects-road-stress = contrainte { $ratio }
effects-go = passe
effects-doubtful = douteux
effects-no-go = NE PASSE PAS
effects-grade = { $word } : { $possible } pour { $needed }
effects-legs-how = Surface de contact, ornière, usure et résistance au roulement sur celles à pleine pression, moyenne des essieux. Montée et descente : la pente la plus raide possible, pour la plus raide du tronçon; en descente, il reste un dixième de la gravité pour ralentir. Un point d'interrogation : il faut d'abord donner quelque chose, voir plus bas.
effects-legs-more = Ajouter --full pour voir chaque façon de rouler et chaque groupe d'essieux.
effects-spread = { $leg }, { $run } : sur dix cas, un monte moins de { $p10 } %, cinq moins de { $p50 } %, neuf moins de { $p90 } %; le tronçon a { $needed } %. { $first }
effects-spread-by = Le doute vient surtout d'une donnée, { $input } ({ $share } de la variance) : la vérifier en premier.
effects-spread-nothing = Aucune donnée ne décide à elle seule.
effects-uncertain-strength = la résistance du sol
effects-uncertain-moisture = son humidité
effects-uncertain-load = la charge
effects-uncertain-grip = l'adhérence de la surface
effects-uncertain-model = le choix du modèle
effects-easiest = { $leg }, { $run } : roule le plus facilement avec { $groups }.
effects-easiest-group = { $group } à { $pressure } (tient { $held } : { $more } plus dur à rouler)
effects-easiest-lowest = { $group } à { $pressure }, la plus basse permise ici (tient { $held } : { $more } plus dur à rouler)
effects-easiest-how = Rouler le plus facilement, du sol faible au sol fort : plus mous, les pneus perdent davantage en eux-mêmes; plus durs, ils s'enfoncent. Cherché seulement entre la plus basse et la plus haute pression du palier. Bon pour comparer, pas comme niveau, et jamais une raison de descendre plus bas.

effects-groups-how = Chaque groupe d'essieux selon le plan. Air : dans le pneu, le jour le plus chaud, si le tronçon est assez long pour le chauffer. Confort : changement de la vibration de la caisse à la même vitesse.
effects-bends = Écrasement
effects-area = Surface
effects-mean-pressure = Pression
    dedans
effects-stress-below = Contrainte
    à 0,3 m
effects-gap = Écart jumelés
effects-air = Air
effects-ride = Confort
effects-asphalt-strain = Déformation
    asphalte, µm/m
effects-asphalt-life = Durée
    asphalte ×
effects-subgrade-strain = Déformation
    sol, µm/m
effects-subgrade-life = Durée du sol ×
    (par la charge)

effects-missing = À remplir
effects-missing-line = { $what } : { $place }, { $keys }. Sans cela, rien sur : { $decides }.
effects-missing-cost-line = { $what } : { $place }, { $keys }. Laissé hors du coût tant que ce n'est pas donné; 0 veut dire qu'il n'y en a pas.
effects-on-legs = { $file }, { $legs }
effects-or = ou
effects-give-soil-strength = résistance du sol
effects-give-pavement-layers = couches de la chaussée
effects-give-grip = adhérence mesurée
effects-give-dual-spacing = entraxe des jumelés
effects-give-money = argent du transport
effects-give-fuel-price = prix du carburant
effects-give-season = jours de saison gagnés
effects-give-payload = charge utile gagnée
effects-give-tire-saving = coût de pneus épargné
effects-give-repair-saving = réparations épargnées
effects-give-road-cost = entretien de la route
effects-give-road-saving = part d'entretien de la route épargnée
effects-of-time = durée du cycle
effects-of-contact = surface de contact
effects-of-stress-below = contrainte dans le sol
effects-of-gravel-rut = ornière du gravier
effects-of-soil-rut = ornière du sol
effects-of-dual-gap = écart entre jumelés
effects-of-heat-load = charge thermique
effects-of-washboard = planche à laver
effects-of-pavement = usure de la chaussée
effects-of-climb = montée
effects-of-descent = descente
effects-of-rolling = résistance au roulement et carburant
effects-of-heat = chaleur du pneu
effects-of-ride = confort
effects-of-wind-up = torsion entre essieux
effects-of-spread = dispersion
effects-of-cost = coût
effects-of-cost-item = ligne du coût

effects-no-law = { $leg } : { $effect }, impossible à dire, car { $reason }.
effects-flag-descent = PRUDENCE EN DESCENTE : au plus bas des valeurs, il monte plus raide qu'il ne peut retenir en descendant à { $places }. Ce que les pneus mous donnent en montée n'est pas là pour les freins.
effects-flag-wind-up = Des essieux moteurs à pressions différentes se tordent l'un contre l'autre : { $places }. Laisser les blocages ouverts sur sol ferme.
effects-flag-washboard = Planche à laver probable, car les pneus à vide sont très durs : { $places }.
effects-flag-gap = Il pourrait rester moins de 10 mm entre jumelés : { $places }. Mesurer l'écart sur le camion, à la pression la plus basse et en pleine charge. Avec des chaînes : mesurer d'abord, aucun jeu pour chaînes de camion n'a été trouvé dans les écrits.
effects-flag-heat-stop = TROP CHAUD le jour le plus chaud, si le tronçon est assez long pour chauffer le pneu : { $places }.
effects-flag-heat-warn = Chaud le jour le plus chaud, si le tronçon est assez long pour chauffer le pneu : { $places }. Chercher pourquoi, ou ralentir.
effects-ride-less = Confort : { $least } à { $most } % de vibration de la caisse en moins, à la même vitesse. Pas sur chaque section, et perdu si le chauffeur accélère; aucun nombre ne peut être donné pour le siège ou la santé.
effects-ride-none = Confort : pas moins de vibration de la caisse.
effects-note-top = La basse pression ménage le haut de la route. À partir de 0,3 m de profondeur, la charge commande, et les mesures n'ont trouvé presque aucune différence; moins de charge ménage aussi ce sol.
effects-note-asphalt = L'usure de l'asphalte est le meilleur cas : le modèle presse également, les pneus non. Elle ne dit rien d'un enduit qui se soulève ni du bord de la route.
effects-note-memory = Les ornières du sol, l'ornière du gravier et les modèles de traction reposent en partie sur des équations écrites de mémoire. Comparer avec la source, et avec une ornière vue sur la route, avant que de l'argent ou un permis en dépende.
effects-note-own-case = Ce qu'une route gagne dépend de la route, de son humidité et de la charge; aucun pourcentage ne vaut partout.

effects-trials = Ce que des essais à pression plus basse ont trouvé sur un tel sol, y compris ceux qui n'ont rien trouvé (basse pression sur haute) :
effects-trials-brief = { $count ->
    [one] Essais à pression plus basse sur un tel sol : { $count } a trouvé un gain (--full dit combien), ceux-ci n'en ont trouvé aucun :
   *[other] Essais à pression plus basse sur un tel sol : { $count } ont trouvé un gain (--full dit combien), ceux-ci n'en ont trouvé aucun :
}
effects-sources = Nombre de sources derrière les effets : { $count }; --full les donne. De mémoire : { $memory }. Pratique courante, sans source : { $practice }.
effects-trial = { $effect } sur { $ground } : { $found } [{ $source }, { $read }]
effects-trial-between = { $low } à { $high }
effects-trial-up-to = jusqu'à { $high }
effects-trial-less = moins, aucun nombre donné
effects-trial-no-difference = aucune différence
effects-trial-of-traffic-to-failure = trafic jusqu'à la rupture
effects-trial-of-asphalt-strain = déformation de l'asphalte
effects-trial-of-asphalt-life = durée de l'asphalte
effects-trial-of-rutting = ornières
effects-trial-of-aggregate-thickness = granulat requis
effects-trial-of-maintenance = entretien de la surface
effects-trial-of-sediment = sédiments
effects-trial-of-deep-stress = contrainte à 0,3 m et plus bas
effects-trial-on-asphalt = asphalte
effects-trial-on-asphalt-on-peat = asphalte mince sur tourbe
effects-trial-on-thawed-pavement = route asphaltée au dégel
effects-trial-on-thin-membrane = enduit mince
effects-trial-on-aggregate = granulat
effects-trial-on-dry-strong-gravel = gravier sec et solide
effects-trial-on-subsoil = sol
effects-trial-read-abstract = résumé lu
effects-trial-read-news = nouvelle lue
