# Die Seite des Plans, von oben nach unten.
plan-title = Druckplan
plan-for-haul = Druckplan für Transport { $haul }
plan-combination = Fahrzeugkombination
plan-route = Strecke
plan-draft = Entwurf: nicht ausgegeben, nicht für den Fahrer
plan-issued = Plan { $number }, ausgegeben am { $date }

plan-ladder = Leiter
plan-rung = Stufe
plan-rungs = Stufen
plan-speed-cap = Tempogrenze
plan-hold-limit = Haltegrenze
plan-hold-limit-both = { $time } oder { $distance }, was zuerst eintritt; dann anhalten oder Druck erhöhen
plan-no-hold-limit = keine Grenze
plan-channel = Luftkreis
plan-axle-group = Achsgruppe
plan-load-state = Ladezustand
plan-laden = beladen
plan-empty = leer
plan-chain-state = Ketten
plan-chains-on = aufgelegt
plan-chains-off = abgenommen
plan-value-to-set = Regler stellen auf
plan-cold-pressure = Kalter Druck
plan-deflection = Einfederung

plan-window = Spanne
plan-lowest = Tiefst
plan-highest = Höchst
plan-minimum = Minimum
plan-maximum = Maximum
plan-governed-by = Bestimmt durch
plan-next-closest = Nächste
plan-source = Quelle
plan-approval = Freigabe
plan-approval-maker = vom Reifenhersteller freigegeben
plan-approval-standard = innerhalb der Norm
plan-approval-needed = freizugeben
plan-approval-not-possible = nicht möglich
plan-approval-expired = Freigabe am { $date } abgelaufen: wieder Entwurf
plan-no-window = Nicht möglich: der tiefste erlaubte Druck, { $lowest }, liegt über dem höchsten erlaubten, { $highest }

plan-stack = Was dazukam
plan-stack-gauge = Fehler des Messgeräts
plan-stack-deadband = Totband des Reglers
plan-stack-duals = Unterschied im Zwilling
plan-stack-load-share = ungleiche Lastverteilung
plan-stack-warmest = wärmster Reifen auf dieser Stufe
plan-stack-snap = auf den nächsten Wert des Reglers
plan-stack-total = insgesamt dazu

plan-change-points = Wechselpunkte
plan-change-count = { $count ->
    [one] { $count } Wechselpunkt
   *[other] { $count } Wechselpunkte
}
plan-start-raising = ERHÖHEN BEGINNEN
plan-start-lowering = SENKEN BEGINNEN
plan-stop-and-change = ANHALTEN UND WECHSELN
plan-lead = Vorlauf
plan-reach-by = Fertig bei
plan-change-time = Dauer des Wechsels
plan-change-time-slow = Dauer, eine von zehn Fahrten braucht länger
plan-cap-while-changing = Tempogrenze während des Wechsels
plan-from-rung = Von
plan-to-rung = Nach

plan-cycle = Umlauf
plan-cycle-time = Dauer eines Umlaufs
plan-cycle-time-added = Durch Druckwechsel dazu
plan-cycle-fuel = Kraftstoff eines Umlaufs
plan-compressor-loaded = Kompressor fördert
plan-lowest-supply = Tiefster Vorratsdruck
plan-before-first-move = Vor dem ersten Anfahren
plan-before-first-move-raise = Vor dem Anfahren auf { $pressure } kalt erhöhen: nach der kältesten Nacht könnte ein Reifen zu wenig Druck haben
plan-shift-end = Schichtende: vor dem Abstellen auf Straßendruck erhöhen

plan-effects = Was es ändert
plan-cost = Kosten
plan-what-decided = Was jede Zahl bestimmt hat
plan-cautions = Hinweise
plan-problems = Nicht gelöst

plan-standing-read = in der Quelle gelesen
plan-standing-given = für diese Flotte angegeben
plan-standing-practice = übliche Praxis, keine Quelle
plan-standing-memory = aus dem Gedächtnis: vor Gebrauch mit der Quelle vergleichen
plan-extrapolated = außerhalb des Bereichs der Quelle

