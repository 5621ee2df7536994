# Soitto tieltä.
now-go = AJA, ENINTÄÄN { $speed }
now-go-slow = ENINTÄÄN { $speed }, JA VAIN KORJAUSPAIKKAAN ASTI
now-walk = KÄVELYVAUHTIA POIS TIELTÄ. MITTAA SITTEN PAINE.
now-stop = PYSÄHDY

now-how-far = Kuinka pitkälle
now-far-nowhere = ei lainkaan ennen korjausta
now-far-off-the-road = pois tieltä lähimpään turvalliseen paikkaan, ei pidemmälle
now-far-hold = { $limit }; sitten pysähdy tai nosta paine
now-far-next-stop = seuraavaan pysähdykseen; mittaa siellä uudelleen
now-truck = Auto
now-truck-unit = yksikkö { $unit }, { $combination }, kuljetus { $haul }
now-truck-combination = { $combination }, kuljetus { $haul }
now-holds-rung = Porras nyt
now-why = Miksi
now-next = Tarkasta seuraavaksi
now-safety = Aina
now-groups = Akseliryhmittäin
now-read = Mittari
now-air = Renkaan ilma
now-at-most = Enintään
now-kept = ei mitattu
now-not-gauged = EI MITATTU
now-set-for = Mitä oli asetettu, ja mitä tämä kuorma tarvitsee
now-was-set = Asetettu
now-needed = Tarvitaan

# Miksi.
now-reason-not-gauged = { $axle_group }: kukaan ei mitannut. Tuntematon ei kelpaa hyväksi.
now-reason-kept-as-surveyed = { $axle_group }: ei mitattu; otettu kartoituksen arvo { $kept } kylmänä.
now-reason-under-service-share = { $axle_group }: { $cold } kylmänä on { $share } siitä, mitä kuorma tarvitsee kävelyvauhdissa ({ $needed }). Kun osuus on 80 % tai alle, älä täytä.
now-reason-too-soft = { $axle_group }: { $cold } kylmänä on tällä kuormalla liian pehmeä joka nopeuteen; vähintään { $needed } kylmänä.
now-reason-too-soft-approved = { $axle_group }: { $cold } kylmänä on alle { $needed }, vähimmän, jonka takana renkaan valmistaja tai standardi on tällä kuormalla.
now-reason-nothing-approved = { $axle_group }: kun paine on { $cold } kylmänä, kukaan ei ole minkään nopeuden takana tällä kuormalla.
now-reason-cannot-be-reached = { $axle_group }: { $reading } ei ylitä painetta { $closes }, jossa pyöräventtiilit sulkeutuvat. Täyttö ohjaamosta ei yllä sinne.
now-reason-above-highest = { $axle_group }: { $cold } kylmänä ylittää suurimman, { $highest } ({ $governed_by }). Laske painetta ennen jatkamista.
now-reason-mates-differ = { $axle_group }: parirenkaiden ero on { $difference }; enintään 5 psi (34 kPa). Pehmeämpi ratkaisee.
now-reason-overloaded = { $axle_group }: kantaa { $load }, enemmän kuin kestää, { $highest }. Mikään paine ei sitä korjaa.
now-reason-impossible = { $axle_group }: mikään paine ei kelpaa: { $why }.
now-reason-sets-the-speed = { $axle_group } määrää nopeuden. Seuraavana sen yläpuolella: { $governed_by }.
now-reason-load-unknown = Kukaan ei tiedä kuormaa: sen on kestettävä joka kuormatila, raskain on { $load_state }.
now-reason-warmth-unknown = Kukaan ei sanonut, olivatko renkaat kylmät: ne lasketaan lämpimiksi, siis lukemaa pehmeämmiksi.
now-reason-ran-last-hour = Autolla ajettiin viimeisen tunnin aikana: mikään rengas ei ole kylmä, sanottiinpa mitä tahansa.
now-reason-trailer-unknown = Kukaan ei tunne perävaunua: se tarvitsee maantiepaineen joka nopeudella.
now-reason-trailer-left-low = Perävaunu jäi matalalle paineelle: nosta paine ja vertaa suunnitelmaan ennen kuin se liikkuu.
now-reason-trailer-left-shut = Perävaunun akselinpäät jäivät kiinni: avaa ne ja vertaa suunnitelmaan ennen kuin se liikkuu.
now-reason-trailer-other-tires = Perävaunussa on toiset renkaat; ne arvioitiin.
now-reason-other-load-state-selected = Ohjaimessa ovat yhä tilan { $load_state } paineet.
now-reason-held-shortly = Porrasta { $rung } pidetään vain lyhyen aikaa.
now-reason-unit-slip = { $axle_group }: { $reading } näyttää luvulta, jonka yksikkö on { $meant }, mutta annettiin { $typed }. Se otettiin annettuna.
now-reason-unapproved-counted = ASIANTUNTIJALLE, EI KULJETTAJALLE: mukana on paineita, joita kukaan ei ole hyväksynyt.

