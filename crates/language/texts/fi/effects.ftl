# Suunnitelman vaikutus maahan, tiehen, vetoon, lämpöön, polttoaineeseen ja kyytiin.
effects-how = Verrattuna täyteen paineeseen koko matkalla: nopeimman portaan paineet kuormattuna, myös tyhjänä. Luvut ovat matala – keski – korkea; suhde 1 on ei muutosta. Urat ja kuluminen ovat samoista ylityksistä.
effects-way = Ajotapa
effects-way-plan = tämä suunnitelma
effects-way-full-pressure = täysi paine
effects-way-constant-reduced = yksi alennettu paine
effects-way-less-load = viidennes vähemmän kuormaa
effects-cycle = Kierros
effects-gravel-rut = Soran ura
    ×
effects-asphalt-wear = Asfaltin kuluma
    ×
effects-trips = Ajoja samaan
    kuormaan
effects-not-assessed = Osuudet
    vajaat
effects-unknown = ?
effects-heat-load = Renkaiden lämpökuorma kierroksella lämpimimpänä päivänä, t km/h, korjattu pituuden ja lämmön mukaan: { $groups }. Vertaa sitä valmistajan luokitukseen kullekin renkaalle.
effects-heat-load-too-long = Renkaiden lämpökuorma (t km/h): kierros on pidempi kuin { $length }, johon pituuskorjaus päättyy; kysy renkaan valmistajalta.

effects-leg = Osuus
effects-run = Ajo
effects-leg-title = { $leg }, { $run }, { $from } – { $to }
effects-patch = Pinta
    ×
effects-road = Mitä tie
    tuntee
effects-rolling = Vierintä
    ×
effects-climb = Nousu, %
effects-descent = Lasku, %
effects-road-rut = ura { $ratio }
effects-road-wear = kuluma { $ratio }
effects-road-stress = jännitys { $ratio }
effects-go = kulkee
effects-doubtful = epävarma
effects-no-go = EI KULJE
effects-grade = { $word }: { $possible } / { $needed }
effects-legs-how = Kosketuspinta, ura, kuluma ja vierintävastus verrattuna täyteen paineeseen, akselien keskiarvo. Nousu ja lasku: jyrkin, joka onnistuu / jyrkin, joka on; laskussa jää kymmenesosa painovoimasta hidastamiseen. Kysymysmerkki: jotain pitää ensin antaa, katso alta.
effects-legs-more = Lisää --full, niin näet kaikki ajotavat ja akseliryhmät.
effects-spread = { $leg }, { $run }: kymmenestä tapauksesta yksi nousee alle { $p10 } %, viisi alle { $p50 } %, yhdeksän alle { $p90 } %; osuudella on { $needed } %. { $first }
effects-spread-by = Eniten epävarmuutta tuo { $input } ({ $share } varianssista): selvitä se ensin.
effects-spread-nothing = Mikään yksittäinen lähtötieto ei ratkaise sitä.
effects-uncertain-strength = maan lujuus
effects-uncertain-moisture = maan kosteus
effects-uncertain-load = kuorma
effects-uncertain-grip = pinnan pito
effects-uncertain-model = mallin valinta
effects-easiest = { $leg }, { $run }: vierii kevyimmin, kun { $groups }.
effects-easiest-group = { $group } on { $pressure } (nyt { $held }: { $more } raskaampi vierittää)
effects-easiest-lowest = { $group } on { $pressure }, alin tässä sallittu (nyt { $held }: { $more } raskaampi vierittää)
effects-easiest-how = Kevyin vierintä heikosta kantavaan maahan: pehmeämpi rengas kuluttaa enemmän itsessään, kovempi uppoaa. Etsitty vain portaan alimman ja ylimmän paineen väliltä. Hyvä vertailuun, ei tasoksi, eikä koskaan syy mennä alemmas.

effects-groups-how = Jokainen akseliryhmä suunnitelman mukaan. Ilma: renkaassa lämpimimpänä päivänä, jos osuus riittää lämmittämään sen. Kyyti: kehon tärinän muutos samalla nopeudella.
effects-bends = Painuma
effects-area = Pinta
effects-mean-pressure = Paine
    pinnassa
effects-stress-below = Jännitys
    0,3 m alla
effects-gap = Parin rako
effects-air = Ilma
effects-ride = Kyyti
effects-asphalt-strain = Asfaltin
    venymä, µm/m
effects-asphalt-life = Asfaltin
    kesto ×
effects-subgrade-strain = Maan
    venymä, µm/m
effects-subgrade-life = Maan kesto ×
    (kuormasta)

