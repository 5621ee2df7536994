# Lastbilarnas loggar.
logs-file = { $file }: { $format }, { $frames } ramar på { $span }
logs-buses = bussar: { $names }
logs-clean = varje post lästes
logs-since-last-hint = Tiden går bakåt på så många rader att stämplarna kanske räknas från raden före: prova --timing since-last.
logs-loss-malformed = inte i formatets form: { $count }
logs-loss-truncated = avklippta: { $count }
logs-loss-corrupt = går inte att packa upp eller motsäger sig: { $count }
logs-loss-unsupported = av ett slag som inte läses: { $count }
logs-loss-error_frame = bussens felramar: { $count }
logs-loss-remote = fjärrbegäran, utan data: { $count }
logs-loss-flexible_rate = CAN FD-ramar, inte lästa: { $count }
logs-loss-duplicate = samma ram igen: { $count }
logs-loss-broken_message = meddelanden i paket som aldrig blev hela: { $count }
logs-loss-short_group = grupper för korta för en signal: { $count }
logs-loss-too_many_senders = ramar med fler identifierare än som hålls isär: { $count }
logs-loss-too_many_codes = fler felkoder än som hålls isär: { $count }
logs-line = rad { $line }
logs-byte = byte { $byte }
logs-more-bad = och fler
logs-groups = Grupper
logs-col-pgn = grupp
logs-col-name = namn
logs-col-from = från
logs-col-count = antal
logs-col-bytes = byte
logs-col-signal = signal
logs-col-spn = SPN
logs-col-low = lägst
logs-col-high = högst
logs-col-unit = enhet
logs-col-values = värden
logs-col-absent = saknas
logs-signals = Signaler med värden
logs-no-signals = Ingen känd signal har ett värde.
logs-codes = Aktiva felkoder
logs-code = SPN { $spn }, feltyp { $failure }, från { $source }
logs-code-counted = SPN { $spn }, feltyp { $failure }, { $count } gånger, från { $source }
logs-identification = Fordonets identitet
logs-stripped = Ett fordonsidentitetsnummer fanns i loggen; det visas inte. --keep-identification visar det.
logs-reading = läser { $file }
logs-without-part = denna airtide byggdes utan läsning av loggar; den fulla versionen har den: cargo build --release -p cli --features logs
logs-written = { $rows } rader med ursprungliga värden och sekunderna i { $files } filer: { $folder }
logs-off-grid = tal som inte fick någon sekund, för att klockan gick bakåt eller platserna var för många: { $count }
logs-left-out = { $file }: utelämnat { $what }
logs-bad = { $count ->
    [one] en dålig post
   *[other] { $count } dåliga poster
}
logs-clock-back = { $count ->
    [one] tiden går bakåt en gång
   *[other] tiden går bakåt { $count } gånger
}
logs-gaps = { $count ->
    [one] en lucka på mer än 5 s
   *[other] { $count } luckor på mer än 5 s
}
logs-on-route = På rutten { $route }: { $positions } sekunder med position, { $off } av dem vid sidan av rutten
logs-wheels = väg enligt hjulhastighet över väg längs rutten: { $ratio } ({ $low } till { $high } i fyra av fem), på { $stretches } sträckor om en halv kilometer
logs-wheels-wrong = Hjulhastigheten stämmer inte med rutten: skalan är fel, eller andra däck sitter på än bilen är inställd för. Hastigheter och sträckor i dessa loggar är fel lika mycket.
logs-wheels-unknown = för få sträckor med både position och hjulhastighet för att bedöma hjulhastigheten
