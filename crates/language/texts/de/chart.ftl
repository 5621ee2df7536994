# Diagramme einer Fahrt entlang der Strecke.
chart-strip-title = Fahrt entlang der Strecke
chart-strip-haul = Transport { $haul }, Strecke { $route }
chart-strip-description = Zwei Hälften nebeneinander, jede entlang der Stationierung: links die Leerfahrt, rechts die Fahrt beladen. Von oben nach unten: Höhe und Belag, Geschwindigkeit, Reifendruck, Vorratsdruck. { $changes ->
    [one] { $changes } Wechselpunkt ist markiert.
   *[other] { $changes } Wechselpunkte sind markiert.
}
chart-empty-run = Leerfahrt
chart-laden-run = Fahrt beladen
chart-load-state = Last { $name }
chart-travel-up = mit steigender Stationierung
chart-travel-down = mit fallender Stationierung
chart-no-run = Kein Messpunkt dieser Fahrt in Bewegung

chart-elevation = Höhe
chart-elevation-and-surface = Höhe und Belag
chart-no-elevation = Keine Höhe angegeben
chart-speed = Geschwindigkeit
chart-tire-pressure = Reifendruck
chart-supply-pressure = Vorratsdruck
chart-own-scale = jede Fahrt hat ihre eigene Skala
chart-chainage = Stationierung
chart-in-unit = { $what }, { $unit }
chart-names-hidden = { $count ->
    [one] { $count } Name aus Platzmangel nicht gezeigt
   *[other] { $count } Namen aus Platzmangel nicht gezeigt
}

chart-surface-paved = Asphalt
chart-surface-sealed = Oberflächenbehandlung
chart-surface-gravel = Schotter
chart-surface-earth = Erde
chart-surface-soft-ground = weicher Boden
chart-surface-sand = Sand
chart-surface-snow-or-ice = Schnee oder Eis

chart-label-speed = Tempo
chart-label-cap = Grenze
chart-label-limit = Limit
chart-label-supply = Vorrat

chart-flag-place = ab { $from }, fertig bei { $to }
chart-flag-place-open = ab { $from }
chart-flag-list = Wechselpunkte

chart-standing = Stand
chart-standing-loading = { $time } min Beladen
chart-standing-waiting-change = { $time } min Warten auf Reifendruck vor dem Anfahren
chart-standing-before-off = { $time } min vor dem Anfahren
chart-standing-unloading = { $time } min Entladen
chart-standing-on-the-way = { $time } min bei { $place }
chart-standing-more = { $count } weitere, { $time } min insgesamt
chart-standing-none = kein Stand von einer Minute oder mehr

chart-legend-speed = gefahrene Geschwindigkeit
chart-legend-cap = Tempogrenze der gehaltenen Drücke
chart-legend-limit = Tempolimit des Abschnitts
chart-legend-tire = Reifendruck, wie ein Messgerät ihn zeigt, eine Linienart je Luftkreis
chart-legend-minimum = dünn, gleiche Art: tiefster erlaubter Druck, kalt, auf der verlangten Stufe
chart-legend-supply = Vorratsdruck
chart-legend-compressor = Kompressor fördert
chart-legend-change = vom Wechselpunkt bis dahin, wo der Wechsel fertig sein muss
chart-legend-changing = Balken: ein Wechsel läuft
chart-legend-landmark = Merkpunkt
chart-legend-lay-by = Haltebucht

# Diagramme dessen, was ein Plan ändert.
chart-effects-title = Was der Plan ändert
chart-effects-description = Oben Balken für Aufstandsfläche, Verschleiß oder Spurrinne der Straße und Rollwiderstand, geteilt durch die bei vollem Druck, für jeden Abschnitt, jede Fahrt und jede Fahrweise, mit ihren Bändern. Unten die senkrechte Spannung im Boden über der Tiefe unter dem beladenen Fahrzeug.
chart-effects-band = Balken gehen vom vollen Druck (1) zum erwarteten Verhältnis; Striche von niedrig bis hoch.
chart-effects-patch = Aufstandsfläche, Verhältnis
chart-effects-road = Spurrinne oder Verschleiß, Verhältnis
chart-effects-rolling = Rollwiderstand, Verhältnis
chart-effects-unknown = keine Angabe: siehe Auszufüllen
chart-effects-depth = Spannung im Boden unter dem beladenen Fahrzeug: { $leg }
chart-effects-depth-note = Linien sind die erwartete Spannung, die Fläche das Band des Plans von festem bis weichem Boden. Ab 0,3 m Tiefe fanden Messungen fast keine Wirkung des Drucks; dort bestimmt die Last.
chart-effects-stress = Spannung
chart-effects-below = Tiefe
