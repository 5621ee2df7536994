# Det som skyddar människor. Kort, enkelt, en sak per rad.

# The mark of texts that no native speaker has reviewed yet; see the English file.
caution-unreviewed = Säkerhetstexten är inte granskad av en modersmålstalare; läs den engelska vid tvekan.
    .reviewed = no

caution-maker-approves = Däcktillverkaren godkänner tryck. En siffra här är inget godkännande.
caution-law-decides = Lagen på platsen och väghållaren avgör vad som får köra på deras vägar.
caution-trained-people = Arbete med hjul, fälgar och bromsar är för utbildade och behöriga personer.
caution-rollover = Risken att välta är inte bedömd.
caution-side-slope = Inget lågt steg i sidlut eller snäva kurvor.
caution-tipping = Inget lågt steg vid tippning eller lyft.
caution-ice = Sänk inte trycket för att få fäste på is eller hård snö.
caution-speed = Håll dig under hastighetstaket. Höj trycket först, kör fortare sedan.
caution-lower-cap-first = Sakta ner till det lägre hastighetstaket innan du börjar sänka.
caution-wait-complete = Kör inte iväg lastad innan bytet är klart på alla luftkretsar.
caution-hold-limit = Vid hållgränsen: stanna eller höj trycket.
caution-brakes-first = Bromsarna har första rätt till luften. Ingen höjning i eller strax före en lång utförsbacke.
caution-supply-low = Matningstrycket kan falla till { $pressure } på den här transporten.
caution-unapproved = På papper för förare visar en ruta utan godkännande landsvägstryck eller ett streck.
caution-from-memory = Ett värde är ur minnet. Jämför med källan före användning.
caution-cold-tires = Trycken gäller kalla däck vid { $temperature }. Ett varmt däck visar mer.
caution-service-rule = Vid 80 % eller mindre av det tryck som behövs tas däcket av och undersöks av utbildade personer. Så läser vi 29 CFR 1910.177: kallt tryck i det sämsta däcket mot verklig last och hastighet.
caution-reads-only = Programmet läser bara från fordon. Det sänder inget till dem.

# Varningar för en plan, med sina tal. Rutor samlas i en lista.
caution-needs-approval = Behöver däcktillverkarens godkännande före körning – { $cells }.
caution-under-recommended = Vid 80 % eller mindre av { $recommended }, som däcktillverkaren räknar som rekommenderat. Enligt 29 CFR 1910.177, som vi läser den, tömmer utbildade personer ett sådant däck helt och undersöker det innan hjulet tas av – { $cells }.
caution-not-possible = Går inte, och behövs inte på den här transporten – { $cells }.
caution-not-possible-wanted = Går inte, fast transporten vill ha det – { $cells }.
caution-slower-rung-used = { $load_state }: { $wanted } går inte; { $rung } används i stället.
caution-fixed-group-too-soft = { $axle_group }, { $load_state }: det fasta trycket är för lågt för lasten. Höj det eller ta av last.
caution-wheel-ends-shut = { $axle_group }: { $count } axeländar är stängda för hand; deras däck följer inte med vid ett byte.
caution-hand-set-too-low = { $cells }: { $wanted } är satt för hand och ligger under det lägsta, { $lowest }. Det användes inte.
caution-above-ground-advice = Marken vill ha { $advice } eller mindre och däcken tillåter det inte – { $cells }.
caution-lead-does-not-fit = Bytespunkt { $number } vid { $place }: bytet är inte klart där det måste vara det. Se möjligheterna.
caution-before-first-move = { $channel }: höj trycket före första körningen efter den kallaste natten.
caution-held-too-long = { $load_state }: { $rung } hålls i { $road }; hållgränsen är { $limit }.
caution-held-too-long-in-time = { $load_state }: { $rung } hålls i { $time }, stillastående inräknat; hållgränsen är { $limit }.
caution-kept-low = { $load_state }: från { $from } till { $to } ligger bilen kvar på { $rung }; en höjning till { $wanted } skulle inte bli klar på den sträckan.
caution-compressor-over-limit = Kompressorn går { $longest } utan paus; gränsen är { $limit }.
caution-supply-touches-brakes = Matningstrycket faller till { $lowest }; vid { $threshold } stängs däckluften så att bromsarna behåller sin.
caution-crossfall-not-assessed = { $load_state }: lastens höjd är okänd, så tvärfallet lägger inget till på den låga sidan. Okänt är inte säkert: mät den.
caution-estimated-weight = Vikter är uppskattade, inte vägda: { $groups }.
caution-body-raised = { $load_state }: flaket är uppe. Inget lågt steg, plan fast mark, sväng inte; sänk flaket innan du kör vidare.
caution-treated-as = { $load_state }: lasterna är okända, så de för { $other_state } används. Väg den.
caution-approval-expired = { $tire }: godkännandet ({ $document }) gick ut { $date }. Dess rader används inte förrän det är förnyat.
caution-approval-tire-changed = { $tire }: godkännandet ({ $document }) gavs för ett annat däck. Dess rader används inte.
caution-approval-rim-changed = { $tire }: godkännandet ({ $document }) gavs för en annan fälg. Dess rader används inte.
caution-lead-fits-only-nominally = Bytespunkt { $number } vid { $place }: mer än en körning av tio är inte klar där den måste vara det.
caution-wheel-valves-shut-early = { $channel }: när det är kallast stänger hjulventilerna innan det lägsta steget är nått.
caution-driving-habits = Hur hårt föraren bromsar, drar och svänger är antaget (vanlig praxis, ingen källa).
caution-not-driven = Transporten kan inte köras som den är inventerad: { $reason }.

# Efter en snabb tryckförlust, i denna ordning.
caution-loss-stop-filling = Efter en snabb förlust: sluta fylla från hytten.
caution-loss-slow = Sakta ner mjukt. Ingen hård bromsning eller styrning.
caution-loss-stop = Stanna på fast mark. Sätt klossar. Syns.
caution-loss-look = Titta från slitbanans håll, på avstånd.
caution-loss-stay-away = Rök, bula, hetta, bränd lukt, blixt eller kraftledning: håll dig borta och ring.
caution-loss-isolate = Stäng axeländar först efter det.
caution-loss-trained = Att stänga en avluftning eller fylla genom ett provuttag är för utbildade personer.

# Mekaniker.
caution-mechanic-engine = Motorn av.
caution-mechanic-isolate = Skilj systemet från luften.
caution-mechanic-vent = Töm ledningen innan du lossar någon mutter eller slang.

# Fast.
caution-stuck = Fast: följ den tryckta rutinen eller säg nej. Ingen siffra hittas på i telefon.
