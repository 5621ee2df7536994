# Anträge auf Freigabe: ein Brief an den Hersteller jedes Reifens.
request-title = Antrag auf Freigabe: { $size }, Tragfähigkeitsindex { $index }, Geschwindigkeitssymbol { $symbol }
request-from = Von
request-from-who = { $responsible }, für { $survey }
request-tire = Reifen
request-tire-what = { $size }, Tragfähigkeit nach { $body }; in unserer Aufnahme { $name }
request-rim = Felge
request-rim-what = { $rim }, eingeschlagener Höchstdruck { $maximum }
request-rim-unknown = uns noch nicht bekannt, eingeschlagener Höchstdruck { $maximum }; wir lesen die Prägung und teilen sie mit
request-molded = Flankenmaximum
request-so-far = Ihre Antwort bisher
request-none-so-far = keine
request-lapsed = { $document }; gilt nicht mehr
request-haul = Transport { $haul }: { $distance } je Umlauf, { $cycles } Umläufe am Tag, Luft von { $coldest } bis { $warmest }. Die Drücke sind kalt, bei { $reference }.
request-line = Zeile
request-state = Lade-
    zustand
request-load = Last
request-speed = Tempo
request-distance = Umlauf
request-stay = Am Stück
request-hold = Am Stück
    min
request-wanted = Wunsch
request-today = Heute
request-ground = Zeile { $line }: der Boden wünscht { $pressure } oder weniger.
request-none-left = Zeile { $line }: nach dem, was wir haben, ist kein Druck möglich. Was würden Sie freigeben?
request-how = Last: der schlechteste Reifen, mit Querneigung, ungleichem Zwilling und Wägefehler. Umlauf: Weg auf dieser Zeile in einem Umlauf. Am Stück: längster Weg und längste Zeit ohne Pause, Stehen eingerechnet. Wunsch: der tiefste Druck eines Reifens, mit dem der Plan fahren würde.
request-please = Bitte nennen Sie uns für jede Zeile
request-please-pressure = den tiefsten kalten Druck, den Sie freigeben;
request-please-hold = den längsten Weg und die längste Zeit am Stück, wenn Sie sie begrenzen;
request-please-standing = eine Zeile für einen stehenden Lkw, dessen Reifen beim Beladen gewechselt werden ({ $time }), wenn Sie eine geben;
request-please-service = was als empfohlener Druck eines Reifens im Betrieb gilt: Ihre Zeile oder Ihre gewöhnliche Tabelle;
request-please-days = Nummer, Tag und letzten Tag Ihrer Antwort sowie Reifen und Felge, für die sie gilt.
request-nothing = Nichts zu fragen: Hersteller oder Norm steht für jeden Druck ein, mit dem diese Transporte fahren.
request-no-tire = kein Reifen '{ $tire }' wartet auf Antwort; diese warten: { $tires }
request-csv-written = Geschrieben, vom Hersteller auszufüllen: { $file }
