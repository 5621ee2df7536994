# Gemachte Protokolle.
step-making = Protokolle werden gemacht
make-log = Protokoll
make-frames = Rahmen
make-lost = Verloren
make-hours = Stunden
make-distance = Gefahren
make-asked =
    Wechsel
    verlangt
make-complete = fertig
make-forgotten = vergessen
make-truth-beside = Neben jedem Protokoll liegt seine Wahrheit, als .truth.json. Nichts darin ist echt.

make-fault = Fehler
make-fault-range = Größe
make-fault-what = Was es ist
make-fault-examples = Mit --fault verlangen, zum Beispiel:

make-fault-tire-leak = ein Loch in einem Reifen, so weit wie die Größe sagt
make-fault-line-leak = ein Loch in der Leitung eines Kanals
make-fault-line-off = die Leitung eines Kanals ist abgegangen
make-fault-line-narrowed = eine geknickte oder verstopfte Leitung; die Größe ist, was von ihrem Leitwert übrig ist
make-fault-line-shut = die Leitung ist vor den Rädern abgesperrt
make-fault-fill-stuck-shut = das Füllventil öffnet nicht
make-fault-fill-slow = das Füllventil öffnet zum Teil; die Größe ist, was übrig ist
make-fault-exhaust-stuck-shut = die Entlüftung öffnet nicht
make-fault-exhaust-stuck-open = die Entlüftung schließt nicht
make-fault-exhaust-slow = die Entlüftung öffnet zum Teil; die Größe ist, was übrig ist
make-fault-exhaust-frozen = die Entlüftung öffnet nicht, solange es kälter als 0 °C ist
make-fault-wheel-end-shut = ein von Hand geschlossenes Radende, das offen sein sollte
make-fault-core-left-in = ein Ventileinsatz steckt noch in einem Reifen; die Größe ist, was von seinem Leitwert übrig ist
make-fault-weak-compressor = ein verschlissener Kompressor oder verstopfter Einlass; die Größe ist, was von seiner Lieferung übrig ist
make-fault-cut-in-off = der Druckregler schaltet bei anderem Druck ein, um die Größe daneben
make-fault-cut-out-off = der Druckregler schaltet bei anderem Druck ab, um die Größe daneben
make-fault-protection-off = das Schutzventil arbeitet bei anderen Drücken, um die Größe daneben
make-fault-brake-leak = die Bremsen verlieren so viel freie Luft
make-fault-gauge-off = das Messgerät der Steuerung zeigt auf einem Kanal um die Größe zu viel
make-fault-gauge-other-kind = das Messgerät der Steuerung ist auf einem Kanal verschlossen statt offen zur Luft, oder umgekehrt
make-fault-hot-wheel = eine schleifende Bremse oder ein schlechtes Lager erwärmt die Reifen eines Radendes um die Größe
make-fault-sensor-off = der Sensor eines Reifens zeigt um die Größe zu viel
make-fault-sensor-drift = der Sensor eines Reifens zeigt jede Stunde um die Größe mehr
make-fault-sensor-stuck = der Sensor eines Reifens sagt, was er sagte, als der Fehler begann
make-fault-sensor-dead = der Sensor eines Reifens sagt nichts
make-fault-sensors-swapped = die Sensoren zweier Reifen sind vertauscht
make-fault-log-gap = nichts wird aufgezeichnet; es braucht for=
make-fault-clock-off = die Uhr des Schreibers geht um die Größe vor