# Die Seite in einem Terminal: Beschriftungen von Tabellen und kurze Zeilen.
plan-route-forward = { $route }, { $length }; die Ladung fährt mit steigender Stationierung
plan-route-backward = { $route }, { $length }; die Ladung fährt mit fallender Stationierung
plan-cold-named-at = Temperaturen
plan-temperatures = kalte Drücke gelten bei { $reference }; geplant für { $coldest } bis { $warmest }
plan-for-units = Einheiten
plan-measured-delivery = Förderung des Kompressors
plan-measured-conductance = Leitwert von { $channel }
plan-measured-tire-volume = Luftvolumen der Reifen von { $channel }
plan-measured-counted = Eingerechnet: { $what } bei Einheit { $unit } beträgt { $share } % des Typs, gemessen { $date }.
plan-measured-not-counted = Nicht eingerechnet: { $what } bei Einheit { $unit } beträgt { $share } % des Typs, gemessen { $date }. Ihre Wechsel dauern länger als hier; mit --unit { $unit } planen.
plan-controller = Regler
plan-controller-unit = arbeitet in { $unit }
plan-controller-other-unit = arbeitet in { $unit }; der Stellwert steht auch in { $unit } da, und dieser gilt
plan-breaks-limits = { $count ->
    [one] DIESEN PLAN SO NICHT FAHREN: er verletzt eine Grenze.
   *[other] DIESEN PLAN SO NICHT FAHREN: er verletzt { $count } Grenzen.
}
plan-axle-groups = Achsgruppen und Lasten
plan-tire = Reifen
plan-tires = Anzahl
plan-single = einzeln
plan-dual = Zwilling
plan-fixed-pressure = fester Druck

plan-ladder-how = Stellen: worauf der Regler gestellt wird, für den wärmsten Reifen der Stufe. Kalt: was davon in einem kalten Reifen bleibt. Tiefst und höchst: die Spanne, kalt.
plan-ladder-same = { $cells }: wie { $chains }
plan-cap = Grenze
plan-set = Stellen
plan-cold = Kalt
plan-channel-brief = Luftkreis
plan-approval-brief-maker = Hersteller
plan-approval-brief-standard = Norm
plan-cell-not-possible = { $cell } ist nicht möglich: { $why }.
plan-cell-hold = { $cell }: höchstens { $distance } am Stück, nach der Zeile des Herstellers; dann anhalten oder Druck erhöhen.
plan-rung-unused = Dieser Transport benutzt nicht: { $rungs }.

plan-more-cells = { $count ->
    [one] Ein weiteres Feld ist nicht gezeigt: anderer Lade- oder Kettenzustand, Stufen, die dieser Transport nicht benutzt.
   *[other] { $count } weitere Felder sind nicht gezeigt: andere Lade- und Kettenzustände, Stufen, die dieser Transport nicht benutzt.
}
plan-more-not-possible = { $count ->
    [one] Eines davon ist nicht möglich – { $cells }.
   *[other] { $count } davon sind nicht möglich – { $cells }.
}
plan-more-possible = Alle sind möglich.
plan-more-how = Mit --full ist alles zu sehen, mit der ganzen Rechnung jeder Zahl.
plan-decided-by = bestimmt durch
plan-decided-lowest = tiefst
plan-decided-next = nächste
plan-decided-set = stellen
plan-decided-how = Tiefst: die Grenze, die bestimmt hat, kalt. Nächste: die es ohne sie täte. Stellen: der tiefste Druck und was dazukam.
plan-decided-allowance = +{ $share }

plan-ground = der Boden wünscht { $advice } oder weniger (Rat)
plan-stack-sealed-gauge = geschlossenes Messgerät in dieser Höhe
plan-stack-hand-set = von Hand höher gesetzt
plan-stack-brief-gauge = Messgerät
plan-stack-brief-deadband = Totband
plan-stack-brief-duals = Zwilling
plan-stack-brief-warmest = warmer Reifen und Rundung
plan-stack-brief-sealed-gauge = geschl. Messgerät
plan-stack-brief-hand-set = von Hand
plan-stack-sums-to = { $items }: stellen { $set } (wärmster Reifen { $warmest })
plan-deflection-then = Einfederung { $percent } der Querschnittshöhe
plan-other-tire = wo Reifen { $tire } montiert ist
plan-worst-tire = { $load } auf dem schlechtesten Reifen
plan-covers = gilt bis { $speed }
plan-load-allowance = Lastzuschlag { $share }
plan-pressure-added = { $pressure } durch die Zeile dazu
plan-deflection-at-most = höchstens { $share } der Querschnittshöhe
plan-from-reading = von { $pressure }
plan-at-temperature = bei { $temperature }
plan-least-gap = mindestens { $gap }
plan-standing-brief-read = gelesen
plan-standing-brief-given = angegeben
plan-standing-brief-memory = aus dem Gedächtnis

