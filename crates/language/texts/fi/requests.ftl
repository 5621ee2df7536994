# Hyväksyntäpyynnöt: kirje kunkin renkaan valmistajalle.
request-title = Hyväksyntäpyyntö: { $size }, kantavuusluku { $index }, nopeusluokka { $symbol }
request-from = Lähettäjä
request-from-who = { $responsible }, { $survey }
request-tire = Rengas
request-tire-what = { $size }, kantavuudet: { $body }; kartoituksessamme { $name }
request-rim = Vanne
request-rim-what = { $rim }, leimattu enimmäispaine { $maximum }
request-rim-unknown = vielä meille tuntematon, leimattu enimmäispaine { $maximum }; luemme leiman ja kerromme
request-molded = Kylkimerkintä
request-so-far = Vastauksenne tähän asti
request-none-so-far = ei ole
request-lapsed = { $document }; ei ole enää voimassa
request-haul = Kuljetus { $haul }: { $distance } kierroksella, kierroksia päivässä { $cycles }, ilma { $coldest } – { $warmest }. Paineet ovat kylmäpaineita, { $reference }.
request-line = Rivi
request-state = Kuorma-
    tila
request-load = Kuorma
request-speed = Nopeus
request-distance = Kierros
request-stay = Yhtä menoa
request-hold = Yhtä menoa
    min
request-wanted = Toive
request-today = Nyt
request-ground = Rivi { $line }: maapohja haluaisi enintään { $pressure }.
request-none-left = Rivi { $line }: tiedoillamme mikään paine ei ole mahdollinen. Mitä hyväksyisitte?
request-how = Kuorma: huonoin rengas, mukana tien kallistus, eripariset paripyörät ja punnitusvirhe. Kierros: matka tällä rivillä yhdellä kierroksella. Yhtä menoa: pisin matka ja aika tauotta, seisominen mukaan lukien. Toive: pienin paine, jolla suunnitelma ajaisi mitään rengasta.
request-please = Pyydämme kertomaan joka rivistä
request-please-pressure = pienimmän kylmäpaineen, jonka hyväksytte;
request-please-hold = pisimmän matkan ja ajan yhtä menoa, jos rajoitatte niitä;
request-please-standing = rivin seisovalle autolle, jonka renkaat muuttuvat kuormattaessa ({ $time }), jos sellaisen annatte;
request-please-service = mikä on käytössä olevan renkaan suosituspaine: rivinne vai tavallinen taulukkonne;
request-please-days = vastauksenne numeron, päivän ja viimeisen voimassaolopäivän sekä renkaan ja vanteen, joita se koskee.
request-nothing = Ei kysyttävää: valmistaja tai standardi on jokaisen paineen takana, jolla nämä kuljetukset ajavat.
request-no-tire = rengas '{ $tire }' ei odota vastausta; ne, jotka odottavat: { $tires }
request-csv-written = Kirjoitettu valmistajan täytettäväksi: { $file }
