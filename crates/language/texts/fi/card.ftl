# Kuljettajan kortti. Lyhyt: se luetaan ohjaamossa.
card-up-to = enintään { $unit }
card-set = { $load_state }: ohjaimen asetus, { $unit }
card-set-both = { $load_state }: asetus, { $unit } (ohjain: { $controller })
card-road-mark = * Maantiepaine sen sijasta: portaan omaa painetta ei ole hyväksytty.
card-dash-mark = Viiva: älä aja tätä porrasta tällä kuormalla.
card-fixed = Kiinteä, käsin säädetty, kylmänä: { $groups }.
card-hold = { $rung }: enintään { $limit }
card-hold-one = { $limit }; sitten pysähdy tai nosta paine
card-chains = { $chains }, { $load_state }: { $cells }.
card-elsewhere = Muu reitti, tuntematon perävaunu tai tuntematon kuorma: maantiepaine.
card-elsewhere-road = Porras { $rung }, kuormattuna: { $figures } { $unit }. Jos sitä ei saavuteta: älä ylitä mittarin sallimaa nopeutta.
card-elsewhere-stand = Tämän suunnitelman maantiepainetta ei ole hyväksytty jokaiselle paineilmapiirille: pysy paikalla ja soita.

card-strip = Reitti
card-strip-described = Reitti { $route } nauhana: pinnat, maamerkit ja { $changes ->
    [one] { $changes } vaihtokohta numerollaan
   *[other] { $changes } vaihtokohtaa numeroillaan
}; kuormattu ajo ylhäällä, tyhjä ajo alhaalla. Täysi kolmio ylös: nosta. Avoin kolmio alas: laske.
card-number = Nro
card-not-driven = Tätä kuljetusta ei voi ajaa kartoitetulla tavalla; vaihtokohtia ei tunneta.
card-not-complete = EI VALMIS AJOISSA: pidä alempi nopeuskatto, kunnes jokainen paineilmapiiri on valmis.
card-before-first-move = Ennen liikkeellelähtöä nosta paine: { $channels }.
card-laden-after-loading = Kuormattuna: valitse { $state }, odota kunnes jokainen paineilmapiiri on valmis ({ $time }), lähde sitten.
card-laden-while-loading = Kuormauksen aikana: valitse { $state } ({ $time }). Älä lähde ennen kuin jokainen paineilmapiiri on valmis.
card-laden-rolling = Ennen kuormausta, kohdassa { $at }: valitse { $state } ({ $time }). Älä lähde kuormattuna ennen kuin jokainen paineilmapiiri on valmis.
card-laden-not-possible = { $state }: ei tunneta keinoa päästä kuormatun auton paineisiin. Älä kuormaa; soita.
card-unloaded = Purettu: valitse { $state } ennen lähtöä.

card-gauge = Mitä mittari sallii
card-gauge-how = Jokaisen mittarin on näytettävä vähintään rivin luku; hitain rengas määrää nopeuden. Viiva, tai vähemmän kuin viimeinen rivi: älä aja. Enemmän kuin ensimmäinen rivi: älä aja, laske ensin painetta. Lämpimänä tai kylmänä.
card-gauge-none = Mikään lukema ei salli ajoa hyväksytyillä paineilla. Älä aja; soita.
card-drive-up-to = Aja enintään, { $unit }
card-not-above = ei yli

card-event = Jos
card-do = tee näin
card-event-brake-air = Jarruilma on vähissä
card-do-brake-air = Lopeta renkaiden täyttö heti. Hidasta, pysähdy turvalliseen paikkaan, kytke seisontajarru. Älä lähde ennen kuin syy on löytynyt.
card-event-not-rising = Paineilmapiiri ei seuraa
card-do-not-rising = Älä ylitä sen mittarin sallimaa nopeutta. Pysähdy seuraavaan turvalliseen paikkaan ja soita.
card-event-late = Aloitit myöhässä
card-do-late = Pidä alempi nopeuskatto, kunnes jokainen paineilmapiiri on valmis. Älä koskaan aja paineen edelle.
card-event-too-fast = Ajat yli nopeuskaton
card-do-too-fast = Hidasta rauhallisesti kattoon; aja sitten hitaasti tai nosta paine. Pitkän ylityksen jälkeen: pysähdy, anna renkaiden jäähtyä, ilmoita.
card-event-display = Näyttö on pimeä tai epäilyttävä
card-do-display = Painetta ei tiedetä. Mittaa jokainen rengas käsin; siihen asti kävelyvauhtia pois tieltä.
card-event-stuck = Olet jumissa
card-do-stuck = Noudata painettua ohjetta tai odota apua. Puhelimessa ei keksitä lukuja.
card-event-shift-end = Vuoro päättyy
card-supply-touches-brakes = Ilma käy vähiin tällä kuljetuksella: jarruilla on etusija. Jos täyttö pysähtyy itsestään, pidä alempi nopeuskatto.
card-change-told = Nro { $number }: { $told }
