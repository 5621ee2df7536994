# Diagram över en körning längs sträckningen.
chart-strip-title = Körning längs sträckningen
chart-strip-haul = Transport { $haul }, sträckning { $route }
chart-strip-description = Två halvor sida vid sida, var och en längs längdmätningen: till vänster den tomma körningen, till höger den lastade. Uppifrån och ner: höjd och yta, hastighet, däcktryck, matningstryck. { $changes ->
    [one] { $changes } bytespunkt är märkt.
   *[other] { $changes } bytespunkter är märkta.
}
chart-empty-run = Tom körning
chart-laden-run = Lastad körning
chart-load-state = läge { $name }
chart-travel-up = mot stigande längdmätning
chart-travel-down = mot fallande längdmätning
chart-no-run = Inget prov från den här körningen i rörelse

chart-elevation = Höjd
chart-elevation-and-surface = Höjd och yta
chart-no-elevation = Ingen höjd given
chart-speed = Hastighet
chart-tire-pressure = Däcktryck
chart-supply-pressure = Matningstryck
chart-own-scale = varje körning har sin egen skala
chart-chainage = Längdmätning
chart-in-unit = { $what }, { $unit }
chart-names-hidden = { $count ->
    [one] { $count } namn visas inte av platsbrist
   *[other] { $count } namn visas inte av platsbrist
}

chart-surface-paved = asfalt
chart-surface-sealed = ytbehandlad
chart-surface-gravel = grus
chart-surface-earth = jord
chart-surface-soft-ground = mjuk mark
chart-surface-sand = sand
chart-surface-snow-or-ice = snö eller is

chart-label-speed = hastighet
chart-label-cap = tak
chart-label-limit = gräns
chart-label-supply = matning

chart-flag-place = från { $from }, klart vid { $to }
chart-flag-place-open = från { $from }
chart-flag-list = Bytespunkter

chart-standing = Stillastående
chart-standing-loading = { $time } min lastning
chart-standing-waiting-change = { $time } min väntan på däcktryck före avfärd
chart-standing-before-off = { $time } min före avfärd
chart-standing-unloading = { $time } min lossning
chart-standing-on-the-way = { $time } min vid { $place }
chart-standing-more = { $count } till, { $time } min i allt
chart-standing-none = inget stillastående på en minut eller mer

chart-legend-speed = körd hastighet
chart-legend-cap = hastighetstak för trycken som hålls
chart-legend-limit = delsträckans hastighetsgräns
chart-legend-tire = däcktryck som en mätare visar, en linjetyp per luftkrets
chart-legend-minimum = tunn, samma typ: lägst tillåtet, kallt, på det beordrade steget
chart-legend-supply = matningstryck
chart-legend-compressor = kompressorn ger luft
chart-legend-change = från bytespunkten till där bytet måste vara klart
chart-legend-changing = stapel: ett byte pågår
chart-legend-landmark = landmärke
chart-legend-lay-by = vägficka

# Diagram över vad en plan ändrar.
chart-effects-title = Vad planen ändrar
chart-effects-description = Överst staplar för kontaktyta, vägens slitage eller spår, och rullmotstånd jämfört med fullt tryck, för varje delsträcka, körning och körsätt, med sina band. Nederst lodrät spänning i marken över djupet under den lastade bilen.
chart-effects-band = Staplar går från fullt tryck (1) till väntad kvot; streck från lågt till högt.
chart-effects-patch = Kontaktyta, kvot
chart-effects-road = Vägens spår eller slitage, kvot
chart-effects-rolling = Rullmotstånd, kvot
chart-effects-unknown = ej angivet: se Att fylla i
chart-effects-depth = Spänning i marken under den lastade bilen: { $leg }
chart-effects-depth-note = Linjer är väntad spänning, skuggan planens band från fast till mjuk mark. Från 0,3 m och neråt fann mätningar nästan ingen verkan av trycket; där styr lasten.
chart-effects-stress = spänning
chart-effects-below = djup
