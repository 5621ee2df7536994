# Harjoitus ja arvio.
practice-title = Harjoitus { $haul }, siemen { $seed }
practice-arrived = Perillä.
practice-not-arrived = EI PERILLÄ: AJO PÄÄTTYI MATKALLA
practice-no-surprise = Mikään ei poikennut suunnitellusta.
practice-surprise = Toisin kuin suunniteltu: { $what }
surprise-slow-compressor = kulunut kompressori
surprise-leak = vuoto kompressorin jälkeen
surprise-unexpected-stop = este kuormatulla ajolla
surprise-closed-lay-by = levähdyspaikka oli suljettu
surprise-wrong-load-state = tyhjä kuormatila oli yhä valittuna, kun kuormapaineet pyydettiin
surprise-soft-leg = sateen pehmentämä osuus
practice-findings = Havainnot
practice-no-finding = Ei havaintoja: ajo noudatti suunnitelmaa.
practice-finding = Havainto
practice-when = Kuluttua
practice-at = Kohdassa
practice-lasted = Kesto
practice-evidence = Mitä nähtiin
practice-severity = Paino
practice-price = Suunnitelman omaan ajoon nähden
practice-item = Erä
practice-yours = Sinun
practice-plans = Suunnitelma
practice-more = Enemmän
practice-cost = Hinta
practice-no-price = ei hintaa
practice-item-time = Aika
practice-item-fuel = Polttoaine
practice-item-compressor = Kompressori kuormalla
practice-item-changes = Pyydetyt vaihdot
practice-item-road = Kovempi kuin tie haluaa
practice-item-tires = Alle vähimmäispaineen, kertaa aika
practice-cost-together = Yhteensä { $cost } { $currency } siitä, mille kartoituksessa on hinta.
practice-nothing-priced = Kartoituksessa ei ole hintoja tälle kuljetukselle; anna ne sen tiedostossa.
practice-on-the-real-road = Harjoitus ei ole ajolupa: auto, tie ja laki ratkaisevat sinä päivänä.
practice-problems = { $count ->
    [one] 1 ajon rivi ei kelpaa
   *[other] { $count } ajon riviä ei kelpaa
}
step-practising = ajetaan
