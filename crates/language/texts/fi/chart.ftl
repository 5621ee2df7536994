# Kuvat ajosta reitin varrella.
chart-strip-title = Ajo reitin varrella
chart-strip-haul = Kuljetus { $haul }, reitti { $route }
chart-strip-description = Kaksi puolikasta rinnakkain, kumpikin paalutuksen mukaan: vasemmalla ajo tyhjänä, oikealla ajo kuormattuna. Ylhäältä alas: korkeus ja pinta, nopeus, rengaspaine, syöttöpaine. { $changes ->
    [one] { $changes } vaihtokohta on merkitty.
   *[other] { $changes } vaihtokohtaa on merkitty.
}
chart-empty-run = Ajo tyhjänä
chart-laden-run = Ajo kuormattuna
chart-load-state = tila { $name }
chart-travel-up = kasvavan paalutuksen suuntaan
chart-travel-down = vähenevän paalutuksen suuntaan
chart-no-run = Tästä ajosta ei ole yhtään näytettä liikkeessä

chart-elevation = Korkeus
chart-elevation-and-surface = Korkeus ja pinta
chart-no-elevation = Korkeutta ei annettu
chart-speed = Nopeus
chart-tire-pressure = Rengaspaine
chart-supply-pressure = Syöttöpaine
chart-own-scale = kummallakin ajolla on oma asteikko
chart-chainage = Paalutus
chart-in-unit = { $what }, { $unit }
chart-names-hidden = { $count ->
    [one] { $count } nimi jätetty pois tilan puutteen vuoksi
   *[other] { $count } nimeä jätetty pois tilan puutteen vuoksi
}

chart-surface-paved = asfaltti
chart-surface-sealed = pintaus
chart-surface-gravel = sora
chart-surface-earth = maa
chart-surface-soft-ground = pehmeä maa
chart-surface-sand = hiekka
chart-surface-snow-or-ice = lumi tai jää

chart-label-speed = nopeus
chart-label-cap = nopeuskatto
chart-label-limit = rajoitus
chart-label-supply = syöttö

chart-flag-place = alkaa { $from }, valmis { $to }
chart-flag-place-open = alkaa { $from }
chart-flag-list = Vaihtokohdat

chart-standing = Seisoo
chart-standing-loading = { $time } min kuormausta
chart-standing-waiting-change = { $time } min rengaspaineiden odotusta ennen lähtöä
chart-standing-before-off = { $time } min ennen lähtöä
chart-standing-unloading = { $time } min purkua
chart-standing-on-the-way = { $time } min kohdassa { $place }
chart-standing-more = { $count } muuta, { $time } min yhteensä
chart-standing-none = ei minuutin tai pidempää seisomista

chart-legend-speed = ajettu nopeus
chart-legend-cap = vallitsevien paineiden nopeuskatto
chart-legend-limit = osuuden nopeusrajoitus
chart-legend-tire = rengaspaine mittarin lukemana, oma viivatyyppi joka ilmapiirille
chart-legend-minimum = ohut, sama tyyppi: pienin sallittu kylmänä käsketyllä portaalla
chart-legend-supply = syöttöpaine
chart-legend-compressor = kompressori tuottaa
chart-legend-change = vaihtokohdasta sinne, missä muutoksen pitää olla valmis
chart-legend-changing = palkki: muutos on käynnissä
chart-legend-landmark = maamerkki
chart-legend-lay-by = levähdyspaikka

# Kuvat siitä, mitä suunnitelma muuttaa.
chart-effects-title = Mitä suunnitelma muuttaa
chart-effects-description = Ylhäällä palkit: kosketuspinta, tien kuluma tai ura ja vierintävastus verrattuna täyteen paineeseen, joka osuudelle, ajolle ja ajotavalle, haarukoineen. Alhaalla pystyjännitys maassa syvyyden mukaan kuormatun auton alla.
chart-effects-band = Palkit kulkevat täydestä paineesta (1) odotettuun suhteeseen; viivat matalasta korkeaan.
chart-effects-patch = Kosketuspinta, suhde
chart-effects-road = Tien ura tai kuluma, suhde
chart-effects-rolling = Vierintävastus, suhde
chart-effects-unknown = ei annettu: katso Täydennettävä
chart-effects-depth = Jännitys maassa kuormatun auton alla: { $leg }
chart-effects-depth-note = Viivat ovat odotettu jännitys, varjo suunnitelman haarukka kovasta pehmeään maahan. Syvyydestä 0,3 m alas mittaukset eivät juuri löytäneet paineen vaikutusta; siellä kuorma ratkaisee.
chart-effects-stress = jännitys
chart-effects-below = syvyys
