# Ausgegebene Pläne.
issued-written = Ausgegeben { $plan }: { $file }
issued-units = Zugeteilt an { $units }, ab { $from }
issued-until = Zugeteilt an { $units }, von { $from } bis { $until }
issued-no-units = Keinem Fahrzeug zugeteilt; den nächsten mit --assign ausgeben
issued-unapproved = { $count ->
    [one] { $count } Feld ist freizugeben: Papier für Fahrer zeigt dort den Straßendruck oder einen Strich.
   *[other] { $count } Felder sind freizugeben: Papier für Fahrer zeigt dort den Straßendruck oder einen Strich.
}
issued-nothing = Noch ist kein Plan ausgegeben; airtide plan SURVEY --haul NAME --issue macht es.
issued-nothing-unit = Dem Fahrzeug { $unit } ist kein Plan zugeteilt.
issued-title = Ausgegebene Pläne, { $day }
issued-plan = Plan
issued-date = Ausgegeben
issued-haul = Transport
issued-of-units = Fahrzeuge
issued-days = Gilt
issued-open = ab { $from }
issued-closed = { $from } bis { $until }
issued-in-force = In Kraft
issued-in-force-none = nein
issued-in-force-unassigned = kein Fahrzeug
issued-in-force-all = ja
issued-in-force-for = für { $units }
issued-standing = Überholt
issued-current = nein
issued-comments-only = nein: nur Kommentare oder Abstände änderten sich in { $files }
issued-touched = nein: nichts, worauf er beruht, änderte sich in { $files }
issued-values = ja: { $files }
issued-cannot-tell = nicht zu sagen, sein Transport hat Fehler: { $files }
issued-lapsed = ja: eine Freigabe oder Genehmigung begann oder endete
issued-added = { $file } (dazu)
issued-removed = { $file } (weg)
issued-unit-plan = Fahrzeug { $unit } fährt am { $day } nach { $plan }
issued-unit-none = Für Fahrzeug { $unit } ist am { $day } kein Plan in Kraft.
issued-unit-disputed = Für Fahrzeug { $unit } sind am { $day } zwei Pläne in Kraft: { $plans }. Es fährt nach keinem, bis einer neu ausgegeben ist.
issued-unit-stale = Dieser Plan ist überholt; siehe die Tabelle oben.
issued-ladder = Leiter für den Fahrer, { $chains }, { $unit } wie am Regler gestellt
issued-rung = Stufe
issued-up-to = Bis
issued-road-mark = Mit *: der eigene Druck der Stufe ist nicht freigegeben; der Straßendruck steht dafür. Ein Strich: niemand steht dort für einen Druck ein, oder die Stufe wird so nicht gefahren.
