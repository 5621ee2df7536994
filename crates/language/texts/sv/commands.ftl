# Vad kommandona säger, på felutmatningen.
check-errors = { $count ->
    [0] inga fel
    [one] { $count } fel
   *[other] { $count } fel
}
check-warnings = { $count ->
    [0] inga varningar
    [one] { $count } varning
   *[other] { $count } varningar
}
check-import = Tillverkarens rader för { $tire } läses ur { $table } så:
check-sound = Klart att planera: { $hauls }
check-left-out = Utelämnat tills felen är rättade: { $hauls }
new-next = Sedan: airtide check { $folder }, därefter airtide plan { $folder }
plan-chart-written = Diagram skrivet: { $file }
step-planning = planerar
step-simulating = simulerar
cycles-tenths = { $haul }: ett omlopp av tio tar { $p10 } min eller mindre, det mittersta { $p50 } min, nio av tio { $p90 } min eller mindre
serve-open = Sidan finns på { $address }
serve-open-shared = För enheter i det lokala nätet: { $address }
serve-code = Kod för nästa enhet: { $code }
serve-not-encrypted = Det en sådan enhet ser och skickar är inte krypterat: dela på ett nät du litar på.
serve-stop = Avsluta med Ctrl+C.
