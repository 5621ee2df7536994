# Was den niedrigsten und den höchsten Druck einer Spanne bestimmt.
limit-load-table = Last-Druck-Tabelle
limit-load-power-law = Last gegen Nennpunkt (Potenzgesetz)
limit-low-speed-allowance = Zuschlag der Tabelle für langsame Fahrt
limit-maker-row = freigegebene Zeile des Reifenherstellers
limit-lowest-row = niedrigster veröffentlichter Wert: Tabellen und Praxis gehen bei dieser Tempogrenze nicht tiefer
limit-deflection = Einfederung bei der Tempogrenze
limit-bead = Wulst und Felge
limit-wheel-valve = selbstschließendes Radventil, bei größter Kälte
limit-flat-rule = öffentliche Straße: unter der Hälfte des Höchstdrucks der Reifenflanke gilt als platt
limit-roadside-hot = öffentliche Straße: Kontrolle eines warmen Reifens
limit-permit-minimum = Genehmigung, Minimum
limit-permit-maximum = Genehmigung, Maximum
limit-dual-gap = Abstand der Zwillingsreifen
limit-mate-diameter = Durchmesser des Zwillingspartners
limit-chains = Ketten: Straßendruck
limit-chains-shared = Ketten an einer anderen Gruppe am selben Luftkreis
limit-turning-scrub = Radieren in Kurven
limit-tire-heat = Reifenwärme
limit-tire-maximum = Höchstdruck auf der Reifenflanke
limit-rim-maximum = Felge
limit-supply = verlässlicher Vorratsdruck
limit-ground = Boden (Rat)
limit-fixed = fest: diese Gruppe hat keinen Luftkreis
limit-hand-set = von Hand in der Aufnahme gesetzt
limit-other-group = andere Achsgruppe am selben Luftkreis
limit-service-rule = 80 % des nötigen Drucks
limit-heavier-state = unbekannter Ladezustand: der nächstschwerere gilt
limit-unknown-trailer = unbekannter Anhänger: Straßendruck
limit-restricted-speed = Tabelle für begrenzte Geschwindigkeit

# Dasselbe in einer Spalte.
limit-brief-load-table = Lasttabelle
limit-brief-restricted-speed = Tempotabelle
limit-brief-maker-row = Zeile Hersteller
limit-brief-deflection = Einfederung
limit-brief-bead = Wulst
limit-brief-lowest-row = tiefste Tabelle
limit-brief-wheel-valve = Radventil
limit-brief-flat-rule = halbes Maximum
limit-brief-roadside-hot = Kontrolle, warm
limit-brief-dual-gap = Abstand Zwilling
limit-brief-chains = Ketten
limit-brief-turning-scrub = Radieren
limit-brief-tire-heat = Reifenwärme
limit-brief-tire-maximum = Maximum Flanke
limit-brief-rim-maximum = Felge
limit-brief-supply = Vorrat
limit-brief-permit-minimum = Genehmigung
limit-brief-permit-maximum = Genehmigung
limit-brief-ground = Boden (Rat)

# Warum ein Feld nicht möglich ist.
why-overloaded = der schlechteste Reifen trägt { $load }, mehr als die { $highest }, die er bei { $cap } tragen darf
why-too-fast = die Tempogrenze von { $cap } liegt über den { $rated } des Geschwindigkeitssymbols
why-too-hot = die Luft im Reifen überschreitet { $highest } bei jedem Druck
why-duals-touch = die Zwillingsreifen berühren sich bei jedem Druck mit einem Mittenabstand von { $spacing }
why-no-deflection = kein Druck hält die Einfederung unter { $share }
why-empty-supply = es müssten { $lowest } gesetzt werden, und der Vorrat erreicht { $highest }
why-empty-rim = es müssten { $lowest } gesetzt werden, und die Felge trägt { $highest }
why-empty-tire = es müssten { $lowest } gesetzt werden, und der Höchstdruck der Reifenflanke ist { $highest }
why-empty-permit = es müssten { $lowest } gesetzt werden, und die Genehmigung erlaubt { $highest }
why-not-rated = der Reifen hat für diese Montage keine Tragfähigkeit

# Dasselbe in einer Spalte.
why-brief-overloaded = ÜBERLADEN
why-brief-too-fast = zu schnell
why-brief-too-hot = zu heiß
why-brief-duals-touch = Zwilling berührt
why-brief-no-deflection = Einfederung
why-brief-not-rated = ohne Tragfähigkeit
why-brief-empty-supply = über Vorrat
why-brief-empty-rim = über Felge
why-brief-empty-tire = über Flanke
why-brief-empty-permit = über Genehmigung
