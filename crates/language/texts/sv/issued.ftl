# Utfärdade planer.
issued-written = Utfärdad { $plan }: { $file }
issued-units = Tilldelad { $units }, från { $from }
issued-until = Tilldelad { $units }, från { $from } till { $until }
issued-no-units = Inte tilldelad någon enhet; utfärda nästa med --assign
issued-unapproved = { $count ->
    [one] { $count } ruta ska godkännas: papper för förare visar landsvägstryck eller ett streck där.
   *[other] { $count } rutor ska godkännas: papper för förare visar landsvägstryck eller ett streck där.
}
issued-nothing = Ingen plan är utfärdad än; airtide plan SURVEY --haul NAME --issue gör det.
issued-nothing-unit = Ingen plan är tilldelad enhet { $unit }.
issued-title = Utfärdade planer, { $day }
issued-plan = Plan
issued-date = Utfärdad
issued-haul = Transport
issued-of-units = Enheter
issued-days = Gäller
issued-open = från { $from }
issued-closed = { $from } till { $until }
issued-in-force = I kraft
issued-in-force-none = nej
issued-in-force-unassigned = ingen enhet
issued-in-force-all = ja
issued-in-force-for = för { $units }
issued-standing = Inaktuell
issued-current = nej
issued-comments-only = nej: bara kommentarer eller mellanrum ändrades i { $files }
issued-touched = nej: inget som den vilar på ändrades i { $files }
issued-values = ja: { $files }
issued-cannot-tell = går inte att säga, dess transport har fel: { $files }
issued-lapsed = ja: ett godkännande eller tillstånd började eller slutade
issued-added = { $file } (tillagd)
issued-removed = { $file } (borttagen)
issued-unit-plan = Enhet { $unit } kör efter { $plan } den { $day }
issued-unit-none = Ingen plan är i kraft för enhet { $unit } den { $day }.
issued-unit-disputed = Enhet { $unit } har två planer i kraft den { $day }: { $plans }. Den kör efter ingendera förrän en utfärdas på nytt.
issued-unit-stale = Planen är inaktuell; se tabellen ovan.
issued-ladder = Stege för föraren, { $chains }, { $unit } som styrenheten ställs
issued-rung = Steg
issued-up-to = Upp till
issued-road-mark = Märkt *: stegets eget tryck är inte godkänt; landsvägstrycket står i dess ställe. Ett streck: ingen står för ett tryck där, eller steget körs inte så.
