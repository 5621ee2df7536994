# Mikä suojaa ihmisiä. Lyhyesti, selvästi, yksi asia rivillä.

# The mark of texts that no native speaker has reviewed yet; see the English file.
caution-unreviewed = Äidinkielinen puhuja ei ole tarkastanut turvallisuustekstiä; epäselvässä lue englanniksi.
    .reviewed = no

caution-maker-approves = Renkaan valmistaja hyväksyy paineet. Tässä oleva luku ei ole hyväksyntä.
caution-law-decides = Paikallinen laki ja tienpitäjä päättävät, mikä saa ajaa niiden teillä.
caution-trained-people = Pyörä-, vanne- ja jarrutyöt kuuluvat koulutetuille ja luvan saaneille.
caution-rollover = Kaatumisvaaraa ei ole arvioitu.
caution-side-slope = Ei matalaa porrasta sivukaltevassa eikä jyrkissä mutkissa.
caution-tipping = Ei matalaa porrasta kipatessa tai nostettaessa.
caution-ice = Älä laske painetta pidon vuoksi jäällä tai kovalla lumella.
caution-speed = Pysy nopeuskaton alla. Nosta ensin paine, aja vasta sitten kovempaa.
caution-lower-cap-first = Hidasta alempaan nopeuskattoon ennen kuin alat laskea painetta.
caution-wait-complete = Älä lähde kuormattuna liikkeelle ennen kuin muutos on valmis jokaisessa paineilmapiirissä.
caution-hold-limit = Pitorajalla pysähdy tai nosta paine.
caution-brakes-first = Jarruilla on ensioikeus ilmaan. Ei paineen nostoa pitkässä alamäessä eikä juuri ennen sitä.
caution-supply-low = Syöttöpaine voi laskea tällä kuljetuksella: { $pressure }.
caution-unapproved = Kuljettajan paperissa hyväksymätön ruutu näyttää maantiepaineen tai viivan.
caution-from-memory = Jokin arvo on muistinvarainen. Vertaa lähteeseen ennen käyttöä.
caution-cold-tires = Paineet ovat kylmille renkaille, { $temperature }. Lämmin rengas näyttää enemmän.
caution-service-rule = Kun paine on 80 % tarvittavasta tai alle, koulutetut irrottavat renkaan ja tarkastavat sen. Näin luemme sääntöä 29 CFR 1910.177: huonoimman renkaan kylmäpaine todellista kuormaa ja nopeutta vasten.
caution-reads-only = Ohjelma vain lukee ajoneuvoja. Se ei lähetä niille mitään.

