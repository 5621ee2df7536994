# Planen frågad baklänges.
ask-change = Bytespunkt { $number }, { $load_state }: från { $from } till { $to }, påbörjat vid { $at }, klart vid { $reach_by }.
ask-judged-nine-of-ten = Bedömt på nio av tio byten. Varje medel för sig, allt annat som det är; planerat på nytt med det.
ask-judged-nominal = Bedömt på det nominella bytet. Varje medel för sig, allt annat som det är; planerat på nytt med det.

ask-supply-title = Vilken luftmatning som räcker
ask-supply-fits = Det räcker som det är: inget behöver läggas till.
ask-supply-compressor = Kompressor
ask-supply-times = { $times } gånger dagens flöde
ask-supply-times-not = inte ens { $times } gånger dagens flöde
ask-supply-tank = Reservtank
ask-supply-reserve = { $volume } till
ask-supply-reserve-not = inte ens { $volume } till

ask-cap-title = Luftkrets { $channel }, { $load_state }, { $pressure } kallt
ask-cap-approved = Tillverkare eller standard står för
ask-cap-window = Spannen tillåter
ask-cap-exact = Samma, inte avrundat
ask-cap-governed = Närmast över
ask-cap-none = ingen hastighet
ask-cap-above-highest = ÖVER DET HÖGSTA: SÄNK FÖRST

ask-late-title = När det är för sent
ask-late-latest = På en vanlig körning är sista starten vid { $latest }. Planen har { $in_hand } till godo före den, för nio av tio körningar.
ask-late-never = Ingen start är i tid: bytet blir inte klart vid platsen varifrån det än börjar.
ask-late-standing = Det görs stillastående, så det finns ingen senare start.
ask-late-by = Senare med
ask-late-complete = Klart
ask-late-wrong-road = På fel tryck
ask-late-descent = Utförsbacke
ask-late-on-descent = FYLLER I UTFÖRSBACKE
ask-late-how = Senare än sista starten. Tid mot en start där, över hela omloppet; nominellt, utan spridning mellan bilar och körningar.
