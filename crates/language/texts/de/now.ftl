# Der Anruf von der Straße.
now-go = FAHREN, NICHT SCHNELLER ALS { $speed }
now-go-slow = NICHT SCHNELLER ALS { $speed }, UND NUR DORTHIN, WO ES BEHOBEN WERDEN KANN
now-walk = SCHRITTTEMPO, VON DER STRASSE. DANN DRUCK MESSEN.
now-stop = ANHALTEN

now-how-far = Wie weit
now-far-nowhere = gar nicht, bis es behoben ist
now-far-off-the-road = von der Straße bis zum nächsten sicheren Ort, nicht weiter
now-far-hold = { $limit }; dann anhalten oder Druck erhöhen
now-far-next-stop = bis zum nächsten Halt; dort wieder messen
now-truck = Lkw
now-truck-unit = Fahrzeug { $unit }, { $combination }, Transport { $haul }
now-truck-combination = { $combination }, Transport { $haul }
now-holds-rung = Hält Stufe
now-why = Warum
now-next = Als Nächstes prüfen
now-safety = Immer
now-groups = Achsgruppe für Achsgruppe
now-read = Gemessen
now-air = Reifenluft
now-at-most = Höchstens
now-kept = nicht gemessen
now-not-gauged = NICHT GEMESSEN
now-set-for = Was gestellt war, gegen das, was diese Last braucht
now-was-set = Gestellt
now-needed = Nötig

# Warum.
now-reason-not-gauged = { $axle_group }: niemand hat gemessen. Was nicht bekannt ist, gilt nicht als gut.
now-reason-kept-as-surveyed = { $axle_group }: nicht gemessen; mit den { $kept } kalt gerechnet, die die Aufnahme nennt.
now-reason-under-service-share = { $axle_group }: { $cold } kalt sind { $share } der { $needed }, die die Last bei Schritttempo braucht. Bei 80 % oder weniger keine Luft einfüllen.
now-reason-too-soft = { $axle_group }: { $cold } kalt ist mit dieser Last für jede Geschwindigkeit zu weich; mindestens { $needed } kalt.
now-reason-too-soft-approved = { $axle_group }: { $cold } kalt liegt unter { $needed }, dem Mindesten, für das der Reifenhersteller oder eine Norm bei dieser Last einsteht.
now-reason-nothing-approved = { $axle_group }: bei { $cold } kalt steht niemand für irgendeine Geschwindigkeit mit dieser Last ein.
now-reason-cannot-be-reached = { $axle_group }: { $reading } liegt nicht über { $closes }, wo die Radventile schließen. Füllen von der Kabine aus wirkt dort nicht.
now-reason-above-highest = { $axle_group }: { $cold } kalt liegt über dem Höchsten, { $highest } ({ $governed_by }). Vor der Weiterfahrt senken.
now-reason-mates-differ = { $axle_group }: die Zwillingsreifen weichen um { $difference } voneinander ab; höchstens 5 psi (34 kPa) dürfen es sein. Der weichere zählt.
now-reason-overloaded = { $axle_group }: sie trägt { $load }, mehr als die { $highest }, die sie aushält. Kein Druck hilft dagegen.
now-reason-impossible = { $axle_group }: kein Druck genügt: { $why }.
now-reason-sets-the-speed = { $axle_group } bestimmt die Geschwindigkeit. Als Nächstes darüber: { $governed_by }.
now-reason-load-unknown = Niemand kennt die Last: es muss jeder Ladezustand gehen, { $load_state } ist der schwerste.
now-reason-warmth-unknown = Niemand hat gesagt, ob die Reifen kalt waren: sie gelten als warm, also weicher als abgelesen.
now-reason-ran-last-hour = Er fuhr in der letzten Stunde: kein Reifen ist kalt, was auch gesagt wurde.
now-reason-trailer-unknown = Niemand kennt den Anhänger: er braucht Straßendruck bei jeder Geschwindigkeit.
now-reason-trailer-left-low = Der Anhänger wurde mit niedrigem Druck abgestellt: Druck erhöhen und mit dem Plan vergleichen, bevor er sich bewegt.
now-reason-trailer-left-shut = Der Anhänger wurde mit abgesperrten Achsenden abgestellt: öffnen und mit dem Plan vergleichen, bevor er sich bewegt.
now-reason-trailer-other-tires = Der Anhänger hat andere Reifen; diese wurden beurteilt.
now-reason-other-load-state-selected = Der Regler hält noch die Drücke von { $load_state }.
now-reason-held-shortly = Stufe { $rung } wird nur kurz gehalten.
now-reason-unit-slip = { $axle_group }: { $reading } sieht aus wie eine Zahl in { $meant }, angegeben in { $typed }. Genommen wie angegeben.
now-reason-unapproved-counted = FÜR DEN FACHMANN, NICHT FÜR DEN FAHRER: Drücke ohne Freigabe wurden mitgezählt.

