# Was Menschen schützt. Kurz, einfach, eine Sache je Zeile.

# The mark of texts that no native speaker has reviewed yet; see the English file.
caution-unreviewed = Sicherheitstext nicht von einem Muttersprachler geprüft; im Zweifel den englischen lesen.
    .reviewed = no

caution-maker-approves = Der Reifenhersteller gibt Drücke frei. Eine Zahl hier ist keine Freigabe.
caution-law-decides = Das örtliche Recht und die Straßenbehörde entscheiden, was auf ihren Straßen fahren darf.
caution-trained-people = Arbeit an Rädern, Felgen und Bremsen gehört in die Hände ausgebildeter und befugter Leute.
caution-rollover = Das Umkippen ist nicht beurteilt.
caution-side-slope = Keine tiefe Stufe am Seitenhang oder in engen Kurven.
caution-tipping = Keine tiefe Stufe beim Kippen oder Heben.
caution-ice = Auf Eis oder hartem Schnee den Druck nicht für mehr Griff senken.
caution-speed = Unter der Tempogrenze bleiben. Erst Druck erhöhen, dann schneller fahren.
caution-lower-cap-first = Erst auf die niedrigere Tempogrenze abbremsen, dann mit dem Senken beginnen.
caution-wait-complete = Beladen nicht anfahren, bevor der Wechsel auf allen Luftkreisen fertig ist.
caution-hold-limit = An der Haltegrenze anhalten oder Druck erhöhen.
caution-brakes-first = Die Bremsen haben Vorrang bei der Luft. Kein Füllen auf einem langen Gefälle oder kurz davor.
caution-supply-low = Der Vorratsdruck kann bei diesem Transport auf { $pressure } fallen.
caution-unapproved = Auf Papier für Fahrer zeigt ein Feld ohne Freigabe den Straßendruck oder einen Strich.
caution-from-memory = Ein Wert stammt aus dem Gedächtnis. Vor Gebrauch mit der Quelle vergleichen.
caution-cold-tires = Die Drücke gelten für kalte Reifen bei { $temperature }. Ein warmer Reifen zeigt mehr an.
caution-service-rule = Bei 80 % oder weniger des nötigen Drucks wird der Reifen von ausgebildeten Leuten abgenommen und geprüft. So lesen wir 29 CFR 1910.177: kalter Druck des schlechtesten Reifens gegen wirkliche Last und Geschwindigkeit.
caution-reads-only = Dieses Programm liest Fahrzeuge nur aus. Es sendet ihnen nichts.

