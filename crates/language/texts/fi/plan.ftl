# Suunnitelman sivu ylhäältä alas.
plan-title = Painesuunnitelma
plan-for-haul = Painesuunnitelma, kuljetus { $haul }
plan-combination = Yhdistelmä
plan-route = Reitti
plan-draft = Luonnos: ei annettu, ei kuljettajalle
plan-issued = Suunnitelma { $number }, annettu { $date }

plan-ladder = Porrastus
plan-rung = Porras
plan-rungs = Portaat
plan-speed-cap = Nopeuskatto
plan-hold-limit = Pitoraja
plan-hold-limit-both = { $time } tai { $distance }, kumpi ensin täyttyy; sitten pysähdy tai nosta paine
plan-no-hold-limit = ei rajaa
plan-channel = Ilmapiiri
plan-axle-group = Akseliryhmä
plan-load-state = Kuormatila
plan-laden = kuormattuna
plan-empty = tyhjänä
plan-chain-state = Ketjut
plan-chains-on = päällä
plan-chains-off = pois
plan-value-to-set = Aseta ohjaimeen
plan-cold-pressure = Kylmäpaine
plan-deflection = Painuma

plan-window = Painealue
plan-lowest = Pienin
plan-highest = Suurin
plan-minimum = Vähintään
plan-maximum = Enintään
plan-governed-by = Määrää
plan-next-closest = Seuraava
plan-source = Lähde
plan-approval = Hyväksyntä
plan-approval-maker = renkaan valmistaja hyväksynyt
plan-approval-standard = standardin mukainen
plan-approval-needed = hyväksyttävä
plan-approval-not-possible = ei mahdollinen
plan-approval-expired = hyväksyntä päättyi { $date }: taas luonnos
plan-no-window = Ei mahdollinen: pienin sallittu, { $lowest }, on yli suurimman sallitun, { $highest }

plan-stack = Mitä lisättiin
plan-stack-gauge = mittarin virhe
plan-stack-deadband = ohjaimen kuollut alue
plan-stack-duals = ero paripyörän sisällä
plan-stack-load-share = epätasainen kuorma
plan-stack-warmest = portaan lämpimin rengas
plan-stack-snap = ylös ohjaimen seuraavaan lukuun
plan-stack-total = lisätty yhteensä

plan-change-points = Vaihtokohdat
plan-change-count = { $count ->
    [one] { $count } vaihtokohta
   *[other] { $count } vaihtokohtaa
}
plan-start-raising = ALA NOSTAA
plan-start-lowering = ALA LASKEA
plan-stop-and-change = PYSÄHDY JA VAIHDA
plan-lead = Ennakko
plan-reach-by = Valmis kohdassa
plan-change-time = Muutoksen kesto
plan-change-time-slow = Kesto, joka kymmenes ajo on hitaampi
plan-cap-while-changing = Nopeuskatto muutoksen aikana
plan-from-rung = Mistä
plan-to-rung = Mihin

plan-cycle = Kierros
plan-cycle-time = Kierroksen kesto
plan-cycle-time-added = Painemuutosten lisäämä
plan-cycle-fuel = Kierroksen polttoaine
plan-compressor-loaded = Kompressori kuormalla
plan-lowest-supply = Pienin syöttöpaine
plan-before-first-move = Ennen ensimmäistä liikkeellelähtöä
plan-before-first-move-raise = Nosta ennen liikkeellelähtöä: { $pressure } kylmänä. Kylmimmän yön jälkeen rengas voi olla liian tyhjä
plan-shift-end = Vuoron lopuksi: nosta maantiepaineeseen ennen pysäköintiä

plan-effects = Mitä se muuttaa
plan-cost = Hinta
plan-what-decided = Mikä määräsi kunkin luvun
plan-cautions = Varoitukset
plan-problems = Ratkaisematta

plan-standing-read = luettu lähteestä
plan-standing-given = annettu tälle kalustolle
plan-standing-practice = yleinen käytäntö, ei lähdettä
plan-standing-memory = muistinvarainen: vertaa lähteeseen ennen käyttöä
plan-extrapolated = lähteen alueen ulkopuolella

