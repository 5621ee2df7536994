# Vad som avgör det lägsta och det högsta trycket i ett spann.
limit-load-table = last- och trycktabell
limit-load-power-law = last mot märkpunkt (potenslag)
limit-low-speed-allowance = tabellens tillägg för låg hastighet
limit-maker-row = rad godkänd av däcktillverkaren
limit-lowest-row = lägst publicerat: tabeller och praxis går inte lägre vid detta tak
limit-deflection = nedfjädring för hastighetstaket
limit-bead = vulst och fälg
limit-wheel-valve = självstängande hjulventil, när det är kallast
limit-flat-rule = allmän väg: under halva det märkta högsta trycket räknas däcket som platt
limit-roadside-hot = allmän väg: vägkontroll av ett varmt däck
limit-permit-minimum = tillstånd, lägsta
limit-permit-maximum = tillstånd, högsta
limit-dual-gap = avstånd mellan tvillingdäck
limit-mate-diameter = tvillingens diameter
limit-chains = kedjor: landsvägstryck
limit-chains-shared = kedjor på en annan grupp i samma luftkrets
limit-turning-scrub = skrubbning i sväng
limit-tire-heat = däckets värme
limit-tire-maximum = märkt högsta tryck på däcket
limit-rim-maximum = fälg
limit-supply = matningstryck att räkna med
limit-ground = mark (råd)
limit-fixed = fast: gruppen har ingen luftkrets
limit-hand-set = satt för hand i inventeringen
limit-other-group = en annan axelgrupp i samma luftkrets
limit-service-rule = 80 % av det tryck som behövs
limit-heavier-state = okänt lastläge: närmast tyngre används
limit-unknown-trailer = okänt släp: landsvägstryck
limit-restricted-speed = tabell för begränsad hastighet

# Detsamma i en kolumn.
limit-brief-load-table = lasttabell
limit-brief-restricted-speed = hastighetstabell
limit-brief-maker-row = tillverkarens rad
limit-brief-deflection = nedfjädring
limit-brief-bead = vulst
limit-brief-lowest-row = lägst publicerat
limit-brief-wheel-valve = hjulventil
limit-brief-flat-rule = halva högsta
limit-brief-roadside-hot = vägkontroll varm
limit-brief-dual-gap = avstånd tvilling
limit-brief-chains = kedjor
limit-brief-turning-scrub = skrubbning
limit-brief-tire-heat = däckvärme
limit-brief-tire-maximum = märkt högsta
limit-brief-rim-maximum = fälg
limit-brief-supply = matning
limit-brief-permit-minimum = tillstånd
limit-brief-permit-maximum = tillstånd
limit-brief-ground = mark (råd)

# Varför en ruta inte går.
why-overloaded = det sämsta däcket bär { $load }, mer än de { $highest } det får bära vid { $cap }
why-too-fast = hastighetstaket { $cap } är över { $rated } i däckets hastighetssymbol
why-too-hot = luften i däcket går över { $highest } vid varje tryck
why-duals-touch = tvillingdäcken tar i varandra vid varje tryck med avståndet { $spacing }
why-no-deflection = inget tryck håller nedfjädringen under { $share }
why-empty-supply = det måste sättas till { $lowest }, och matningen når { $highest }
why-empty-rim = det måste sättas till { $lowest }, och fälgen tål { $highest }
why-empty-tire = det måste sättas till { $lowest }, och det märkta högsta är { $highest }
why-empty-permit = det måste sättas till { $lowest }, och tillståndet medger { $highest }
why-not-rated = däcket har ingen märklast för denna montering

# Detsamma i en kolumn.
why-brief-overloaded = ÖVERLAST
why-brief-too-fast = för fort
why-brief-too-hot = för varmt
why-brief-duals-touch = tvilling tar i
why-brief-no-deflection = nedfjädring
why-brief-not-rated = ingen märklast
why-brief-empty-supply = över matning
why-brief-empty-rim = över fälgens högsta
why-brief-empty-tire = över märkt högsta
why-brief-empty-permit = över tillstånd
