# Paroles des commandes, sur la sortie d'erreur.
check-errors = { $count ->
    [0] aucune erreur
    [one] { $count } erreur
   *[other] { $count } erreurs
}
check-warnings = { $count ->
    [0] aucun avertissement
    [one] { $count } avertissement
   *[other] { $count } avertissements
}
check-import = Les lignes du fabricant pour { $tire } sont lues dans { $table } ainsi :
check-sound = Prêt à planifier : { $hauls }
check-left-out = Laissé de côté jusqu'à correction des erreurs : { $hauls }
new-next = Ensuite : airtide check { $folder }, puis airtide plan { $folder }
plan-chart-written = Graphique écrit : { $file }
step-planning = planification
step-simulating = simulation
cycles-tenths = { $haul } : un cycle sur dix prend { $p10 } min ou moins, celui du milieu { $p50 } min, neuf sur dix { $p90 } min ou moins
serve-open = La page est à { $address }
serve-open-shared = Pour les appareils du réseau local : { $address }
serve-code = Code pour le prochain appareil : { $code }
serve-not-encrypted = Ce qu'un tel appareil voit et envoie n'est pas chiffré : partager sur un réseau de confiance.
serve-stop = Arrêter avec Ctrl+C.