effects-missing = Täydennettävä
effects-missing-line = { $what }: { $place }, { $keys }. Ilman sitä puuttuu: { $decides }.
effects-missing-cost-line = { $what }: { $place }, { $keys }. Ei mukana kustannuksissa ennen kuin se annetaan; 0 kertoo, ettei sitä ole.
effects-on-legs = { $file }, { $legs }
effects-or = tai
effects-give-soil-strength = maan lujuus
effects-give-pavement-layers = päällysteen kerrokset
effects-give-grip = pito, mitattu
effects-give-dual-spacing = paripyörien väli
effects-give-money = kuljetuksen rahat
effects-give-fuel-price = polttoaineen hinta
effects-give-season = voitetut kausipäivät
effects-give-payload = voitettu hyötykuorma
effects-give-tire-saving = säästetty rengaskulu
effects-give-repair-saving = säästetyt korjaukset
effects-give-road-cost = tien kunnossapito
effects-give-road-saving = säästetty osa tien kunnossapidosta
effects-of-time = kierroksen aika
effects-of-contact = kosketuspinta
effects-of-stress-below = jännitys maassa
effects-of-gravel-rut = ura sorassa
effects-of-soil-rut = ura maassa
effects-of-dual-gap = paripyörien rako
effects-of-heat-load = lämpökuorma
effects-of-washboard = nimismiehenkiharat
effects-of-pavement = päällysteen kuluma
effects-of-climb = nousu
effects-of-descent = lasku
effects-of-rolling = vierintävastus ja polttoaine
effects-of-heat = lämpö renkaassa
effects-of-ride = kyyti
effects-of-wind-up = voimansiirron kiristys
effects-of-spread = hajonta
effects-of-cost = kustannus
effects-of-cost-item = kustannusrivi

effects-no-law = { $leg }: { $effect } jää sanomatta, koska { $reason }.
effects-flag-descent = VARO ALAMÄESSÄ: heikoimmillaan auto nousee jyrkempää kuin se pystyy laskussa pitämään: { $places }. Mitä pehmeät renkaat antavat ylämäessä, sitä ei ole jarruille.
effects-flag-wind-up = Vetävät akselit eri paineilla kiristävät toisiaan: { $places }. Pidä lukot auki kovalla maalla.
effects-flag-washboard = Tekee luultavasti nimismiehenkiharoita, koska renkaat ovat tyhjänä niin kovat: { $places }.
effects-flag-gap = Paripyörien väliin voi jäädä alle 10 mm: { $places }. Mittaa rako autosta, pienimmällä paineella ja täydellä kuormalla. Ketjujen kanssa: mittaa ensin, kuorma-auton ketjujen tilaa ei löytynyt painettuna.
effects-flag-heat-stop = LIIAN KUUMA lämpimimpänä päivänä, jos osuus riittää lämmittämään renkaan: { $places }.
effects-flag-heat-warn = Lämmin lämpimimpänä päivänä, jos osuus riittää lämmittämään renkaan: { $places }. Selvitä syy tai hidasta.
effects-ride-less = Kyyti: { $least }–{ $most } % vähemmän kehon tärinää samalla nopeudella. Ei joka jaksolla, ja etu katoaa, jos kuljettaja ajaa lujempaa; istuimesta tai terveydestä ei voi antaa lukua.
effects-ride-none = Kyyti: kehon tärinä ei vähene.
effects-note-top = Matala paine säästää tien yläosaa. Syvyydestä 0,3 m alas kuorma ratkaisee, ja mittauksissa eroa ei juuri löytynyt; pienempi kuorma säästää senkin maan.
effects-note-asphalt = Asfaltin kuluma on paras tapaus: malli painaa tasaisesti, renkaat eivät. Se ei kerro mitään pintauksen irtoamisesta eikä tien reunasta.
effects-note-memory = Maan urat, soran ura ja vetomallit ovat osin muistista otettujen yhtälöiden varassa. Vertaa lähteeseen ja tiellä nähtyyn uraan, ennen kuin raha tai lupa on niiden varassa.
effects-note-own-case = Tien hyöty riippuu tiestä, sen kosteudesta ja kuormasta; mikään yksi prosentti ei päde.

effects-trials = Mitä matalamman paineen kokeet löysivät tällaisella maalla, myös ne, jotka eivät löytäneet mitään (matala paine verrattuna korkeaan):
effects-trials-brief = { $count ->
    [one] Matalamman paineen kokeet tällaisella maalla: yksi löysi hyödyn (--full kertoo, kuinka suuren), nämä eivät löytäneet:
   *[other] Matalamman paineen kokeet tällaisella maalla: { $count } löysi hyödyn (--full kertoo, kuinka suuren), nämä eivät löytäneet:
}
effects-sources = Vaikutusten lähteitä on { $count }; --full luettelee ne. Muistista: { $memory }. Yleinen käytäntö, ei lähdettä: { $practice }.
effects-trial = { $effect }, { $ground }: { $found } [{ $source }, { $read }]
effects-trial-between = { $low } – { $high }
effects-trial-up-to = enintään { $high }
effects-trial-less = vähemmän, lukua ei annettu
effects-trial-no-difference = ei eroa
effects-trial-of-traffic-to-failure = liikenne vaurioon asti
effects-trial-of-asphalt-strain = asfaltin venymä
effects-trial-of-asphalt-life = asfaltin kesto
effects-trial-of-rutting = urat
effects-trial-of-aggregate-thickness = tarvittava murske
effects-trial-of-maintenance = pinnan kunnossapito
effects-trial-of-sediment = liete
effects-trial-of-deep-stress = jännitys 0,3 m alla ja syvemmällä
effects-trial-on-asphalt = asfaltti
effects-trial-on-asphalt-on-peat = ohut asfaltti turpeella
effects-trial-on-thawed-pavement = päällystetty tie kelirikossa
effects-trial-on-thin-membrane = ohut pintaus
effects-trial-on-aggregate = murske
effects-trial-on-dry-strong-gravel = kuiva luja sora
effects-trial-on-subsoil = maa
effects-trial-read-abstract = tiivistelmä luettu
effects-trial-read-news = uutinen luettu
