# Suunnitelma kysyttynä takaperin.
ask-change = Vaihtokohta { $number }, { $load_state }: { $from } → { $to }, alkaa { $at }, valmis { $reach_by }.
ask-judged-nine-of-ten = Arvioitu yhdeksästä muutoksesta kymmenestä. Kukin keino yksinään, muu ennallaan; suunniteltu sen kanssa uudelleen.
ask-judged-nominal = Arvioitu nimellisestä muutoksesta. Kukin keino yksinään, muu ennallaan; suunniteltu sen kanssa uudelleen.

ask-supply-title = Mikä ilmansyöttö riittää
ask-supply-fits = Riittää näin: mitään ei tarvitse lisätä.
ask-supply-compressor = Kompressori
ask-supply-times = { $times } kertaa nykyinen tuotto
ask-supply-times-not = ei edes { $times } kertaa nykyinen tuotto
ask-supply-tank = Varasäiliö
ask-supply-reserve = { $volume } lisää
ask-supply-reserve-not = ei edes { $volume } lisää

ask-cap-title = Ilmapiiri { $channel }, { $load_state }, { $pressure } kylmänä
ask-cap-approved = Valmistaja tai standardi takaa
ask-cap-window = Painealueet sallivat
ask-cap-exact = Sama pyöristämättä
ask-cap-governed = Seuraavana yläpuolella
ask-cap-none = ei mitään nopeutta
ask-cap-above-highest = YLI SUURIMMAN: LASKE ENSIN

ask-late-title = Milloin on liian myöhäistä
ask-late-latest = Tavallisella ajolla viimeinen aloitus on kohdassa { $latest }. Suunnitelma jättää sitä ennen varaa { $in_hand }, yhdeksälle ajolle kymmenestä.
ask-late-never = Mikään aloitus ei ehdi: muutos ei ole paikalla valmis mistään alkaen.
ask-late-standing = Se tehdään seisten, joten myöhempää aloitusta ei ole.
ask-late-by = Myöhemmin
ask-late-complete = Valmis
ask-late-wrong-road = Väärällä paineella
ask-late-descent = Alamäki
ask-late-on-descent = TÄYTTÄÄ ALAMÄESSÄ
ask-late-how = Viimeistä aloitusta myöhemmin. Aika verrattuna aloitukseen siinä, koko kierroksella; nimellinen, ilman autojen ja ajojen hajontaa.