# Sivu päätteellä: taulukoiden otsikot ja lyhyet rivit.
plan-route-forward = { $route }, { $length }; kuorma kulkee kasvavan paalutuksen suuntaan
plan-route-backward = { $route }, { $length }; kuorma kulkee vähenevän paalutuksen suuntaan
plan-cold-named-at = Lämpötilat
plan-temperatures = kylmäpaineet lämpötilassa { $reference }; suunniteltu välille { $coldest } – { $warmest }
plan-for-units = Yksiköt
plan-measured-delivery = kompressorin tuotto
plan-measured-conductance = ilmapiirin { $channel } johtokyky
plan-measured-tire-volume = ilmapiirin { $channel } renkaiden ilmatilavuus
plan-measured-counted = Otettu huomioon: yksikön { $unit } { $what } on { $share } % tyypin arvosta, mitattu { $date }.
plan-measured-not-counted = Ei otettu huomioon: yksikön { $unit } { $what } on { $share } % tyypin arvosta, mitattu { $date }. Sen vaihdot kestävät kauemmin kuin tässä; suunnittele se valinnalla --unit { $unit }.
plan-controller = Ohjain
plan-controller-unit = yksikkö { $unit }
plan-controller-other-unit = yksikkö { $unit }; asetettava arvo näytetään myös yksikössä { $unit }, ja se on voimassa
plan-breaks-limits = { $count ->
    [one] ÄLÄ AJA TÄTÄ SUUNNITELMAA TÄLLAISENA: se rikkoo yhden rajan.
   *[other] ÄLÄ AJA TÄTÄ SUUNNITELMAA TÄLLAISENA: se rikkoo { $count } rajaa.
}
plan-axle-groups = Akseliryhmät ja kuormat
plan-tire = Rengas
plan-tires = Renkaat
plan-single = yksittäin
plan-dual = parina
plan-fixed-pressure = kiinteä paine

plan-ladder-how = Aseta: mihin ohjain asetetaan, portaan lämpimimmälle renkaalle. Kylmänä: mitä siitä jää kylmään renkaaseen. Pienin ja suurin: painealue kylmänä.
plan-ladder-same = { $cells }: sama kuin { $chains }
plan-cap = Katto
plan-set = Aseta
plan-cold = Kylmänä
plan-channel-brief = Ilmapiiri
plan-approval-brief-maker = valmistaja
plan-approval-brief-standard = standardi
plan-cell-not-possible = { $cell } ei ole mahdollinen: { $why }.
plan-cell-hold = { $cell }: enintään { $distance } kerrallaan valmistajan rivin mukaan; sitten pysähdy tai nosta paine.
plan-rung-unused = Tämä kuljetus ei käytä: { $rungs }.

plan-more-cells = { $count ->
    [one] Yksi ruutu on näyttämättä: muu kuormatila tai ketjutila, portaita joita kuljetus ei käytä.
   *[other] { $count } ruutua on näyttämättä: muita kuormatiloja ja ketjutiloja, portaita joita kuljetus ei käytä.
}
plan-more-not-possible = { $count ->
    [one] Niistä yksi ei ole mahdollinen – { $cells }.
   *[other] Niistä { $count } ei ole mahdollisia – { $cells }.
}
plan-more-possible = Kaikki ovat mahdollisia.
plan-more-how = Lisää --full, niin näet kaiken ja kunkin luvun koko laskun.
plan-decided-by = määrää
plan-decided-lowest = pienin
plan-decided-next = seuraava
plan-decided-set = aseta
plan-decided-how = Pienin: raja, joka määräsi, kylmänä. Seuraava: se, joka muuten määräisi. Aseta: pienin ja mitä lisättiin.
plan-decided-allowance = +{ $share }

plan-ground = maapohja haluaisi enintään { $advice } (neuvo)
plan-stack-sealed-gauge = suljettu mittari tällä korkeudella
plan-stack-hand-set = asetettu käsin korkeammaksi
plan-stack-brief-gauge = mittari
plan-stack-brief-deadband = kuollut alue
plan-stack-brief-duals = paripyörä
plan-stack-brief-warmest = lämmin rengas ja luku
plan-stack-brief-sealed-gauge = suljettu mittari
plan-stack-brief-hand-set = käsin
plan-stack-sums-to = { $items }: aseta { $set } (lämpimin rengas { $warmest })
plan-deflection-then = painuma { $percent } profiilikorkeudesta
plan-other-tire = siellä, missä on rengas { $tire }
plan-worst-tire = { $load } huonoimmalla renkaalla
plan-covers = kattaa { $speed }
plan-load-allowance = kuormalisä { $share }
plan-pressure-added = rivi lisää { $pressure }
plan-deflection-at-most = enintään { $share } profiilikorkeudesta
plan-from-reading = lähtöarvo { $pressure }
plan-at-temperature = lämpötilassa { $temperature }
plan-least-gap = vähintään { $gap }
plan-standing-brief-read = luettu
plan-standing-brief-given = annettu
plan-standing-brief-memory = muistista

