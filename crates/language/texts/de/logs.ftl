# Protokolle der Lkw.
logs-file = { $file }: { $format }, { $frames } Rahmen in { $span }
logs-buses = Busse: { $names }
logs-clean = jeder Datensatz wurde gelesen
logs-since-last-hint = Die Zeit läuft in so vielen Zeilen zurück, dass die Stempel vielleicht ab der Zeile davor zählen: --timing since-last versuchen.
logs-loss-malformed = nicht in der Form des Formats: { $count }
logs-loss-truncated = abgeschnitten: { $count }
logs-loss-corrupt = lässt sich nicht entpacken oder widerspricht sich: { $count }
logs-loss-unsupported = einer Art, die nicht gelesen wird: { $count }
logs-loss-error_frame = Fehlerrahmen des Busses: { $count }
logs-loss-remote = Anforderungsrahmen, ohne Daten: { $count }
logs-loss-flexible_rate = CAN-FD-Rahmen, nicht gelesen: { $count }
logs-loss-duplicate = derselbe Rahmen noch einmal: { $count }
logs-loss-broken_message = Nachrichten in Paketen, die nie ganz wurden: { $count }
logs-loss-short_group = Gruppen, zu kurz für ein Signal: { $count }
logs-loss-too_many_senders = Rahmen von Kennungen über die unterschiedenen hinaus: { $count }
logs-loss-too_many_codes = Fehlercodes über die unterschiedenen hinaus: { $count }
logs-line = Zeile { $line }
logs-byte = Byte { $byte }
logs-more-bad = und weitere
logs-groups = Gruppen
logs-col-pgn = Gruppe
logs-col-name = Name
logs-col-from = von
logs-col-count = Anzahl
logs-col-bytes = Bytes
logs-col-signal = Signal
logs-col-spn = SPN
logs-col-low = niedrigster
logs-col-high = höchster
logs-col-unit = Einheit
logs-col-values = Werte
logs-col-absent = fehlend
logs-signals = Signale mit Werten
logs-no-signals = Kein bekanntes Signal hat einen Wert.
logs-codes = Aktive Fehlercodes
logs-code = SPN { $spn }, Fehlerart { $failure }, von { $source }
logs-code-counted = SPN { $spn }, Fehlerart { $failure }, { $count } mal, von { $source }
logs-identification = Fahrzeugidentifizierung
logs-stripped = Im Protokoll stand eine Fahrzeug-Identifizierungsnummer; sie wird nicht gezeigt. --keep-identification zeigt sie.
logs-reading = liest { $file }
logs-without-part = dieses airtide wurde ohne das Lesen von Protokollen gebaut; die volle Fassung hat es: cargo build --release -p cli --features logs
logs-written = { $rows } Zeilen mit ursprünglichen Werten und die Sekunden in { $files } Dateien: { $folder }
logs-off-grid = Zahlen ohne Sekunde, weil die Uhr zurückging oder es zu viele Orte gab: { $count }
logs-left-out = { $file }: ausgelassen { $what }
logs-bad = { $count ->
    [one] ein schlechter Datensatz
   *[other] { $count } schlechte Datensätze
}
logs-clock-back = { $count ->
    [one] die Zeit läuft einmal zurück
   *[other] die Zeit läuft { $count } mal zurück
}
logs-gaps = { $count ->
    [one] eine Lücke von mehr als 5 s
   *[other] { $count } Lücken von mehr als 5 s
}
logs-on-route = Auf der Strecke { $route }: { $positions } Sekunden mit einer Position, davon { $off } abseits der Strecke
logs-wheels = Weg nach Raddrehzahl über Weg längs der Strecke: { $ratio } ({ $low } bis { $high } in vier von fünf), auf { $stretches } Abschnitten von einem halben Kilometer
logs-wheels-wrong = Die Radgeschwindigkeit passt nicht zur Strecke: Ihr Maßstab ist falsch, oder es sind andere Reifen montiert, als am Lkw eingestellt sind. Geschwindigkeiten und Wege dieser Aufzeichnungen sind um ebenso viel falsch.
logs-wheels-unknown = zu wenige Abschnitte mit Positionen und Radgeschwindigkeit, um diese zu beurteilen
