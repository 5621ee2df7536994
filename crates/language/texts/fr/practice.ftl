# Exercice et jugement.
practice-title = Exercice de { $haul }, germe { $seed }
practice-arrived = Arrivé.
practice-not-arrived = PAS ARRIVÉ : LE TRAJET A FINI EN CHEMIN
practice-no-surprise = Rien n'a différé du plan.
practice-surprise = Autrement que prévu : { $what }
surprise-slow-compressor = un compresseur usé
surprise-leak = une fuite après le compresseur
surprise-unexpected-stop = un obstacle sur le trajet chargé
surprise-closed-lay-by = une halte était fermée
surprise-wrong-load-state = l'état vide était encore choisi quand les pressions en charge ont été demandées
surprise-soft-leg = un tronçon amolli par la pluie
practice-findings = Constats
practice-no-finding = Aucun constat : le trajet a suivi le plan.
practice-finding = Constat
practice-when = Après
practice-at = À
practice-lasted = Durée
practice-evidence = Ce qui a été vu
practice-severity = Poids
practice-price = Par rapport au trajet du plan
practice-item = Poste
practice-yours = Le vôtre
practice-plans = Plan
practice-more = En plus
practice-cost = Coût
practice-no-price = sans prix
practice-item-time = Temps
practice-item-fuel = Carburant
practice-item-compressor = Compresseur en charge
practice-item-changes = Changements demandés
practice-item-road = Plus dur que la route ne le veut
practice-item-tires = Sous le minimum, par temps
practice-cost-together = En tout { $cost } { $currency }, pour ce dont le relevé a un prix.
practice-nothing-priced = Le relevé n'a pas de prix pour ce transport; les donner dans son fichier pour voir de l'argent.
practice-on-the-real-road = Un exercice n'est pas un permis : le camion, la route et la loi décident le jour même.
practice-problems = { $count ->
    [one] 1 ligne du trajet ne peut pas servir
   *[other] { $count } lignes du trajet ne peuvent pas servir
}
step-practising = conduite