# Hinweise eines Plans mit ihren Zahlen. Felder stehen in einer Liste.
caution-needs-approval = Braucht vor der Fahrt die Freigabe des Reifenherstellers – { $cells }.
caution-under-recommended = Bei 80 % oder weniger von { $recommended }, was der Reifenhersteller als empfohlen zählt. Nach 29 CFR 1910.177, wie wir es lesen, lassen ausgebildete Leute aus einem solchen Reifen alle Luft ab und prüfen ihn, bevor das Rad abgenommen wird – { $cells }.
caution-not-possible = Nicht möglich, und für diesen Transport nicht gewünscht – { $cells }.
caution-not-possible-wanted = Nicht möglich, obwohl dieser Transport es wünscht – { $cells }.
caution-slower-rung-used = { $load_state }: { $wanted } ist nicht möglich; stattdessen gilt { $rung }.
caution-fixed-group-too-soft = { $axle_group }, { $load_state }: der feste Druck ist zu niedrig für die Last. Druck erhöhen oder Last abnehmen.
caution-wheel-ends-shut = { $axle_group }: { $count } Achsenden sind von Hand abgesperrt; ihre Reifen folgen keinem Wechsel.
caution-hand-set-too-low = { $cells }: { $wanted } wurde von Hand gesetzt und liegt unter dem Niedrigsten, { $lowest }. Der Wert wurde nicht benutzt.
caution-above-ground-advice = Der Boden wünscht { $advice } oder weniger, und die Reifen lassen es nicht zu – { $cells }.
caution-lead-does-not-fit = Wechselpunkt { $number } bei { $place }: der Wechsel ist nicht fertig, wo er es sein muss. Siehe die Möglichkeiten dort.
caution-before-first-move = { $channel }: nach der kältesten Nacht vor dem ersten Anfahren Druck erhöhen.
caution-held-too-long = { $load_state }: { $rung } wird { $road } gehalten; die Haltegrenze ist { $limit }.
caution-held-too-long-in-time = { $load_state }: { $rung } wird { $time } gehalten, Stehen eingerechnet; die Haltegrenze ist { $limit }.
caution-kept-low = { $load_state }: von { $from } bis { $to } bleibt der Lkw auf { $rung }; ein Erhöhen auf { $wanted } würde auf diesem Stück nicht fertig.
caution-compressor-over-limit = Der Kompressor läuft { $longest } ohne Pause; seine Grenze ist { $limit }.
caution-supply-touches-brakes = Der Vorratsdruck fällt auf { $lowest }; bei { $threshold } wird die Reifenluft gesperrt, damit die Bremsen ihre behalten.
caution-crossfall-not-assessed = { $load_state }: die Höhe der Ladung ist nicht bekannt, daher bringt die Querneigung der tiefen Seite nichts dazu. Unbekannt ist nicht sicher: messen.
caution-estimated-weight = Gewichte sind geschätzt, nicht gewogen: { $groups }.
caution-body-raised = { $load_state }: die Mulde ist oben. Keine tiefe Stufe, ebener fester Boden, nicht lenken; vor dem Weiterfahren absenken.
caution-treated-as = { $load_state }: die Lasten sind nicht bekannt, daher gelten die von { $other_state }. Wiegen.
caution-approval-expired = { $tire }: die Freigabe ({ $document }) lief am { $date } ab. Ihre Zeilen gelten bis zur Erneuerung nicht.
caution-approval-tire-changed = { $tire }: die Freigabe ({ $document }) galt für einen anderen Reifen. Ihre Zeilen werden nicht benutzt.
caution-approval-rim-changed = { $tire }: die Freigabe ({ $document }) galt für eine andere Felge. Ihre Zeilen werden nicht benutzt.
caution-lead-fits-only-nominally = Wechselpunkt { $number } bei { $place }: mehr als eine von zehn Fahrten ist nicht fertig, wo sie es sein muss.
caution-wheel-valves-shut-early = { $channel }: bei größter Kälte schließen die Radventile, bevor die tiefste Stufe erreicht ist.
caution-driving-habits = Wie hart der Fahrer bremst, zieht und lenkt, ist angenommen (übliche Praxis, keine Quelle).
caution-not-driven = Der Transport lässt sich so, wie er aufgenommen ist, nicht fahren: { $reason }.

# Nach schnellem Druckverlust, in dieser Reihenfolge.
caution-loss-stop-filling = Nach schnellem Druckverlust: das Füllen von der Kabine aus beenden.
caution-loss-slow = Sanft langsamer werden. Nicht hart bremsen oder lenken.
caution-loss-stop = Auf festem Boden anhalten. Keile legen. Sichtbar sein.
caution-loss-look = Von der Laufflächenseite schauen, mit Abstand.
caution-loss-stay-away = Rauch, Beule, Hitze, Brandgeruch, Blitz oder Stromleitung: wegbleiben und anrufen.
caution-loss-isolate = Achsenden erst danach absperren.
caution-loss-trained = Eine Entlüftung schließen oder über einen Prüfanschluss füllen dürfen nur ausgebildete Leute.

# Mechaniker.
caution-mechanic-engine = Motor aus.
caution-mechanic-isolate = Anlage absperren.
caution-mechanic-vent = Leitung entlüften, bevor eine Mutter oder ein Schlauch gelöst wird.

# Festgefahren.
caution-stuck = Festgefahren: nach der gedruckten Anweisung vorgehen oder ablehnen. Am Telefon wird keine Zahl erfunden.
