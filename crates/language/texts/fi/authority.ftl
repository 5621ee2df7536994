# The report to a road authority.
authority-whose = Kenen tie
authority-private = yksityinen
authority-public = yleinen
authority-us-public = yleinen, Yhdysvallat
authority-permits = Lupien ehdot
authority-permit = Lupa
authority-pressures = Paine
authority-cold = kylmät renkaat
authority-as-read = tiellä luettuna
authority-tolerance = Toleranssi
authority-permit-speed = Nopeus
authority-mass = Kokonaismassa
authority-interval = Kirjattu välein
authority-until = voimassa { $day } asti
authority-not-in-force = EI VOIMASSA suunnitelman päivänä
authority-no-permit = Kartoituksessa ei ole lupaa tälle reitille.
authority-uncovered = Yleinen tie ilman lupaa kartoituksessa: { $legs }.