# Suunnitelman varoitukset lukuineen. Ruudut kootaan yhteen luetteloon.
caution-needs-approval = Vaatii renkaan valmistajan hyväksynnän ennen ajoa – { $cells }.
caution-under-recommended = 80 % tai alle arvosta { $recommended }, jota renkaan valmistaja pitää suositeltuna. Säännön 29 CFR 1910.177 mukaan, kuten sen luemme, koulutetut tyhjentävät sellaisen renkaan kokonaan ja tarkastavat sen ennen pyörän irrotusta – { $cells }.
caution-not-possible = Ei mahdollinen, eikä tarpeen tällä kuljetuksella – { $cells }.
caution-not-possible-wanted = Ei mahdollinen, vaikka kuljetus tarvitsisi sen – { $cells }.
caution-slower-rung-used = { $load_state }: { $wanted } ei ole mahdollinen; sen sijasta { $rung }.
caution-fixed-group-too-soft = { $axle_group }, { $load_state }: kiinteä paine on kuormalle liian matala. Nosta painetta tai vähennä kuormaa.
caution-wheel-ends-shut = { $axle_group }: käsin suljettuja akselinpäitä { $count }; niiden renkaat eivät seuraa muutosta.
caution-hand-set-too-low = { $cells }: käsin asetettu { $wanted } on alle pienimmän sallitun, { $lowest }. Sitä ei käytetty.
caution-above-ground-advice = Maapohja haluaisi enintään { $advice }, mutta renkaat eivät salli sitä – { $cells }.
caution-lead-does-not-fit = Vaihtokohta { $number } kohdassa { $place }: muutos ei ole valmis siellä, missä sen pitää. Katso vaihtoehdot.
caution-before-first-move = { $channel }: nosta paine ennen ensimmäistä liikkeellelähtöä kylmimmän yön jälkeen.
caution-held-too-long = { $load_state }: { $rung } pidetään { $road }; pitoraja on { $limit }.
caution-held-too-long-in-time = { $load_state }: { $rung } pidetään { $time }, seisominen mukaan lukien; pitoraja on { $limit }.
caution-kept-low = { $load_state }: välillä { $from } – { $to } auto pysyy portaalla { $rung }; nosto portaalle { $wanted } ei valmistuisi sillä välillä.
caution-compressor-over-limit = Kompressori käy { $longest } tauotta; sen raja on { $limit }.
caution-supply-touches-brakes = Syöttöpaine laskee: { $lowest }; kun se on { $threshold }, rengasilma katkeaa, jotta jarruille jää omansa.
caution-crossfall-not-assessed = { $load_state }: kuorman korkeutta ei tiedetä, joten sivukaltevuus ei lisää mitään alemmalle puolelle. Tuntematon ei ole turvallinen: mittaa se.
caution-estimated-weight = Painot on arvioitu, ei punnittu: { $groups }.
caution-body-raised = { $load_state }: lava on ylhäällä. Ei matalaa porrasta, tasainen kova maa, ei kääntymistä; laske lava ennen ajoa.
caution-treated-as = { $load_state }: kuormia ei tiedetä, joten käytetään tilan { $other_state } kuormia. Punnitse.
caution-approval-expired = { $tire }: hyväksyntä ({ $document }) päättyi { $date }. Sen rivejä ei käytetä ennen uusimista.
caution-approval-tire-changed = { $tire }: hyväksyntä ({ $document }) annettiin toiselle renkaalle. Sen rivejä ei käytetä.
caution-approval-rim-changed = { $tire }: hyväksyntä ({ $document }) annettiin toiselle vanteelle. Sen rivejä ei käytetä.
caution-lead-fits-only-nominally = Vaihtokohta { $number } kohdassa { $place }: useampi kuin joka kymmenes ajo ei ole valmis siellä, missä sen pitää.
caution-wheel-valves-shut-early = { $channel }: kylmimmällä pyöräventtiilit sulkeutuvat ennen kuin alin porras on saavutettu.
caution-driving-habits = Kuljettajan jarrutus-, veto- ja kaarreajotapa on oletettu (yleinen käytäntö, ei lähdettä).
caution-not-driven = Kuljetusta ei voi ajaa niin kuin se on kartoitettu: { $reason }.

# Nopean painehäviön jälkeen, tässä järjestyksessä.
caution-loss-stop-filling = Nopean painehäviön jälkeen: lopeta täyttö ohjaamosta.
caution-loss-slow = Hidasta pehmeästi. Ei äkkijarrutusta eikä äkkiohjausta.
caution-loss-stop = Pysähdy kovalle maalle. Kiilaa pyörät. Ole näkyvissä.
caution-loss-look = Katso kulutuspinnan puolelta, etäältä.
caution-loss-stay-away = Savua, pullistuma, kuumuutta, palaneen hajua, salama tai sähkölinja: pysy kaukana ja soita.
caution-loss-isolate = Sulje akselinpäitä vasta sen jälkeen.
caution-loss-trained = Tyhjennysaukon sulkeminen ja täyttö mittausliittimestä kuuluvat koulutetuille.

# Mekaanikoille.
caution-mechanic-engine = Moottori sammuksiin.
caution-mechanic-isolate = Erota järjestelmä ilmasta.
caution-mechanic-vent = Tyhjennä putki ennen kuin löysäät mutteria tai letkua.

# Kiinni juuttunut.
caution-stuck = Kiinni juuttunut: noudata painettua ohjetta tai kieltäydy. Puhelimessa ei keksitä lukuja.
