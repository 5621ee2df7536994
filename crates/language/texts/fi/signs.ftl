# Pystytettävät tai tarkastettavat kyltit.
signs-how = Kyltit ovat kuljettajan puolella, nimettyyn ajoon päin, ja näkyvät ajoissa ohjaamosta. Mittaa maamerkistä ajosuuntaan.
signs-facing = Kyltit ajoon: { $load_state }
signs-board = Kyltti
signs-words = Teksti
signs-for = Kuuluu
signs-stands = Paikalla
signs-of-change = vaihtopaikka { $number }
signs-where-complete = missä muutoksen on oltava valmis
signs-complete = { $rung }: enintään { $cap }
    EI VALMIS: { $slow }
signs-road-owner = Kysy tien omistajalta ennen kyltin pystytystä.
signs-work = Kylttien pystyttäjät näkyvät ja ovat poissa liikenteestä.
signs-check = Aja jokainen ajo kerran luettelon kanssa ja merkitse jokainen kyltti ohjaamosta.