plan-fixed-groups = Ryhmät, joissa on kiinteä paine
plan-worst-tire-load = Huonoin rengas
plan-holds-cold = On, kylmänä
plan-needs-cold = Tarvitsee, kylmänä
plan-verdict = Tulos
plan-enough = riittää
plan-too-low = LIIAN MATALA
plan-morning-after = Seuraava aamu
plan-morning-how = Pysäköity alimmalle portaalle, yön jälkeen ({ $coldest }): mitä mittari näyttää ja mitä rengas ilman kuormaa siellä tarvitsee.
plan-parked-on = Pysäköity
plan-reads = Näyttää
plan-needs = Tarvitsee
plan-share = Osuus
plan-may-move = saa lähteä
plan-raise-first = NOSTA ENSIN

plan-change-points-how = Ajojärjestyksessä. Aloita kohdassa tai ennen sitä; uusi nopeuskatto on voimassa laskun alusta ja noston lopusta. { $times }
plan-times-nominal = Kestot ja ennakot ovat nimellisiä, ilman autojen ja ajojen hajontaa.
plan-times-sampled = Kesto: monen ajon keskimmäinen, suluissa mihin yhdeksän kymmenestä yltää; ennakot ovat yhdeksälle kymmenestä.
plan-times-partly-sampled = Kesto: monen ajon keskimmäinen, suluissa mihin yhdeksän kymmenestä yltää; ennakot ovat yhdeksälle kymmenestä. Kesto ilman sulkuja on nimellinen, ja sen ennakko samoin.
plan-time-sampled = Kesto
    (9/10)
plan-does-not-fit-p90 = Vaihtokohta { $number } riittää tavallisella ajolla; useampi kuin joka kymmenes ajo ei ole valmis siellä, missä sen pitää.
plan-no-change-points = Ei yhtään: yksi porras riittää koko reitille.
plan-done-by = Valmis
plan-run = Ajo: { $load_state }
plan-number = Nro
plan-at = Kohta
plan-place = Paikka
plan-call = Käsky
plan-from-to = Portaat
plan-time = Kesto
plan-at-landmark = kohdassa { $landmark }
plan-before-landmark = { $distance } ennen: { $landmark }
plan-beyond-landmark = { $distance } jälkeen: { $landmark }
plan-does-not-fit = Vaihtokohta { $number } ei riitä: muutos ei ole valmis siellä, missä sen pitää.
plan-refused-compressor-limit = Vaihtokohta { $number } valmistuisi ajoissa, mutta se hylätään: kompressori kävisi tauotta kauemmin kuin saa.
plan-refused-supply-before-descent = Vaihtokohta { $number } valmistuisi ajoissa, mutta se hylätään: säiliöt eivät olisi kytkentäpaineessa seuraavan pitkän alamäen päällä.
plan-chosen-way = Vaihtokohta { $number } tehdään näin: { $way }.
plan-other-ways = Vaihtokohta { $number }, muut tavat: { $ways }.
plan-before-descent = Vaihtokohta { $number } on tavallista aiemmin, koska ilmaa ei oteta pitkässä alamäessä eikä juuri ennen sitä.
plan-way-rolling = ajossa
plan-way-go-on-slowly = jatka alemmalla nopeuskatolla { $distance } paikan ohi
plan-way-lay-by = pysähdy: { $place }, { $km }, kunnes valmis
plan-way-slower = aja edeltävä osuus keskinopeudella { $speed }
plan-way-other-rung = aja portaalla { $rung }, joka ehditään saavuttaa
plan-way-more-air = { $times } kertaa nykyinen kompressorin tuotto
plan-way-more-road = aloita { $distance } aiemmin
plan-loses = menettää { $time }
plan-gains = säästää { $time }
plan-loses-nothing = ei vie aikaa
plan-wrong-road = väärä paine { $distance }
plan-on-descent = { $what }, ja täyttää renkaita pitkässä alamäessä, jossa jarrut tarvitsevat ilman
plan-late = Jos kuljettaja aloittaa myöhässä: aika ja matka väärällä paineella; ja kunkin muutoksen ilma
plan-late-by = Myöhässä { $distance }
plan-never = Ei koskaan
plan-run-ends = ajo loppuu ensin
plan-lowest-supply-brief = Pienin syöttö
plan-compressor-run = Kompressori
    kerrallaan

