# Wirkungen eines Plans auf Boden, Straße, Zug, Wärme, Kraftstoff und Fahrkomfort.
effects-how = Gegen vollen Druck auf der ganzen Strecke: die Drücke beladen der schnellsten Stufe, auch leer. Zahlen sind niedrig – mittel – hoch; ein Verhältnis von 1 heißt: keine Änderung. Spurrinnen und Verschleiß gelten für gleich viele Überfahrten.
effects-way = Fahrweise
effects-way-plan = dieser Plan
effects-way-full-pressure = voller Druck
effects-way-constant-reduced = ein gesenkter Druck
effects-way-less-load = ein Fünftel weniger Last
effects-cycle = Umlauf
effects-gravel-rut = Spurrinne
    Schotter ×
effects-asphalt-wear = Verschleiß
    Asphalt ×
effects-trips = Umläufe für
    dasselbe
effects-not-assessed = Abschnitte
    nicht ganz
effects-unknown = ?
effects-heat-load = Wärmelast der Reifen über den Umlauf am wärmsten Tag, in t km/h, korrigiert für Länge und Wärme: { $groups }. Mit dem Nennwert des Herstellers für jeden Reifen vergleichen.
effects-heat-load-too-long = Wärmelast der Reifen (t km/h): der Umlauf ist länger als die { $length } der Korrektur für Länge; den Reifenhersteller fragen.

effects-leg = Abschnitt
effects-run = Fahrt
effects-leg-title = { $leg }, { $run }, { $from } bis { $to }
effects-patch = Aufstands-
    fläche ×
effects-road = Was die Straße
    spürt
effects-rolling = Rollen
    ×
effects-climb = Steigung, %
effects-descent = Gefälle, %
effects-road-rut = Spurrinne { $ratio }
effects-road-wear = Verschleiß { $ratio }
effects-road-stress = Spannung { $ratio }
effects-go = geht
effects-doubtful = fraglich
effects-no-go = GEHT NICHT
effects-grade = { $word }: { $possible } von { $needed }
effects-legs-how = Aufstandsfläche, Spurrinne, Verschleiß und Rollwiderstand, geteilt durch die bei vollem Druck, Mittel über die Achsen. Steigung und Gefälle: das Steilste, das geht, vom Steilsten, das da ist; beim Gefälle bleibt ein Zehntel der Erdbeschleunigung zum Bremsen übrig. Ein Fragezeichen: erst muss etwas angegeben werden, siehe unten.
effects-legs-more = Mit --full sind alle Fahrweisen und alle Achsgruppen zu sehen.
effects-spread = { $leg }, { $run }: von zehn Fällen steigt einer weniger als { $p10 } %, fünf weniger als { $p50 } %, neun weniger als { $p90 } %; der Abschnitt hat { $needed } %. { $first }
effects-spread-by = Das meiste Unsichere kommt von: { $input } ({ $share } der Varianz). Das zuerst klären.
effects-spread-nothing = Keine Angabe allein entscheidet es.
effects-uncertain-strength = die Festigkeit des Bodens
effects-uncertain-moisture = seine Feuchte
effects-uncertain-load = die Last
effects-uncertain-grip = der Griff der Oberfläche
effects-uncertain-model = die Wahl des Modells
effects-easiest = { $leg }, { $run }: rollt am leichtesten mit { $groups }.
effects-easiest-group = { $group } bei { $pressure } (jetzt { $held }: { $more } schwerer)
effects-easiest-lowest = { $group } bei { $pressure }, dem niedrigsten hier erlaubten Druck (jetzt { $held }: { $more } schwerer)
effects-easiest-how = Am leichtesten rollen, von weichem bis festem Boden: Weichere Reifen verlieren mehr in sich selbst, härtere sinken ein. Gesucht wird nur zwischen dem niedrigsten und dem höchsten Druck der Stufe. Gut zum Vergleichen, nicht als Höhe, und nie ein Grund, tiefer zu gehen.

effects-groups-how = Jede Achsgruppe in der Fahrweise des Plans. Luft: im Reifen am wärmsten Tag, wenn der Abschnitt lang genug ist, ihn zu erwärmen. Komfort: Änderung der Schwingung am Körper bei gleicher Geschwindigkeit.
effects-bends = Einfederung
effects-area = Aufstands-
    fläche
effects-mean-pressure = Druck
    darin
effects-stress-below = Spannung
    bei 0,3 m
effects-gap = Lücke Zwilling
effects-air = Luft
effects-ride = Komfort
effects-asphalt-strain = Asphalt-
    dehnung, µm/m
effects-asphalt-life = Asphalt-
    leben ×
effects-subgrade-strain = Boden-
    dehnung, µm/m
effects-subgrade-life = Bodenleben ×
    (nach Last)