# Mitä tarkastaa tai tehdä seuraavaksi.
now-check-gauge = { $axle_group }: mittaa jokainen rengas käsin, sisemmätkin.
now-check-raise = { $channel }: nosta paine auton seistessä, { $set } (porras { $rung }), odota valmistumista ja mittaa uudelleen.
now-check-lower = { $axle_group }: anna renkaiden jäähtyä ja laske paine sitten, enintään { $highest } kylmänä.
now-check-leave-to-trained-people = { $axle_group }: älä täytä. Koulutetut laskevat ilman pois, irrottavat pyörän ja katsovat sisään.
now-check-deflate-before-service = { $axle_group }: näin saa ajaa, mutta renkaan valmistaja pitää suositeltuna painetta { $recommended }. Ennen pyörän irrotusta koulutetut tyhjentävät renkaan kokonaan ja tarkastavat sen.
now-check-find-why-softer = { $axle_group }: selvitä, miksi yksi rengas on pehmeämpi: vuoto, suljettu akselinpää tai tukkeutunut putki.
now-check-wheel-ends-shut = { $axle_group }: käsin suljettuja akselinpäitä { $count }, ne eivät seuraa; mittaa ne renkaat yksitellen.
now-check-raise-before-parking = { $axle_group }: nosta paine ennen pysäköintiä; kylmimpänä yönä pyöräventtiilit sulkeutuisivat.
now-check-ask-maker = { $channel }: tälle kuormalle ei voi asettaa painetta, jonka takana joku on. Kysy renkaan valmistajalta ennen kuin ajat näin.
now-check-find-out-load = Selvitä kuorma tai punnitse.
now-check-take-load-off = { $axle_group }: vähennä kuormaa.
now-check-read-sidewalls = Perävaunu: lue koko, kantavuusluokka ja merkitty enimmäispaine joka renkaan kyljestä ja vertaa.
now-check-open-wheel-ends = Perävaunu: avaa kaikki akselinpäät.
now-check-select-load-state = Valitse { $load_state }, odota että jokainen paineilmapiiri on valmis, ja mittaa.
now-check-read-unit-again = { $axle_group }: lue mittari uudelleen, yksikkö mukaan.
now-check-ask-again = Kysy sitten uudelleen mittarin lukemalla.

# Sama taulukkona korttiin.
now-table-title = Suurin nopeus mittarin mukaan, kuljetus { $haul }
now-table-cold = Kylmille renkaille: seissyt kolme tuntia tai siirretty enintään maili (1,6 km).
now-table-warm = Lämpimille renkaille.
now-table-not-known = Renkaille, joista kukaan ei tiedä, ovatko ne kylmät: ne lasketaan lämpimiksi.
now-table-how = Hitain paineilmapiiri ratkaisee. –: älä aja; liian pehmeä sarakkeen ensimmäisen nopeuden yläpuolella, liian kova viimeisen alapuolella. Lukema kahden rivin välissä: ota pehmeämpi, ja viiva on viiva.
