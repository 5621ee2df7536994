# Die Fahrerkarte. Kurz: sie wird in der Kabine gelesen.
card-up-to = bis { $unit }
card-set = { $load_state }: Regler stellen auf, { $unit }
card-set-both = { $load_state }: stellen auf, { $unit } (Regler: { $controller })
card-road-mark = * Straßendruck steht dafür: der eigene Druck der Stufe ist nicht freigegeben.
card-dash-mark = Ein Strich: diese Stufe mit dieser Last nicht fahren.
card-fixed = Fest, von Hand gestellt, kalt: { $groups }.
card-hold = { $rung }: höchstens { $limit }
card-hold-one = { $limit }; dann anhalten oder Druck erhöhen
card-chains = Mit { $chains }, { $load_state }: { $cells }.
card-elsewhere = Andere Strecke, unbekannter Anhänger oder unbekannte Last: Straßendruck.
card-elsewhere-road = Stufe { $rung }, beladen: { $figures } { $unit }. Nicht erreicht: nicht schneller, als das Manometer erlaubt.
card-elsewhere-stand = Kein Straßendruck dieses Plans ist für alle Luftkreise freigegeben: stehen bleiben und anrufen.

card-strip = Die Strecke
card-strip-described = Strecke { $route } als Streifen: Oberflächen, Landmarken und { $changes ->
    [one] { $changes } Wechselpunkt mit seiner Nummer
   *[other] { $changes } Wechselpunkte mit ihren Nummern
}; Lastfahrt oben, Leerfahrt unten. Volles Dreieck nach oben: erhöhen. Offenes Dreieck nach unten: senken.
card-number = Nr.
card-not-driven = Dieser Transport ist so nicht fahrbar; es sind keine Wechselpunkte bekannt.
card-not-complete = NICHT RECHTZEITIG FERTIG: die niedrigere Grenze halten, bis alle Luftkreise fertig sind.
card-before-first-move = Vor dem ersten Anfahren Druck erhöhen: { $channels }.
card-laden-after-loading = Beladen: { $state } wählen, warten, bis alle Luftkreise fertig sind ({ $time }), dann anfahren.
card-laden-while-loading = Beim Laden: { $state } wählen ({ $time }). Nicht anfahren, bevor alle Luftkreise fertig sind.
card-laden-rolling = Vor dem Laden, bei { $at }: { $state } wählen ({ $time }). Beladen nicht anfahren, bevor alle Luftkreise fertig sind.
card-laden-not-possible = { $state }: kein Weg zu den Lastdrücken ist bekannt. Nicht laden; anrufen.
card-unloaded = Entladen: { $state } wählen, dann anfahren.

card-gauge = Was das Manometer erlaubt
card-gauge-how = Jedes Manometer muss mindestens die Zahl der Zeile zeigen; der langsamste Reifen bestimmt das Tempo. Ein Strich oder weniger als die letzte Zeile: nicht fahren. Mehr als die erste Zeile: nicht fahren, erst Druck senken. Warm oder kalt.
card-gauge-none = Kein Wert erlaubt das Fahren mit dem, was freigegeben ist. Nicht fahren; anrufen.
card-drive-up-to = Fahren bis, { $unit }
card-not-above = nicht über

card-event = Wenn
card-do = dann
card-event-brake-air = Bremsluft ist niedrig
card-do-brake-air = Füllen sofort beenden. Langsamer, sicher anhalten, Feststellbremse ziehen. Nicht weiterfahren, bevor die Ursache gefunden ist.
card-event-not-rising = Ein Luftkreis folgt nicht
card-do-not-rising = Nicht schneller, als sein Manometer erlaubt. Am nächsten sicheren Platz anhalten und anrufen.
card-event-late = Sie haben spät begonnen
card-do-late = Die niedrigere Grenze halten, bis alle Luftkreise fertig sind. Nie dem Druck vorausfahren.
card-event-too-fast = Sie sind über der Grenze
card-do-too-fast = Sanft auf die Grenze abbremsen; dann langsam bleiben oder Druck erhöhen. Nach langer Zeit darüber: anhalten, Reifen abkühlen lassen, melden.
card-event-display = Anzeige dunkel oder zweifelhaft
card-do-display = Der Druck ist nicht bekannt. Jeden Reifen von Hand messen; bis dahin Schritttempo, weg von der Straße.
card-event-stuck = Sie stecken fest
card-do-stuck = Der gedruckten Anweisung folgen oder auf Hilfe warten. Am Telefon wird keine Zahl erfunden.
card-event-shift-end = Die Schicht endet
card-supply-touches-brakes = Die Luft wird auf diesem Transport knapp: die Bremsen haben Vorrang. Hört das Füllen von selbst auf, die niedrigere Grenze halten.
card-change-told = Nr. { $number }: { $told }