plan-fixed-groups = Gruppen mit festem Druck
plan-worst-tire-load = Schlechtester
plan-holds-cold = Hat, kalt
plan-needs-cold = Braucht, kalt
plan-verdict = Urteil
plan-enough = genug
plan-too-low = ZU NIEDRIG
plan-morning-after = Am Morgen danach
plan-morning-how = Auf der tiefsten Stufe abgestellt, nach einer Nacht bei { $coldest }: was ein Messgerät zeigt, gegen das, was der Reifen dort leer braucht.
plan-parked-on = Abgestellt auf
plan-reads = Zeigt
plan-needs = Braucht
plan-share = Anteil
plan-may-move = darf anfahren
plan-raise-first = ERST ERHÖHEN

plan-change-points-how = In Fahrtrichtung. An der Stelle oder davor beginnen; die neue Tempogrenze gilt ab Beginn eines Senkens und ab Ende eines Erhöhens. { $times }
plan-times-nominal = Dauern und Vorläufe sind Nennwerte, ohne Streuung zwischen Lkw und Fahrten.
plan-times-sampled = Dauer: die Mitte vieler Fahrten, in Klammern, was neun von zehn einhalten; Vorläufe gelten für neun von zehn.
plan-times-partly-sampled = Dauer: die Mitte vieler Fahrten, in Klammern, was neun von zehn einhalten; Vorläufe gelten für neun von zehn. Eine Dauer ohne Klammern ist ein Nennwert, ihr Vorlauf auch.
plan-time-sampled = Dauer
    (9 von 10)
plan-does-not-fit-p90 = Wechselpunkt { $number } reicht bei einer gewöhnlichen Fahrt; mehr als eine von zehn Fahrten ist nicht fertig, wo sie es sein muss.
plan-no-change-points = Keine: eine Stufe reicht für die ganze Strecke.
plan-done-by = Fertig bei
plan-run = Fahrt { $load_state }
plan-number = Nr.
plan-at = Bei
plan-place = Ort
plan-call = Auftrag
plan-from-to = Stufen
plan-time = Dauer
plan-at-landmark = bei { $landmark }
plan-before-landmark = { $distance } vor { $landmark }
plan-beyond-landmark = { $distance } nach { $landmark }
plan-does-not-fit = Wechselpunkt { $number } reicht nicht: der Wechsel ist nicht fertig, wo er es sein muss.
plan-refused-compressor-limit = Wechselpunkt { $number } wäre rechtzeitig fertig und wird abgelehnt: der Kompressor liefe länger ohne Pause, als er darf.
plan-refused-supply-before-descent = Wechselpunkt { $number } wäre rechtzeitig fertig und wird abgelehnt: die Behälter wären oben am nächsten langen Gefälle nicht auf Einschaltdruck.
plan-chosen-way = Wechselpunkt { $number } wird so gemacht: { $way }.
plan-other-ways = Wechselpunkt { $number }, andere Wege: { $ways }.
plan-before-descent = Wechselpunkt { $number } liegt früher als sonst, weil auf einem langen Gefälle und kurz davor keine Luft entnommen wird.
plan-way-rolling = während der Fahrt
plan-way-go-on-slowly = mit der niedrigeren Tempogrenze { $distance } über die Stelle hinaus
plan-way-lay-by = in { $place } bei { $km } halten, bis es fertig ist
plan-way-slower = das Stück davor im Mittel mit { $speed } fahren
plan-way-other-rung = auf Stufe { $rung } fahren, die rechtzeitig erreicht wird
plan-way-more-air = das { $times }-Fache der heutigen Kompressorleistung
plan-way-more-road = { $distance } früher beginnen
plan-loses = verliert { $time }
plan-gains = spart { $time }
plan-loses-nothing = kostet keine Zeit
plan-wrong-road = falscher Druck auf { $distance }
plan-on-descent = { $what }, und füllt Reifen auf einem langen Gefälle, wo die Bremsen die Luft brauchen
plan-late = Wenn der Fahrer zu spät beginnt: Zeit und Weg mit falschem Druck; und die Luft jedes Wechsels
plan-late-by = Zu spät um { $distance }
plan-never = Nie
plan-run-ends = die Fahrt endet vorher
plan-lowest-supply-brief = Vorrat tief
plan-compressor-run = Kompressor
    am Stück

