# Plansidan, uppifrån och ner.
plan-title = Tryckplan
plan-for-haul = Tryckplan för transporten { $haul }
plan-combination = Fordonståg
plan-route = Sträckning
plan-draft = Utkast: inte utfärdad, inte för föraren
plan-issued = Plan { $number }, utfärdad { $date }

plan-ladder = Stege
plan-rung = Steg
plan-rungs = Steg
plan-speed-cap = Hastighetstak
plan-hold-limit = Hållgräns
plan-hold-limit-both = { $time } eller { $distance }, det som kommer först; stanna eller höj trycket sedan
plan-no-hold-limit = ingen gräns
plan-channel = Luftkrets
plan-axle-group = Axelgrupp
plan-load-state = Lastläge
plan-laden = lastad
plan-empty = tom
plan-chain-state = Kedjor
plan-chains-on = på
plan-chains-off = av
plan-value-to-set = Ställ styrenheten på
plan-cold-pressure = Kallt tryck
plan-deflection = Nedfjädring

plan-window = Spann
plan-lowest = Lägst
plan-highest = Högst
plan-minimum = Lägsta
plan-maximum = Högsta
plan-governed-by = Avgörs av
plan-next-closest = Närmast
plan-source = Källa
plan-approval = Godkännande
plan-approval-maker = godkänt av däcktillverkaren
plan-approval-standard = inom standarden
plan-approval-needed = ska godkännas
plan-approval-not-possible = går inte
plan-approval-expired = godkännandet gick ut { $date }: åter utkast
plan-no-window = Går inte: det lägsta tillåtna, { $lowest }, är över det högsta tillåtna, { $highest }

plan-stack = Vad som lades till
plan-stack-gauge = mätarfel
plan-stack-deadband = styrenhetens dödband
plan-stack-duals = skillnad inom tvillingen
plan-stack-load-share = ojämn lastfördelning
plan-stack-warmest = varmaste däcket på steget
plan-stack-snap = upp till styrenhetens nästa tal
plan-stack-total = tillagt i allt

plan-change-points = Bytespunkter
plan-change-count = { $count ->
    [one] { $count } bytespunkt
   *[other] { $count } bytespunkter
}
plan-start-raising = BÖRJA HÖJA
plan-start-lowering = BÖRJA SÄNKA
plan-stop-and-change = STANNA OCH BYT
plan-lead = Försprång
plan-reach-by = Klart vid
plan-change-time = Tid för bytet
plan-change-time-slow = Tid, en körning av tio tar längre
plan-cap-while-changing = Hastighetstak under bytet
plan-from-rung = Från
plan-to-rung = Till

plan-cycle = Omlopp
plan-cycle-time = Tid för ett omlopp
plan-cycle-time-added = Tillagt av tryckbyten
plan-cycle-fuel = Bränsle för ett omlopp
plan-compressor-loaded = Kompressorn arbetar
plan-lowest-supply = Lägsta matningstryck
plan-before-first-move = Före första körningen
plan-before-first-move-raise = Höj till { $pressure } kallt före körning: efter den kallaste natten kan ett däck vara för lågt
plan-shift-end = Skiftets slut: höj till landsvägstryck före parkering

plan-effects = Vad det ändrar
plan-cost = Kostnad
plan-what-decided = Vad som avgjorde varje tal
plan-cautions = Varningar
plan-problems = Inte löst

plan-standing-read = läst i källan
plan-standing-given = givet för den här flottan
plan-standing-practice = vanlig praxis, ingen källa
plan-standing-memory = ur minnet: jämför med källan före användning
plan-extrapolated = utanför källans område

# Sidan i en terminal: tabellrubriker och korta rader.
plan-route-forward = { $route }, { $length }; lasten går mot stigande längdmätning
plan-route-backward = { $route }, { $length }; lasten går mot fallande längdmätning
plan-cold-named-at = Temperaturer
plan-temperatures = kalla tryck gäller vid { $reference }; planerat för { $coldest } till { $warmest }
plan-for-units = Enheter
plan-measured-delivery = kompressorns luftmängd
plan-measured-conductance = konduktansen i { $channel }
plan-measured-tire-volume = däckens luftvolym i { $channel }
plan-measured-counted = Medräknat: { $what } på enhet { $unit } är { $share } % av typens, mätt { $date }.
plan-measured-not-counted = Inte medräknat: { $what } på enhet { $unit } är { $share } % av typens, mätt { $date }. Dess byten tar längre tid än här; planera den med --unit { $unit }.
plan-controller = Styrenhet
plan-controller-unit = arbetar i { $unit }
plan-controller-other-unit = arbetar i { $unit }; värdet att ställa in visas även i { $unit }, och det är det som gäller
plan-breaks-limits = { $count ->
    [one] KÖR INTE EFTER DEN HÄR PLANEN SOM DEN ÄR: den bryter en gräns.
   *[other] KÖR INTE EFTER DEN HÄR PLANEN SOM DEN ÄR: den bryter { $count } gränser.
}
plan-axle-groups = Axelgrupper och laster
plan-tire = Däck
plan-tires = Antal
plan-single = singel
plan-dual = tvilling
plan-fixed-pressure = fast tryck