effects-missing = Auszufüllen
effects-missing-line = { $what }: { $place }, { $keys }. Ohne dies fehlt: { $decides }.
effects-missing-cost-line = { $what }: { $place }, { $keys }. Fehlt in den Kosten, bis es angegeben ist; 0 heißt: gibt es nicht.
effects-on-legs = { $file }, { $legs }
effects-or = oder
effects-give-soil-strength = Festigkeit des Bodens
effects-give-pavement-layers = Schichten der Befestigung
effects-give-grip = Griff, gemessen
effects-give-dual-spacing = Abstand der Zwillinge
effects-give-money = Geld des Transports
effects-give-fuel-price = Preis des Kraftstoffs
effects-give-season = gewonnene Saisontage
effects-give-payload = gewonnene Nutzlast
effects-give-tire-saving = gesparte Reifenkosten
effects-give-repair-saving = gesparte Reparaturen
effects-give-road-cost = Unterhalt der Straße
effects-give-road-saving = gesparter Anteil am Unterhalt der Straße
effects-of-time = Dauer des Umlaufs
effects-of-contact = Aufstandsfläche
effects-of-stress-below = Spannung im Boden
effects-of-gravel-rut = Spurrinne im Schotter
effects-of-soil-rut = Spurrinne im Boden
effects-of-dual-gap = Lücke im Zwilling
effects-of-heat-load = Wärmelast
effects-of-washboard = Waschbrett
effects-of-pavement = Verschleiß der Befestigung
effects-of-climb = Steigung
effects-of-descent = Gefälle
effects-of-rolling = Rollwiderstand und Kraftstoff
effects-of-heat = Wärme im Reifen
effects-of-ride = Komfort
effects-of-wind-up = Verspannung
effects-of-spread = Streuung
effects-of-cost = Kosten
effects-of-cost-item = Zeile der Kosten

effects-no-law = { $leg }: nicht zu sagen: { $effect }. Grund: { $reason }.
effects-flag-descent = VORSICHT BERGAB: nach dem niedrigsten Wert steigt er mehr, als er bergab halten kann, auf { $places }. Was weiche Reifen bergauf bringen, ist für die Bremsen nicht da.
effects-flag-wind-up = Angetriebene Achsen mit verschiedenem Druck verspannen sich gegenseitig: { $places }. Sperren auf festem Boden offen lassen.
effects-flag-washboard = Macht wohl Waschbrett, weil die leeren Reifen so hart sind: { $places }.
effects-flag-gap = Zwischen Zwillingen könnten weniger als 10 mm bleiben: { $places }. Die Lücke am Fahrzeug messen, beim niedrigsten Druck und voller Last. Mit Ketten: erst messen; ein Freiraum für Lkw-Ketten war nirgends gedruckt zu finden.
effects-flag-heat-stop = ZU HEISS am wärmsten Tag, wenn der Abschnitt lang genug ist, den Reifen zu erwärmen: { $places }.
effects-flag-heat-warn = Warm am wärmsten Tag, wenn der Abschnitt lang genug ist, den Reifen zu erwärmen: { $places }. Nachsehen, warum, oder langsamer fahren.
effects-ride-less = Komfort: { $least } bis { $most } % weniger Schwingung am Körper bei gleicher Geschwindigkeit. Nicht auf jedem Stück, und verloren, wenn der Fahrer schneller fährt; keine Zahl für Sitz oder Gesundheit ist möglich.
effects-ride-none = Komfort: nicht weniger Schwingung am Körper.
effects-note-top = Niedriger Druck schont die Oberseite der Straße. Ab 0,3 m Tiefe bestimmt die Last, und Messungen fanden fast keinen Unterschied; weniger Last schont auch diesen Boden.
effects-note-asphalt = Der Verschleiß von Asphalt ist ein bester Fall: das Modell drückt gleichmäßig, Reifen nicht. Es sagt nichts über eine sich lösende Deckschicht oder den Rand der Straße.
effects-note-memory = Spurrinnen im Boden, die Spurrinne im Schotter und die Modelle für Zug ruhen zum Teil auf Gleichungen aus dem Gedächtnis. Mit der Quelle und mit einer auf der Straße gesehenen Spurrinne vergleichen, bevor Geld oder eine Genehmigung daran hängt.
effects-note-own-case = Wie viel eine Straße gewinnt, hängt von der Straße, ihrer Feuchte und der Last ab; kein einzelner Prozentsatz gilt.

effects-trials = Was Versuche mit niedrigerem Druck auf solchem Boden fanden, auch die ohne Fund (niedriger Druck geteilt durch hohen):
effects-trials-brief = { $count ->
    [one] Versuche mit niedrigerem Druck auf solchem Boden: einer fand einen Gewinn (--full sagt, wie viel), diese fanden keinen:
   *[other] Versuche mit niedrigerem Druck auf solchem Boden: { $count } fanden einen Gewinn (--full sagt, wie viel), diese fanden keinen:
}
effects-sources = Die Wirkungen stützen sich auf { $count } Quellen, die --full auflistet. Aus dem Gedächtnis: { $memory }. Übliche Praxis, keine Quelle: { $practice }.
effects-trial = { $effect } auf { $ground }: { $found } [{ $source }, { $read }]
effects-trial-between = { $low } bis { $high }
effects-trial-up-to = bis { $high }
effects-trial-less = weniger, keine Zahl genannt
effects-trial-no-difference = kein Unterschied
effects-trial-of-traffic-to-failure = Verkehr bis zum Versagen
effects-trial-of-asphalt-strain = Asphaltdehnung
effects-trial-of-asphalt-life = Asphaltleben
effects-trial-of-rutting = Spurrinnen
effects-trial-of-aggregate-thickness = nötiger Schotter
effects-trial-of-maintenance = Unterhalt der Oberfläche
effects-trial-of-sediment = Sediment
effects-trial-of-deep-stress = Spannung bei 0,3 m und tiefer
effects-trial-on-asphalt = Asphalt
effects-trial-on-asphalt-on-peat = dünner Asphalt auf Torf
effects-trial-on-thawed-pavement = befestigte Straße im Tauwetter
effects-trial-on-thin-membrane = dünne Deckschicht
effects-trial-on-aggregate = Schotter
effects-trial-on-dry-strong-gravel = trockener fester Schotter
effects-trial-on-subsoil = Boden
effects-trial-read-abstract = Kurzfassung gelesen
effects-trial-read-news = Nachricht gelesen
