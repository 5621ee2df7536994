# Tehdyt lokit.
step-making = tehdään lokeja
make-log = Loki
make-frames = Kehyksiä
make-lost = Hukattu
make-hours = Tunteja
make-distance = Ajettu
make-asked =
    Muutoksia
    pyydetty
make-complete = valmiita
make-forgotten = unohdettu
make-truth-beside = Kunkin lokin vieressä on sen totuus, .truth.json. Mikään niissä ei ole todellista.

make-fault = Vika
make-fault-range = Koko
make-fault-what = Mikä se on
make-fault-examples = Pyydä sellainen valinnalla --fault, esimerkiksi:

make-fault-tire-leak = reikä renkaassa, koon levyinen
make-fault-line-leak = reikä kanavan linjassa
make-fault-line-off = kanavan linja on irronnut
make-fault-line-narrowed = taittunut tai tukkeutunut linja; koko on se, mitä johtavuudesta on jäljellä
make-fault-line-shut = linja on suljettu ennen pyöriä
make-fault-fill-stuck-shut = täyttöventtiili ei avaudu
make-fault-fill-slow = täyttöventtiili avautuu osittain; koko on se, mitä on jäljellä
make-fault-exhaust-stuck-shut = poistoaukko ei avaudu
make-fault-exhaust-stuck-open = poistoaukko ei sulkeudu
make-fault-exhaust-slow = poistoaukko avautuu osittain; koko on se, mitä on jäljellä
make-fault-exhaust-frozen = poistoaukko ei avaudu, kun on alle 0 °C
make-fault-wheel-end-shut = käsin suljettu pyöränpää, jonka pitäisi olla auki
make-fault-core-left-in = venttiilin sydän jäänyt renkaaseen; koko on se, mitä johtavuudesta on jäljellä
make-fault-weak-compressor = kulunut kompressori tai tukkeutunut imu; koko on se, mitä tuotosta on jäljellä
make-fault-cut-in-off = säädin kytkee päälle muussa paineessa, ero on koko
make-fault-cut-out-off = säädin kytkee pois muussa paineessa, ero on koko
make-fault-protection-off = suojaventtiili toimii muissa paineissa, ero on koko
make-fault-brake-leak = jarrut hukkaavat näin paljon vapaata ilmaa
make-fault-gauge-off = ohjaimen mittari näyttää kanavassa koon verran liikaa
make-fault-gauge-other-kind = ohjaimen mittari on kanavassa suljettu, vaikka sen pitäisi olla avoin, tai päinvastoin
make-fault-hot-wheel = laahaava jarru tai huono laakeri lämmittää pyöränpään renkaita koon verran
make-fault-sensor-off = renkaan anturi näyttää koon verran liikaa
make-fault-sensor-drift = renkaan anturi näyttää joka tunti koon verran enemmän
make-fault-sensor-stuck = renkaan anturi sanoo sen, minkä se sanoi vian alkaessa
make-fault-sensor-dead = renkaan anturi ei sano mitään
make-fault-sensors-swapped = kahden renkaan anturit ovat vaihtaneet paikkaa
make-fault-log-gap = mitään ei tallenneta; tarvitsee for=
make-fault-clock-off = tallentimen kello on edellä koon verran
