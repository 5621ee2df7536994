# Übung und Urteil.
practice-title = Übung von { $haul }, Startzahl { $seed }
practice-arrived = Angekommen.
practice-not-arrived = NICHT ANGEKOMMEN: DIE FAHRT ENDETE UNTERWEGS
practice-no-surprise = Nichts lief anders als geplant.
practice-surprise = Anders als geplant: { $what }
surprise-slow-compressor = ein verschlissener Kompressor
surprise-leak = ein Leck hinter dem Kompressor
surprise-unexpected-stop = ein Hindernis auf der beladenen Fahrt
surprise-closed-lay-by = eine Haltebucht war gesperrt
surprise-wrong-load-state = der leere Ladezustand war noch gewählt, als die beladenen Drücke verlangt wurden
surprise-soft-leg = ein vom Regen aufgeweichter Abschnitt
practice-findings = Befunde
practice-no-finding = Kein Befund: die Fahrt hielt den Plan ein.
practice-finding = Befund
practice-when = Nach
practice-at = Bei
practice-lasted = Dauer
practice-evidence = Was gesehen wurde
practice-severity = Gewicht
practice-price = Gegen die Fahrt des Plans
practice-item = Posten
practice-yours = Ihre
practice-plans = Plan
practice-more = Mehr
practice-cost = Kosten
practice-no-price = kein Preis
practice-item-time = Zeit
practice-item-fuel = Kraftstoff
practice-item-compressor = Kompressor fördert
practice-item-changes = Verlangte Wechsel
practice-item-road = Härter als die Straße will
practice-item-tires = Unter dem Mindestdruck, mal Zeit
practice-cost-together = Zusammen { $cost } { $currency }, von dem, wofür die Aufnahme einen Preis hat.
practice-nothing-priced = Die Aufnahme hat keine Preise für diesen Transport; in seiner Datei angeben, um Geld zu sehen.
practice-on-the-real-road = Eine Übung ist kein Führerschein: Lkw, Straße und Gesetz entscheiden am Tag selbst.
practice-problems = { $count ->
    [one] 1 Zeile der Fahrt ist nicht zu gebrauchen
   *[other] { $count } Zeilen der Fahrt sind nicht zu gebrauchen
}
step-practising = fahren