plan-ladder-how = Ställ: vad styrenheten ställs på, för det varmaste däcket på steget. Kallt: vad det lämnar i ett kallt däck. Lägst och högst: spannet, kallt.
plan-ladder-same = { $cells }: samma som { $chains }
plan-cap = Tak
plan-set = Ställ
plan-cold = Kallt
plan-channel-brief = Luftkrets
plan-approval-brief-maker = tillverkaren
plan-approval-brief-standard = standard
plan-cell-not-possible = { $cell } går inte: { $why }.
plan-cell-hold = { $cell }: högst { $distance } i taget, enligt tillverkarens rad; stanna eller höj trycket sedan.
plan-rung-unused = Den här transporten använder inte: { $rungs }.

plan-more-cells = { $count ->
    [one] En ruta till visas inte: annat lastläge eller kedjeläge, steg som transporten inte använder.
   *[other] { $count } rutor till visas inte: andra lastlägen och kedjelägen, steg som transporten inte använder.
}
plan-more-not-possible = { $count ->
    [one] En av dem går inte – { $cells }.
   *[other] { $count } av dem går inte – { $cells }.
}
plan-more-possible = Alla går.
plan-more-how = Lägg till --full för att se allt, med hela räkningen för varje tal.
plan-decided-by = avgörs av
plan-decided-lowest = lägst
plan-decided-next = närmast
plan-decided-set = ställ
plan-decided-how = Lägst: gränsen som avgjorde, kallt. Närmast: den som annars skulle göra det. Ställ: det lägsta och vad som lades till.
plan-decided-allowance = +{ $share }

plan-ground = marken vill ha { $advice } eller mindre (råd)
plan-stack-sealed-gauge = tät mätare på denna höjd
plan-stack-hand-set = satt högre för hand
plan-stack-brief-gauge = mätare
plan-stack-brief-deadband = dödband
plan-stack-brief-duals = tvilling
plan-stack-brief-warmest = varmt däck och tal
plan-stack-brief-sealed-gauge = tät mätare
plan-stack-brief-hand-set = för hand
plan-stack-sums-to = { $items }: ställ { $set } (varmaste däck { $warmest })
plan-deflection-then = nedfjädring { $percent } av sektionshöjden
plan-other-tire = där däcket { $tire } sitter
plan-worst-tire = { $load } på det sämsta däcket
plan-covers = täcker { $speed }
plan-load-allowance = lasttillägg { $share }
plan-pressure-added = { $pressure } tillagt av raden
plan-deflection-at-most = högst { $share } av sektionshöjden
plan-from-reading = från { $pressure }
plan-at-temperature = vid { $temperature }
plan-least-gap = { $gap } minst
plan-standing-brief-read = läst
plan-standing-brief-given = givet
plan-standing-brief-memory = ur minnet

plan-fixed-groups = Grupper med fast tryck
plan-worst-tire-load = Sämsta däck
plan-holds-cold = Har, kallt
plan-needs-cold = Behöver, kallt
plan-verdict = Omdöme
plan-enough = räcker
plan-too-low = FÖR LÅGT
plan-morning-after = Morgonen efter
plan-morning-how = Parkerad på lägsta steget, efter en natt i { $coldest }: vad en mätare visar, mot vad däcket behöver där utan last.
plan-parked-on = Parkerad på
plan-reads = Visar
plan-needs = Behöver
plan-share = Andel
plan-may-move = får köra
plan-raise-first = HÖJ FÖRST

plan-change-points-how = I färdens ordning. Börja på platsen eller före; det nya hastighetstaket gäller från början av en sänkning och från slutet av en höjning. { $times }
plan-times-nominal = Tider och försprång är nominella, utan spridning mellan bilar och körningar.
plan-times-sampled = Tid: mitten av många körningar, inom parentes vad nio av tio håller; försprång gäller nio av tio.
plan-times-partly-sampled = Tid: mitten av många körningar, inom parentes vad nio av tio håller; försprång gäller nio av tio. En tid utan parentes är nominell, liksom dess försprång.
plan-time-sampled = Tid
    (9 av 10)