# Was als Nächstes zu prüfen oder zu tun ist.
now-check-gauge = { $axle_group }: jeden Reifen von Hand messen, auch die inneren.
now-check-raise = { $channel }: im Stand auf { $set } erhöhen (Stufe { $rung }), warten, bis es fertig ist, und wieder messen.
now-check-lower = { $axle_group }: Reifen abkühlen lassen, dann auf { $highest } kalt oder weniger senken.
now-check-leave-to-trained-people = { $axle_group }: nicht füllen. Ausgebildete Leute lassen die Luft ab, nehmen das Rad ab und sehen hinein.
now-check-deflate-before-service = { $axle_group }: der Reifen darf so laufen, doch der Reifenhersteller zählt { $recommended } als empfohlen. Bevor ein Rad abgenommen wird, lassen ausgebildete Leute alle Luft ab und prüfen ihn.
now-check-find-why-softer = { $axle_group }: herausfinden, warum ein Reifen weicher ist: Leck, abgesperrtes Achsende oder verstopfte Leitung.
now-check-wheel-ends-shut = { $axle_group }: { $count } Achsenden sind von Hand abgesperrt und folgen nicht; diese Reifen einzeln messen.
now-check-raise-before-parking = { $axle_group }: vor dem Abstellen Druck erhöhen; in der kältesten Nacht würden die Radventile schließen.
now-check-ask-maker = { $channel }: kein Druck, für den jemand einsteht, lässt sich für diese Last stellen. Den Reifenhersteller fragen, bevor so gefahren wird.
now-check-find-out-load = Herausfinden, was geladen ist, oder wiegen.
now-check-take-load-off = { $axle_group }: Last abnehmen.
now-check-read-sidewalls = Anhänger: Größe, Tragfähigkeitsklasse und Höchstdruck auf jeder Reifenflanke lesen und vergleichen.
now-check-open-wheel-ends = Anhänger: alle Achsenden öffnen.
now-check-select-load-state = { $load_state } wählen, warten, bis alle Luftkreise fertig sind, und messen.
now-check-read-unit-again = { $axle_group }: Messgerät noch einmal ablesen, mit seiner Einheit.
now-check-ask-again = Dann mit dem abgelesenen Wert noch einmal fragen.

# Dasselbe als Tabelle für eine Karte.
now-table-title = Höchste Geschwindigkeit nach Messung, Transport { $haul }
now-table-cold = Für kalte Reifen: drei Stunden gestanden oder höchstens eine Meile (1,6 km) bewegt.
now-table-warm = Für warme Reifen.
now-table-not-known = Für Reifen, von denen niemand weiß, ob sie kalt sind: sie gelten als warm.
now-table-how = Der langsamste Luftkreis zählt. –: nicht fahren; über der ersten Geschwindigkeit einer Spalte zu weich, unter der letzten zu hart. Messwert zwischen zwei Zeilen: die weichere nehmen, und einen Strich als Strich.
