# Samtalet från vägen.
now-go = KÖR, INTE FORTARE ÄN { $speed }
now-go-slow = INTE FORTARE ÄN { $speed }, OCH BARA DIT DÄR DET KAN LAGAS
now-walk = GÅNGFART, AV VÄGEN. MÄT SEDAN TRYCKET.
now-stop = STANNA

now-how-far = Hur långt
now-far-nowhere = inte alls förrän det är lagat
now-far-off-the-road = av vägen till närmaste säkra plats, inte längre
now-far-hold = { $limit }; stanna sedan, eller höj trycket
now-far-next-stop = till nästa stopp; mät igen där
now-truck = Bil
now-truck-unit = enhet { $unit }, { $combination }, transport { $haul }
now-truck-combination = { $combination }, transport { $haul }
now-holds-rung = Håller steget
now-why = Varför
now-next = Kontrollera sedan
now-safety = Alltid
now-groups = Axelgrupp för axelgrupp
now-read = Mätare
now-air = Däckluft
now-at-most = Högst
now-kept = inte mätt
now-not-gauged = INTE MÄTT
now-set-for = Vad som var ställt, mot vad den här lasten behöver
now-was-set = Var ställt
now-needed = Behövs

# Varför.
now-reason-not-gauged = { $axle_group }: ingen har mätt. Det som är okänt räknas inte som bra.
now-reason-kept-as-surveyed = { $axle_group }: inte mätt; räknat med { $kept } kallt som inventeringen anger.
now-reason-under-service-share = { $axle_group }: { $cold } kallt är { $share } av de { $needed } som lasten behöver i gångfart. Vid 80 % eller mindre: fyll inte på luft.
now-reason-too-soft = { $axle_group }: { $cold } kallt är för mjukt för varje hastighet med den här lasten; minst är { $needed } kallt.
now-reason-too-soft-approved = { $axle_group }: { $cold } kallt är under { $needed }, det minsta som däcktillverkaren eller en standard står för med den här lasten.
now-reason-nothing-approved = { $axle_group }: vid { $cold } kallt står ingen för någon hastighet med den här lasten.
now-reason-cannot-be-reached = { $axle_group }: { $reading } är inte över { $closes }, där hjulventilerna stänger. Fyllning från hytten når inte fram.
now-reason-above-highest = { $axle_group }: { $cold } kallt är över det högsta, { $highest } ({ $governed_by }). Sänk trycket innan du kör vidare.
now-reason-mates-differ = { $axle_group }: däcken i ett tvillingpar skiljer { $difference }; högst 5 psi (34 kPa) får det vara. Det mjukare räknas.
now-reason-overloaded = { $axle_group }: bär { $load }, mer än de { $highest } som gruppen tål. Inget tryck lagar det.
now-reason-impossible = { $axle_group }: inget tryck duger: { $why }.
now-reason-sets-the-speed = { $axle_group } bestämmer hastigheten. Närmast över: { $governed_by }.
now-reason-load-unknown = Ingen vet lasten: det måste hålla för varje lastläge, { $load_state } är tyngst.
now-reason-warmth-unknown = Ingen sade om däcken var kalla: de räknas som varma, alltså mjukare än de visar.
now-reason-ran-last-hour = Den har kört den senaste timmen: inget däck är kallt, vad som än sades.
now-reason-trailer-unknown = Ingen känner släpet: det behöver landsvägstryck vid varje hastighet.
now-reason-trailer-left-low = Släpet lämnades på lågt tryck: höj trycket och jämför med planen innan det rör sig.
now-reason-trailer-left-shut = Släpet lämnades med stängda axeländar: öppna dem och jämför med planen innan det rör sig.
now-reason-trailer-other-tires = Släpet har andra däck; de bedömdes.
now-reason-other-load-state-selected = Styrenheten håller ännu trycken för { $load_state }.
now-reason-held-shortly = Steget { $rung } hålls bara en kort tid.
now-reason-unit-slip = { $axle_group }: { $reading } ser ut som ett tal i { $meant } angivet i { $typed }. Det togs som det gavs.
now-reason-unapproved-counted = FÖR SPECIALISTEN, INTE FÖR FÖRAREN: tryck som ingen godkänt räknades med.

# Vad som ska kontrolleras eller göras sedan.
now-check-gauge = { $axle_group }: mät varje däck för hand, även de inre.
now-check-raise = { $channel }: höj till { $set } (steg { $rung }) stillastående, vänta tills det är klart och mät igen.
now-check-lower = { $axle_group }: låt däcken svalna, sänk sedan till { $highest } kallt eller mindre.
now-check-leave-to-trained-people = { $axle_group }: fyll inte. Utbildade personer släpper ut luften, tar av hjulet och tittar inuti.
now-check-deflate-before-service = { $axle_group }: det får köras så, men däcktillverkaren räknar { $recommended } som rekommenderat. Innan ett hjul tas av tömmer utbildade personer det helt och undersöker det.
now-check-find-why-softer = { $axle_group }: ta reda på varför ett däck är mjukare: läcka, stängd axelände eller stopp i ledningen.
now-check-wheel-ends-shut = { $axle_group }: { $count } axeländar är stängda för hand och följer inte med; mät de däcken ett och ett.
now-check-raise-before-parking = { $axle_group }: höj trycket före parkering; den kallaste natten skulle hjulventilerna stänga.
now-check-ask-maker = { $channel }: inget tryck som någon står för kan ställas in för den här lasten. Fråga däcktillverkaren innan den körs så.
now-check-find-out-load = Ta reda på vad som är lastat, eller väg.
now-check-take-load-off = { $axle_group }: ta av last.
now-check-read-sidewalls = Släp: läs storlek, lastklass och märkt högsta tryck på varje däcksida, och jämför.
now-check-open-wheel-ends = Släp: öppna alla axeländar.
now-check-select-load-state = Välj { $load_state }, vänta tills det är klart på alla luftkretsar, och mät.
now-check-read-unit-again = { $axle_group }: läs av mätaren igen, med dess enhet.
now-check-ask-again = Fråga sedan igen med vad mätaren visar.

# Detsamma som en tabell för ett kort.
now-table-title = Högsta hastighet efter mätaren, transport { $haul }
now-table-cold = För kalla däck: stått i tre timmar, eller flyttats högst en engelsk mil (1,6 km).
now-table-warm = För varma däck.
now-table-not-known = För däck där ingen vet om de är kalla: de räknas som varma.
now-table-how = Den långsammaste luftkretsen räknas. –: kör inte; för mjukt över en kolumns första hastighet, för hårt under den sista. Mätare mellan två rader: ta den mjukare, och ett streck som ett streck.
