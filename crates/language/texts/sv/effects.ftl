# En plans verkan på mark, väg, dragkraft, värme, bränsle och åkkomfort.
effects-how = Mot fullt tryck hela vägen: de lastade trycken för det snabbaste steget, även tom. Talen är lågt – mitt – högt; kvoten 1 är ingen ändring. Spår och slitage gäller samma passager.
effects-way = Körsätt
effects-way-plan = denna plan
effects-way-full-pressure = fullt tryck
effects-way-constant-reduced = ett sänkt tryck
effects-way-less-load = en femtedel mindre last
effects-cycle = Omlopp
effects-gravel-rut = Grusspår
    ×
effects-asphalt-wear = Asfaltslitage
    ×
effects-trips = Resor för
    samma last
effects-not-assessed = Sträckor
    ej hela
effects-unknown = ?
effects-heat-load = Däckens värmelast över omloppet den varmaste dagen, i t km/h, rättad för längd och värme: { $groups }. Jämför den med tillverkarens märkvärde för varje däck.
effects-heat-load-too-long = Däckens värmelast (t km/h): omloppet är längre än { $length }, där rättelsen för längd slutar; fråga däcktillverkaren.

effects-leg = Delsträcka
effects-run = Körning
effects-leg-title = { $leg }, { $run }, { $from } till { $to }
effects-patch = Yta
    ×
effects-road = Vad vägen
    känner
effects-rolling = Rullning
    ×
effects-climb = Uppför, %
effects-descent = Utför, %
effects-road-rut = spår { $ratio }
effects-road-wear = slitage { $ratio }
effects-road-stress = spänning { $ratio }
effects-go = går
effects-doubtful = tveksamt
effects-no-go = GÅR EJ
effects-grade = { $word }: { $possible } av { $needed }
effects-legs-how = Kontaktyta, spår, slitage och rullmotstånd jämfört med fullt tryck, medel över axlarna. Uppför och utför: det brantaste som klaras, av det brantaste som finns; utför med en tiondel av tyngdkraften kvar att bromsa med. Ett frågetecken: något måste anges först, se nedan.
effects-legs-more = Lägg till --full för alla körsätt och alla axelgrupper.
effects-spread = { $leg }, { $run }: av tio fall klarar ett uppför mindre än { $p10 } %, fem mindre än { $p50 } %, nio mindre än { $p90 } %; delsträckan har { $needed } %. { $first }
effects-spread-by = Det mesta av osäkerheten kommer från { $input } ({ $share } av variansen): undersök det först.
effects-spread-nothing = Inget enskilt indata avgör.
effects-uncertain-strength = jordens hållfasthet
effects-uncertain-moisture = jordens fukt
effects-uncertain-load = lasten
effects-uncertain-grip = ytans fäste
effects-uncertain-model = valet av modell
effects-easiest = { $leg }, { $run }: rullar lättast med { $groups }.
effects-easiest-group = { $group } vid { $pressure } (håller { $held }: { $more } tyngre att rulla)
effects-easiest-lowest = { $group } vid { $pressure }, det lägsta tillåtna här (håller { $held }: { $more } tyngre att rulla)
effects-easiest-how = Rulla lättast, från svag till stark mark: mjukare däck förlorar mer i sig själva, hårdare sjunker ner. Sökt bara mellan stegets lägsta och högsta tryck. Bra för att jämföra, inte som nivå, och aldrig ett skäl att gå lägre.

effects-groups-how = Varje axelgrupp enligt planen. Luft: i däcket den varmaste dagen, om delsträckan är lång nog att värma det. Komfort: ändrad vibration i kroppen vid samma hastighet.
effects-bends = Nedfjädring
effects-area = Yta
effects-mean-pressure = Tryck
    i ytan
effects-stress-below = Spänning
    vid 0,3 m
effects-gap = Mellanrum
effects-air = Luft
effects-ride = Komfort
effects-asphalt-strain = Töjning i
    asfalt, µm/m
effects-asphalt-life = Asfaltens
    livslängd ×
effects-subgrade-strain = Töjning i
    mark, µm/m
effects-subgrade-life = Markens livslängd ×
    (genom last)

