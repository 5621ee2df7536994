# Mitä komennot sanovat virhetulosteessa.
check-errors = { $count ->
    [0] ei virheitä
    [one] { $count } virhe
   *[other] { $count } virhettä
}
check-warnings = { $count ->
    [0] ei huomautuksia
    [one] { $count } huomautus
   *[other] { $count } huomautusta
}
check-import = Valmistajan rivit renkaalle { $tire } luetaan taulukosta { $table } näin:
check-sound = Valmis suunniteltavaksi: { $hauls }
check-left-out = Jätetty pois, kunnes virheet on korjattu: { $hauls }
new-next = Seuraavaksi: airtide check { $folder }, sitten airtide plan { $folder }
plan-chart-written = Kuva kirjoitettu: { $file }
step-planning = suunnitellaan
step-simulating = simuloidaan
cycles-tenths = { $haul }: joka kymmenes kierros kestää enintään { $p10 } min, keskimmäinen { $p50 } min, yhdeksän kymmenestä enintään { $p90 } min
serve-open = Sivu on osoitteessa { $address }
serve-open-shared = Paikallisverkon laitteille: { $address }
serve-code = Koodi seuraavalle laitteelle: { $code }
serve-not-encrypted = Se, mitä tällainen laite näkee ja lähettää, ei ole salattua: jaa verkossa, johon luotat.
serve-stop = Lopeta painamalla Ctrl+C.
