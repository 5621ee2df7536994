# Was die Befehle auf der Fehlerausgabe sagen.
check-errors = { $count ->
    [0] keine Fehler
    [one] { $count } Fehler
   *[other] { $count } Fehler
}
check-warnings = { $count ->
    [0] keine Warnungen
    [one] { $count } Warnung
   *[other] { $count } Warnungen
}
check-import = Die Zeilen des Herstellers für { $tire } werden aus { $table } so gelesen:
check-sound = Bereit zum Planen: { $hauls }
check-left-out = Ausgelassen, bis die Fehler behoben sind: { $hauls }
new-next = Weiter: airtide check { $folder }, dann airtide plan { $folder }
plan-chart-written = Diagramm geschrieben: { $file }
step-planning = planen
step-simulating = simulieren
cycles-tenths = { $haul }: ein Umlauf von zehn dauert { $p10 } min oder weniger, der mittlere { $p50 } min, neun von zehn { $p90 } min oder weniger
serve-open = Die Seite ist unter { $address }
serve-open-shared = Für Geräte im lokalen Netz: { $address }
serve-code = Code für das nächste Gerät: { $code }
serve-not-encrypted = Was ein solches Gerät sieht und sendet, ist nicht verschlüsselt: nur in einem Netz teilen, dem man traut.
serve-stop = Beenden mit Strg+C.