plan-laden-change = Von den Drücken leer zu den Drücken beladen
plan-way = Weg
plan-time-lost = Zeitverlust
plan-ordered-at = Auftrag bei
plan-empty-road-hard = Leer mit
    Druck beladen
plan-choice = Wahl
plan-chosen = gewählt
plan-chosen-not-possible = gewählt, NICHT MÖGLICH
plan-laden-not-allowed-while-loading = die Aufnahme erlaubt keine Wechsel beim Beladen
plan-laden-road-too-short = das letzte Stück vor dem Beladen ist zu kurz dafür
plan-laden-never-complete = die Luft erreicht den Druck nicht
plan-laden-why = { $way }: nicht möglich, { $why }.
plan-laden-rolling = während der Fahrt, vor dem Beladen
plan-laden-while-loading = beim Beladen
plan-laden-after-loading = im Stand, nach dem Beladen

plan-cycle-waited = Nur auf Druck gewartet
plan-cycle-water = Angesaugtes Wasser, für den Trockner
plan-cycles-per-day = Umläufe am Tag
plan-part = Teil
plan-waited = Gewartet
plan-fuel = Kraftstoff
plan-compressor-time = Kompressor
plan-phase-shift-start = Schichtbeginn
plan-phase-empty = Leerfahrt
plan-phase-loading = Beladen
plan-phase-laden = Fahrt beladen
plan-phase-unloading = Entladen

plan-sources = Quellen
plan-cautions-broken = Dies verletzt eine Grenze. Den Plan nicht fahren, bevor es behoben ist:
plan-cautions-told = Außerdem zu wissen:

# Wie eine Leiter gefunden wurde.
plan-search = Warum diese Leiter
plan-search-asked = Gesucht: höchstens { $asked } Stufen waren verlangt, { $found } bleiben, aus { $caps } Tempogrenzen von { $lowest } bis { $highest }.
plan-search-required = Von der Aufnahme verlangt: { $caps }.
plan-search-term = Ein Umlauf braucht
plan-search-amount = Menge
plan-search-price = Preis
plan-search-time = Fahren und Warten
plan-search-hard-road = härter als der Boden wünscht, kPa km
plan-search-changes = Wechsel
plan-search-compressor = fördernder Kompressor
plan-search-in-all = insgesamt
plan-search-price-time = { $price } je Stunde
plan-search-price-hard-road = { $price } je kPa km
plan-search-price-changes = { $price } je Wechsel
plan-search-price-compressor = { $price } je Stunde
plan-search-fewer-more = Eine Stufe weniger: { $difference } { $currency } mehr je Umlauf.
plan-search-fewer-less = Eine Stufe weniger: { $difference } { $currency } weniger je Umlauf.
plan-search-fewer-same = Eine Stufe weniger kostet dasselbe.
plan-search-no-fewer = Eine Stufe weniger: keine solche Leiter deckt jeden Abschnitt.
plan-search-more-more = Eine Stufe mehr: { $difference } { $currency } mehr je Umlauf.
plan-search-more-less = Eine Stufe mehr: { $difference } { $currency } weniger je Umlauf.
plan-search-more-same = Eine Stufe mehr spart nichts.
plan-search-no-more = Eine Stufe mehr: keine Tempogrenze bleibt zu versuchen.
plan-search-exact = Lücke 0: auf der in Abschnitte geteilten Strecke und mit den versuchten Tempogrenzen kostet keine andere Wahl weniger.
plan-search-gap = Lücke { $gap } { $currency }: die Suche wurde abgebrochen, und eine andere Wahl könnte so viel weniger kosten.
plan-search-rounds = { $count ->
    [one] Die gefundene Leiter wurde dann ganz geplant, einmal.
   *[other] Die gefundene Leiter wurde { $count }-mal ganz geplant, und was ein Wechsel wirklich kostet, floss ein.
}

# Felder in einer Textzeile.
cells-every-rung = jede Stufe
cells-on = { $states } ({ $rungs })