plan-laden-change = Tyhjän paineista kuormatun paineisiin
plan-way = Tapa
plan-time-lost = Aikahukka
plan-ordered-at = Käsky
plan-empty-road-hard = Tyhjänä
    kuormapaineilla
plan-choice = Valinta
plan-chosen = valittu
plan-chosen-not-possible = valittu, EI MAHDOLLINEN
plan-laden-not-allowed-while-loading = kartoitus ei salli muutoksia kuormattaessa
plan-laden-road-too-short = viimeinen väli ennen kuormausta on liian lyhyt
plan-laden-never-complete = ilma ei riitä paineeseen
plan-laden-why = { $way }: ei mahdollinen, { $why }.
plan-laden-rolling = ajossa, ennen kuormausta
plan-laden-while-loading = kuormattaessa
plan-laden-after-loading = seisten, kuormauksen jälkeen

plan-cycle-waited = Odotus vain paineen vuoksi
plan-cycle-water = Vettä kuivaimelle
plan-cycles-per-day = Kierroksia päivässä
plan-part = Osa
plan-waited = Odotus
plan-fuel = Polttoaine
plan-compressor-time = Kompressori
plan-phase-shift-start = vuoron alku
plan-phase-empty = ajo tyhjänä
plan-phase-loading = kuormaus
plan-phase-laden = ajo kuormattuna
plan-phase-unloading = purku

plan-sources = Lähteet
plan-cautions-broken = Nämä rikkovat rajan. Älä aja suunnitelmaa ennen kuin ne on korjattu:
plan-cautions-told = Lisäksi tiedoksi:

# Miten porrastus löytyi.
plan-search = Miksi tämä porrastus
plan-search-asked = Haku: pyydetty enintään { $asked } porrasta, jäljellä { $found }, nopeuskattoja { $caps } välillä { $lowest } – { $highest }.
plan-search-required = Kartoitus vaatii: { $caps }.
plan-search-term = Kierros vie
plan-search-amount = Määrä
plan-search-price = Hinta
plan-search-time = ajo ja odotus
plan-search-hard-road = kovempaa kuin maapohja haluaisi, kPa km
plan-search-changes = muutokset
plan-search-compressor = kompressori kuormalla
plan-search-in-all = yhteensä
plan-search-price-time = { $price } tunnilta
plan-search-price-hard-road = { $price } / kPa km
plan-search-price-changes = { $price } muutokselta
plan-search-price-compressor = { $price } tunnilta
plan-search-fewer-more = Yksi porras vähemmän: { $difference } { $currency } enemmän kierrokselta.
plan-search-fewer-less = Yksi porras vähemmän: { $difference } { $currency } vähemmän kierrokselta.
plan-search-fewer-same = Yksi porras vähemmän maksaa saman.
plan-search-no-fewer = Yksi porras vähemmän: mikään sellainen porrastus ei kata kaikkia osuuksia.
plan-search-more-more = Yksi porras enemmän: { $difference } { $currency } enemmän kierrokselta.
plan-search-more-less = Yksi porras enemmän: { $difference } { $currency } vähemmän kierrokselta.
plan-search-more-same = Yksi porras enemmän ei säästä mitään.
plan-search-no-more = Yksi porras enemmän: kokeiltavia nopeuskattoja ei ole jäljellä.
plan-search-exact = Ero 0: osuuksiin jaetulla tiellä ja kokeilluilla katoilla mikään muu valinta ei maksa vähemmän.
plan-search-gap = Ero { $gap } { $currency }: haku katkaistiin, ja muu valinta voisi maksaa sen verran vähemmän.
plan-search-rounds = { $count ->
    [one] Löydetty porrastus suunniteltiin sitten kokonaan, kerran.
   *[other] Löydetty porrastus suunniteltiin kokonaan { $count } kertaa, ja muutoksen todellinen hinta otettiin mukaan.
}

# Ruudut tekstirivillä.
cells-every-rung = kaikki portaat
cells-on = { $states } ({ $rungs })
