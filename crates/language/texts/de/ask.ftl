# Der Plan rückwärts gefragt.
ask-change = Wechselpunkt { $number }, { $load_state }: von { $from } nach { $to }, begonnen bei { $at }, fertig bei { $reach_by }.
ask-judged-nine-of-ten = Beurteilt nach neun von zehn Wechseln. Jedes Mittel allein, alles andere wie es ist; damit neu geplant.
ask-judged-nominal = Beurteilt nach dem Wechsel mit Nennwerten. Jedes Mittel allein, alles andere wie es ist; damit neu geplant.

ask-supply-title = Welche Luftversorgung reicht
ask-supply-fits = Es reicht, wie es ist: nichts muss dazu.
ask-supply-compressor = Kompressor
ask-supply-times = das { $times }-Fache der heutigen Leistung
ask-supply-times-not = nicht einmal das { $times }-Fache der heutigen Leistung
ask-supply-tank = Reservebehälter
ask-supply-reserve = { $volume } mehr
ask-supply-reserve-not = nicht einmal { $volume } mehr

ask-cap-title = Luftkreis { $channel }, { $load_state }, { $pressure } kalt
ask-cap-approved = Hersteller oder Norm steht ein für
ask-cap-window = Spannen erlauben
ask-cap-exact = Dasselbe, nicht gerundet
ask-cap-governed = Als Nächstes darüber
ask-cap-none = keine Geschwindigkeit
ask-cap-above-highest = ÜBER DEM HÖCHSTEN: ERST SENKEN

ask-late-title = Ab wann es zu spät ist
ask-late-latest = Bei einer gewöhnlichen Fahrt ist der späteste Beginn bei { $latest }. Der Plan hält davor { $in_hand } in Reserve, für neun von zehn Fahrten.
ask-late-never = Kein Beginn ist rechtzeitig: der Wechsel wird von nirgendwo aus bis zur Stelle fertig.
ask-late-standing = Er wird im Stand gemacht, daher gibt es keinen späteren Beginn.
ask-late-by = Später um
ask-late-complete = Fertig
ask-late-wrong-road = Mit falschem Druck
ask-late-descent = Gefälle
ask-late-on-descent = FÜLLT AUF GEFÄLLE
ask-late-how = Später als der späteste Beginn. Zeit gegen einen Beginn dort, über den ganzen Umlauf; Nennwerte, ohne Streuung zwischen Lkw und Fahrten.
