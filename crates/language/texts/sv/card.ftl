# Förarkortet. Kort: det läses i hytten.
card-up-to = upp till { $unit }
card-set = { $load_state }: ställ styrenheten på, { $unit }
card-set-both = { $load_state }: ställ på, { $unit } (styrenhet: { $controller })
card-road-mark = * Landsvägstryck gäller i stället: stegets eget tryck är inte godkänt.
card-dash-mark = Ett streck: kör inte detta steg med denna last.
card-fixed = Fast, ställt för hand, kallt: { $groups }.
card-hold = { $rung }: högst { $limit }
card-hold-one = { $limit }; stanna sedan, eller höj trycket
card-chains = Med { $chains }, { $load_state }: { $cells }.
card-elsewhere = Utanför denna rutt, okänt släp eller okänd last: landsvägstryck.
card-elsewhere-road = Steg { $rung }, lastad: { $figures } { $unit }. Inte uppnått: kör inte fortare än mätaren tillåter.
card-elsewhere-stand = Inget landsvägstryck i denna plan är godkänt för alla luftkretsar: stå kvar och ring.

card-strip = Rutten
card-strip-described = Rutten { $route } som remsa: ytor, landmärken och { $changes ->
    [one] { $changes } bytespunkt med sitt nummer
   *[other] { $changes } bytespunkter med sina nummer
}; lastad körning överst, tom körning underst. Fylld triangel uppåt: höja. Öppen triangel nedåt: sänka.
card-number = Nr
card-not-driven = Denna körning går inte att köra som den är inventerad; inga bytespunkter är kända.
card-not-complete = INTE KLART I TID: håll det lägre taket tills alla luftkretsar är klara.
card-before-first-move = Före första rörelsen, höj trycket: { $channels }.
card-laden-after-loading = Lastad: välj { $state }, vänta tills alla luftkretsar är klara ({ $time }), kör sedan.
card-laden-while-loading = Under lastning: välj { $state } ({ $time }). Kör inte innan alla luftkretsar är klara.
card-laden-rolling = Före lastning, vid { $at }: välj { $state } ({ $time }). Kör inte lastad innan alla luftkretsar är klara.
card-laden-not-possible = { $state }: inget sätt att nå lasttrycken är känt. Lasta inte; ring.
card-unloaded = Lossad: välj { $state } innan du kör.

card-gauge = Vad mätaren tillåter
card-gauge-how = Varje mätare ska visa minst radens tal; det långsammaste däcket bestämmer farten. Ett streck, eller mindre än sista raden: kör inte. Mer än första raden: kör inte, sänk trycket först. Varmt som kallt.
card-gauge-none = Inget mätarvärde tillåter körning med det som är godkänt. Kör inte; ring.
card-drive-up-to = Kör upp till, { $unit }
card-not-above = inte över

card-event = Om
card-do = gör
card-event-brake-air = Bromsluften är låg
card-do-brake-air = Sluta genast fylla däck. Sakta ner, stanna säkert, lägg i parkeringsbromsen. Kör inte innan orsaken är funnen.
card-event-not-rising = En luftkrets följer inte med
card-do-not-rising = Kör inte fortare än dess mätare tillåter. Stanna på nästa säkra plats och ring.
card-event-late = Du började sent
card-do-late = Håll det lägre taket tills alla luftkretsar är klara. Kör aldrig ifrån trycket.
card-event-too-fast = Du är över taket
card-do-too-fast = Sakta mjukt ner till taket; fortsätt sakta, eller höj trycket. Efter länge över taket: stanna, låt däcken svalna, rapportera.
card-event-display = Displayen är släckt eller osäker
card-do-display = Trycket är inte känt. Mät varje däck för hand; tills dess gångfart, bort från vägen.
card-event-stuck = Du sitter fast
card-do-stuck = Följ den tryckta rutinen, eller vänta på hjälp. Inget tal hittas på i telefon.
card-event-shift-end = Skiftet slutar
card-supply-touches-brakes = Luften blir låg på denna körning: bromsarna har första rätt till den. Om fyllningen stannar av sig själv, håll det lägre taket.
card-change-told = Nr { $number }: { $told }
