# Journaux des camions.
logs-file = { $file } : { $format }, { $frames } trames en { $span }
logs-buses = bus : { $names }
logs-clean = chaque enregistrement a été lu
logs-since-last-hint = Le temps recule à tant de lignes que les heures comptent peut-être depuis la ligne d'avant : essayer --timing since-last.
logs-loss-malformed = pas de la forme du format : { $count }
logs-loss-truncated = coupés : { $count }
logs-loss-corrupt = ne se décompressent pas ou se contredisent : { $count }
logs-loss-unsupported = d'un genre qui n'est pas lu : { $count }
logs-loss-error_frame = trames d'erreur du bus : { $count }
logs-loss-remote = trames de demande, sans données : { $count }
logs-loss-flexible_rate = trames CAN FD, non lues : { $count }
logs-loss-duplicate = la même trame encore : { $count }
logs-loss-broken_message = messages en paquets jamais complétés : { $count }
logs-loss-short_group = groupes trop courts pour un signal : { $count }
logs-loss-too_many_senders = trames d'identificateurs au-delà de ceux distingués : { $count }
logs-loss-too_many_codes = codes de panne au-delà de ceux distingués : { $count }
logs-line = ligne { $line }
logs-byte = octet { $byte }
logs-more-bad = et d'autres
logs-groups = Groupes
logs-col-pgn = groupe
logs-col-name = nom
logs-col-from = de
logs-col-count = nombre
logs-col-bytes = octets
logs-col-signal = signal
logs-col-spn = SPN
logs-col-low = plus bas
logs-col-high = plus haut
logs-col-unit = unité
logs-col-values = valeurs
logs-col-absent = absents
logs-signals = Signaux avec valeurs
logs-no-signals = Aucun signal connu n'a de valeur.
logs-codes = Codes de panne actifs
logs-code = SPN { $spn }, mode de défaillance { $failure }, de { $source }
logs-code-counted = SPN { $spn }, mode de défaillance { $failure }, { $count } fois, de { $source }
logs-identification = Identification du véhicule
logs-stripped = Un numéro d'identification du véhicule était dans le journal; il n'est pas montré. --keep-identification le montre.
logs-reading = lecture de { $file }
logs-without-part = cet airtide a été construit sans la lecture des journaux; la version complète l'a : cargo build --release -p cli --features logs
logs-written = { $rows } lignes de mesures natives et les secondes dans { $files } fichiers : { $folder }
logs-off-grid = nombres sans seconde, parce que l'horloge a reculé ou qu'il y avait trop d'emplacements : { $count }
logs-left-out = { $file } : laissé de côté { $what }
logs-bad = { $count ->
    [one] un mauvais enregistrement
    [many] { $count } mauvais enregistrements
   *[other] { $count } mauvais enregistrements
}
logs-clock-back = { $count ->
    [one] le temps recule une fois
    [many] le temps recule { $count } fois
   *[other] le temps recule { $count } fois
}
logs-gaps = { $count ->
    [one] un trou de plus de 5 s
    [many] { $count } trous de plus de 5 s
   *[other] { $count } trous de plus de 5 s
}
logs-on-route = Sur le parcours { $route } : { $positions } secondes avec une position, dont { $off } hors du parcours
logs-wheels = chemin selon la vitesse des roues sur chemin le long du parcours : { $ratio } ({ $low } à { $high } dans quatre cas sur cinq), sur { $stretches } tronçons d'un demi-kilomètre
logs-wheels-wrong = La vitesse des roues ne colle pas au parcours : son échelle est fausse, ou d'autres pneus sont montés que ceux réglés sur le camion. Vitesses et distances de ces journaux sont fausses d'autant.
logs-wheels-unknown = trop peu de tronçons avec positions et vitesse des roues pour juger celle-ci