plan-does-not-fit-p90 = Bytespunkt { $number } räcker på en vanlig körning; mer än en körning av tio är inte klar där den måste vara det.
plan-no-change-points = Inga: ett steg räcker för hela sträckningen.
plan-done-by = Klart vid
plan-run = Körning { $load_state }
plan-number = Nr
plan-at = Vid
plan-place = Plats
plan-call = Order
plan-from-to = Steg
plan-time = Tid
plan-at-landmark = vid { $landmark }
plan-before-landmark = { $distance } före { $landmark }
plan-beyond-landmark = { $distance } efter { $landmark }
plan-does-not-fit = Bytespunkt { $number } räcker inte: bytet är inte klart där det måste vara det.
plan-refused-compressor-limit = Bytespunkt { $number } skulle bli klar i tid, men nekas: kompressorn skulle gå längre utan paus än den får.
plan-refused-supply-before-descent = Bytespunkt { $number } skulle bli klar i tid, men nekas: tankarna skulle inte vara vid inkopplingstrycket överst i nästa långa utförsbacke.
plan-chosen-way = Bytespunkt { $number } görs så: { $way }.
plan-other-ways = Bytespunkt { $number }, andra sätt: { $ways }.
plan-before-descent = Bytespunkt { $number } ligger tidigare än annars, eftersom ingen luft tas i eller strax före en lång utförsbacke.
plan-way-rolling = under färd
plan-way-go-on-slowly = fortsätt under det lägre taket { $distance } förbi platsen
plan-way-lay-by = stanna i { $place } vid { $km } tills det är klart
plan-way-slower = kör delsträckan före i { $speed } i snitt
plan-way-other-rung = kör på steget { $rung }, som nås i tid
plan-way-more-air = { $times } gånger dagens kompressorflöde
plan-way-more-road = börja { $distance } tidigare
plan-loses = förlorar { $time }
plan-gains = sparar { $time }
plan-loses-nothing = kostar ingen tid
plan-wrong-road = fel tryck i { $distance }
plan-on-descent = { $what }, och fyller däck i en lång utförsbacke, där bromsarna behöver luften
plan-late = Om föraren börjar för sent: tid, och väg på fel tryck; och luften för varje byte
plan-late-by = Sen med { $distance }
plan-never = Aldrig
plan-run-ends = körningen slutar först
plan-lowest-supply-brief = Låg matning
plan-compressor-run = Kompressor
    i taget

plan-laden-change = Från tomma till lastade tryck
plan-way = Sätt
plan-time-lost = Förlorad tid
plan-ordered-at = Order vid
plan-empty-road-hard = Tom väg på
    lastade tryck
plan-choice = Val
plan-chosen = valt
plan-chosen-not-possible = valt, GÅR INTE
plan-laden-not-allowed-while-loading = inventeringen tillåter inga byten under lastning
plan-laden-road-too-short = sista sträckan före lastning är för kort
plan-laden-never-complete = luften når inte trycket
plan-laden-why = { $way }: går inte, { $why }.
plan-laden-rolling = under färd, före lastning
plan-laden-while-loading = under lastning
plan-laden-after-loading = stillastående, efter lastning

plan-cycle-waited = Väntan bara på tryck
plan-cycle-water = Vatten in, för lufttorkaren
plan-cycles-per-day = Omlopp per dag
plan-part = Del
plan-waited = Väntan
plan-fuel = Bränsle
plan-compressor-time = Kompressor
plan-phase-shift-start = skiftets början
plan-phase-empty = tom körning
plan-phase-loading = lastning
plan-phase-laden = lastad körning
plan-phase-unloading = lossning

plan-sources = Källor
plan-cautions-broken = Detta bryter en gräns. Kör inte efter planen förrän det är rättat:
plan-cautions-told = Att veta också:

# Hur en stege hittades.
plan-search = Varför den här stegen
plan-search-asked = Sökt: högst { $asked } steg begärdes, { $found } är kvar, av { $caps } hastighetstak från { $lowest } till { $highest }.
plan-search-required = Krävs av inventeringen: { $caps }.
plan-search-term = Ett omlopp tar
plan-search-amount = Mängd
plan-search-price = Pris
plan-search-time = körning och väntan
plan-search-hard-road = hårdare än marken vill, kPa km
plan-search-changes = byten
plan-search-compressor = arbetande kompressor
plan-search-in-all = i allt
plan-search-price-time = { $price } per timme
plan-search-price-hard-road = { $price } per kPa km
plan-search-price-changes = { $price } per byte
plan-search-price-compressor = { $price } per timme
plan-search-fewer-more = Ett steg färre: { $difference } { $currency } mer per omlopp.
plan-search-fewer-less = Ett steg färre: { $difference } { $currency } mindre per omlopp.
plan-search-fewer-same = Ett steg färre kostar lika mycket.
plan-search-no-fewer = Ett steg färre: ingen sådan stege täcker varje delsträcka.
plan-search-more-more = Ett steg fler: { $difference } { $currency } mer per omlopp.
plan-search-more-less = Ett steg fler: { $difference } { $currency } mindre per omlopp.
plan-search-more-same = Ett steg fler sparar inget.
plan-search-no-more = Ett steg fler: inget hastighetstak är kvar att prova.
plan-search-exact = Glapp 0: på vägen delad i delsträckor och med de tak som provats kostar inget annat val mindre.
plan-search-gap = Glapp { $gap } { $currency }: sökningen bröts i förtid, och ett annat val kunde kosta så mycket mindre.
plan-search-rounds = { $count ->
    [one] Den funna stegen planerades sedan i sin helhet, en gång.
   *[other] Den funna stegen planerades i sin helhet { $count } gånger, med vad ett byte verkligen kostade.
}

# Rutor i en textrad.
cells-every-rung = alla steg
cells-on = { $states } ({ $rungs })