effects-missing = Att fylla i
effects-missing-line = { $what }: { $place }, { $keys }. Utan det fattas: { $decides }.
effects-missing-cost-line = { $what }: { $place }, { $keys }. Utanför kostnaden tills det anges; 0 betyder att det inte finns.
effects-on-legs = { $file }, { $legs }
effects-or = eller
effects-give-soil-strength = jordens hållfasthet
effects-give-pavement-layers = beläggningens lager
effects-give-grip = fäste, uppmätt
effects-give-dual-spacing = avstånd inom tvillingen
effects-give-money = transportens pengar
effects-give-fuel-price = bränslepris
effects-give-season = vunna säsongsdagar
effects-give-payload = vunnen nyttolast
effects-give-tire-saving = sparad däckkostnad
effects-give-repair-saving = sparade reparationer
effects-give-road-cost = vägens underhåll
effects-give-road-saving = sparad andel av vägens underhåll
effects-of-time = tid per omlopp
effects-of-contact = kontaktyta
effects-of-stress-below = spänning i marken
effects-of-gravel-rut = spår i grus
effects-of-soil-rut = spår i jord
effects-of-dual-gap = mellanrum i tvillingen
effects-of-heat-load = värmelast
effects-of-washboard = tvättbräda
effects-of-pavement = slitage på beläggningen
effects-of-climb = uppför
effects-of-descent = utför
effects-of-rolling = rullmotstånd och bränsle
effects-of-heat = värme i däcket
effects-of-ride = åkkomfort
effects-of-wind-up = spänning mellan drivaxlar
effects-of-spread = spridning
effects-of-cost = kostnad
effects-of-cost-item = kostnadsrad

effects-no-law = { $leg }: { $effect } kan inte anges, eftersom { $reason }.
effects-flag-descent = VAR FÖRSIKTIG UTFÖR: i sämsta fall klarar bilen mer uppför än den kan hålla utför på { $places }. Vad mjuka däck ger uppför finns inte där för bromsarna.
effects-flag-wind-up = Drivaxlar med olika tryck spänner mot varandra: { $places }. Ha spärrarna öppna på fast mark.
effects-flag-washboard = Ger troligen tvättbräda, eftersom däcken är så hårda när bilen är tom: { $places }.
effects-flag-gap = Mindre än 10 mm kan bli kvar mellan tvillingdäck: { $places }. Mät mellanrummet på bilen, vid lägsta tryck och full last. Med kedjor: mät först, inget mått på fritt utrymme för lastbilskedjor hittades i tryck.
effects-flag-heat-stop = FÖR VARMT den varmaste dagen, om delsträckan är lång nog att värma däcket: { $places }.
effects-flag-heat-warn = Varmt den varmaste dagen, om delsträckan är lång nog att värma däcket: { $places }. Ta reda på varför, eller sakta ner.
effects-ride-less = Åkkomfort: { $least } till { $most } % mindre vibration i kroppen vid oförändrad hastighet. Inte på varje avsnitt, och förlorat om föraren kör fortare; inget tal kan ges för säte eller hälsa.
effects-ride-none = Åkkomfort: inte mindre vibration i kroppen.
effects-note-top = Lågt tryck skonar vägens övre del. Från 0,3 m och neråt styr lasten, och mätningar fann nästan ingen skillnad; mindre last skonar också den marken.
effects-note-asphalt = Asfaltens slitage är ett bästa fall: modellen trycker jämnt, däck gör det inte. Den säger inget om ytbehandling som lossnar eller om vägkanten.
effects-note-memory = Spår i jord, spår i grus och dragmodellerna vilar delvis på ekvationer ur minnet. Jämför med källan, och med ett spår som setts på vägen, innan pengar eller tillstånd hänger på dem.
effects-note-own-case = Hur mycket en väg vinner beror på vägen, dess fukt och lasten; ingen enda procentsats gäller.

effects-trials = Vad försök med lägre tryck fann på sådan mark, även de som inget fann (lågt tryck mot högt):
effects-trials-brief = { $count ->
    [one] Försök med lägre tryck på sådan mark: ett fann en vinst (--full visar hur stor), dessa fann ingen:
   *[other] Försök med lägre tryck på sådan mark: { $count } fann en vinst (--full visar hur stor), dessa fann ingen:
}
effects-sources = Verkan vilar på { $count } källor, som --full räknar upp. Ur minnet: { $memory }. Vanlig praxis, ingen källa: { $practice }.
effects-trial = { $effect } på { $ground }: { $found } [{ $source }, { $read }]
effects-trial-between = { $low } till { $high }
effects-trial-up-to = upp till { $high }
effects-trial-less = mindre, inget tal angivet
effects-trial-no-difference = ingen skillnad
effects-trial-of-traffic-to-failure = trafik tills den brast
effects-trial-of-asphalt-strain = töjning i asfalt
effects-trial-of-asphalt-life = asfaltens livslängd
effects-trial-of-rutting = spår
effects-trial-of-aggregate-thickness = grus som behövs
effects-trial-of-maintenance = ytans underhåll
effects-trial-of-sediment = sediment
effects-trial-of-deep-stress = spänning vid 0,3 m och djupare
effects-trial-on-asphalt = asfalt
effects-trial-on-asphalt-on-peat = tunn asfalt på torv
effects-trial-on-thawed-pavement = belagd väg i tjällossning
effects-trial-on-thin-membrane = tunn ytbehandling
effects-trial-on-aggregate = grus
effects-trial-on-dry-strong-gravel = torr, stark grusväg
effects-trial-on-subsoil = jord
effects-trial-read-abstract = sammanfattning läst
effects-trial-read-news = nyhet läst
