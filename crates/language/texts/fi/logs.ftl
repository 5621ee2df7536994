# Autojen lokit.
logs-file = { $file }: { $format }, kehyksiä { $frames }, kesto { $span }
logs-buses = väylät: { $names }
logs-clean = jokainen tietue luettiin
logs-since-last-hint = Aika palaa taaksepäin niin monella rivillä, että leimat ehkä lasketaan edellisestä rivistä: kokeile --timing since-last.
logs-loss-malformed = ei muodon mukaisia: { $count }
logs-loss-truncated = katkenneita: { $count }
logs-loss-corrupt = ei purkaudu tai on ristiriitainen: { $count }
logs-loss-unsupported = lajia, jota ei lueta: { $count }
logs-loss-error_frame = väylän virhekehyksiä: { $count }
logs-loss-remote = etäpyyntökehyksiä ilman dataa: { $count }
logs-loss-flexible_rate = CAN FD -kehyksiä, ei luettu: { $count }
logs-loss-duplicate = sama kehys uudelleen: { $count }
logs-loss-broken_message = pakettiviestejä, jotka eivät tulleet kokonaisiksi: { $count }
logs-loss-short_group = ryhmiä, jotka ovat liian lyhyitä signaalille: { $count }
logs-loss-too_many_senders = kehyksiä, joiden tunnisteita ei enää eroteltu: { $count }
logs-loss-too_many_codes = vikakoodeja, joita ei enää eroteltu: { $count }
logs-line = rivi { $line }
logs-byte = tavu { $byte }
logs-more-bad = ja lisää
logs-groups = Ryhmät
logs-col-pgn = ryhmä
logs-col-name = nimi
logs-col-from = lähde
logs-col-count = määrä
logs-col-bytes = tavuja
logs-col-signal = signaali
logs-col-spn = SPN
logs-col-low = alin
logs-col-high = ylin
logs-col-unit = yksikkö
logs-col-values = arvoja
logs-col-absent = puuttuu
logs-signals = Signaalit, joilla on arvo
logs-no-signals = Millään tunnetulla signaalilla ei ole arvoa.
logs-codes = Aktiiviset vikakoodit
logs-code = SPN { $spn }, vikatapa { $failure }, lähde { $source }
logs-code-counted = SPN { $spn }, vikatapa { $failure }, { $count } kertaa, lähde { $source }
logs-identification = Ajoneuvon tunnistus
logs-stripped = Lokissa oli ajoneuvon valmistenumero; sitä ei näytetä. --keep-identification näyttää sen.
logs-reading = luetaan { $file }
logs-without-part = tämä airtide on koottu ilman lokien lukua; täydessä versiossa se on: cargo build --release -p cli --features logs
logs-written = alkuperäisiä näyterivejä { $rows } ja sekunnit, tiedostoja { $files }: { $folder }
logs-off-grid = lukuja, joille ei löytynyt sekuntia, koska kello palasi taaksepäin tai paikkoja oli liikaa: { $count }
logs-left-out = { $file }: jätetty pois { $what }
logs-bad = { $count ->
    [one] yksi virheellinen tietue
   *[other] { $count } virheellistä tietuetta
}
logs-clock-back = { $count ->
    [one] aika palaa taaksepäin kerran
   *[other] aika palaa taaksepäin { $count } kertaa
}
logs-gaps = { $count ->
    [one] yksi yli 5 s aukko
   *[other] { $count } yli 5 s aukkoa
}
logs-on-route = Reitillä { $route }: { $positions } sekuntia sijainnilla, niistä { $off } reitin ulkopuolella
logs-wheels = pyöränopeuden mukainen matka reitin matkaan: { $ratio } ({ $low }–{ $high } neljässä viidestä), { $stretches } puolen kilometrin pätkällä
logs-wheels-wrong = Pyöränopeus ei sovi reittiin: sen mittakaava on väärä, tai alla on muut renkaat kuin autoon on asetettu. Näiden lokien nopeudet ja matkat ovat yhtä paljon väärin.
logs-wheels-unknown = liian vähän pätkiä, joilla on sekä sijainti että pyöränopeus, pyöränopeuden arvioimiseen
