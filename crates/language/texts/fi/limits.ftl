# Mikä määrää painealueen pienimmän ja suurimman paineen.
limit-load-table = kuorma-painetaulukko
limit-load-power-law = kuorma nimellispisteestä (potenssilaki)
limit-low-speed-allowance = taulukon hidasajolisä
limit-maker-row = renkaan valmistajan hyväksymä rivi
limit-lowest-row = pienin julkaistu: taulukot ja käytäntö eivät mene tällä nopeuskatolla alemmas
limit-deflection = painuma nopeuskatolla
limit-bead = palle ja vanne
limit-wheel-valve = itsesulkeutuva pyöräventtiili kylmimmällä
limit-flat-rule = yleinen tie: alle puolet kylkeen merkitystä enimmäispaineesta on tyhjä rengas
limit-roadside-hot = yleinen tie: lämpimän renkaan tienvarsitarkastus
limit-permit-minimum = lupa, pienin
limit-permit-maximum = lupa, suurin
limit-dual-gap = paripyörien väli
limit-mate-diameter = parirenkaan halkaisija
limit-chains = ketjut: maantiepaine
limit-chains-shared = ketjut saman ilmapiirin toisessa ryhmässä
limit-turning-scrub = sivuluisto käännöksessä
limit-tire-heat = renkaan lämpeneminen
limit-tire-maximum = kylkeen merkitty enimmäispaine
limit-rim-maximum = vanne
limit-supply = syöttöpaine, johon voi luottaa
limit-ground = maapohja (neuvo)
limit-fixed = kiinteä: ryhmällä ei ole ilmapiiriä
limit-hand-set = asetettu käsin kartoituksessa
limit-other-group = saman ilmapiirin toinen akseliryhmä
limit-service-rule = 80 % tarvittavasta paineesta
limit-heavier-state = tuntematon kuormatila: seuraava raskaampi käytössä
limit-unknown-trailer = tuntematon perävaunu: maantiepaine
limit-restricted-speed = rajoitetun nopeuden taulukko

# Sama taulukon sarakkeessa.
limit-brief-load-table = kuormarivi
limit-brief-restricted-speed = nopeusrivi
limit-brief-maker-row = valmistajan rivi
limit-brief-deflection = painuma
limit-brief-bead = palle
limit-brief-lowest-row = pienin julkaistu
limit-brief-wheel-valve = pyörän venttiili
limit-brief-flat-rule = puolet suurimmasta
limit-brief-roadside-hot = tarkastus kuumana
limit-brief-dual-gap = paripyörien väli
limit-brief-chains = ketjut
limit-brief-turning-scrub = sivuluisto
limit-brief-tire-heat = lämpeneminen
limit-brief-tire-maximum = kyljen raja
limit-brief-rim-maximum = vanne
limit-brief-supply = syöttö
limit-brief-permit-minimum = lupa
limit-brief-permit-maximum = lupa
limit-brief-ground = maapohja (neuvo)

# Miksi ruutu ei ole mahdollinen.
why-overloaded = huonoin rengas kantaa { $load }, enemmän kuin sallittu { $highest }, kun nopeus on { $cap }
why-too-fast = nopeuskatto { $cap } ylittää renkaan nopeusluokan { $rated }
why-too-hot = renkaan ilma ylittää { $highest } kaikilla paineilla
why-duals-touch = parirenkaat koskettavat kaikilla paineilla, kun väli on { $spacing }
why-no-deflection = mikään paine ei pidä painumaa alle { $share }
why-empty-supply = asetettava { $lowest }, mutta syöttö yltää vain { $highest }
why-empty-rim = asetettava { $lowest }, mutta vanne kestää { $highest }
why-empty-tire = asetettava { $lowest }, mutta kylkeen merkitty enimmäispaine on { $highest }
why-empty-permit = asetettava { $lowest }, mutta lupa sallii { $highest }
why-not-rated = renkaalla ei ole kantavuutta tälle asennukselle

# Sama taulukon sarakkeessa.
why-brief-overloaded = YLIKUORMA
why-brief-too-fast = yli nopeusluokan
why-brief-too-hot = liian kuuma
why-brief-duals-touch = parit koskettavat
why-brief-no-deflection = painuma
why-brief-not-rated = ei kantavuutta
why-brief-empty-supply = yli syötön
why-brief-empty-rim = yli vanteen
why-brief-empty-tire = yli kylkimerkinnän
why-brief-empty-permit = yli luvan
