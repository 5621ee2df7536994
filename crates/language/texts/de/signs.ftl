# Schilder zum Aufstellen oder Prüfen.
signs-how = Schilder stehen auf der Fahrerseite, der genannten Fahrt zugewandt, und sind rechtzeitig aus der Kabine lesbar. Von der Landmarke aus in Fahrtrichtung messen.
signs-facing = Schilder für die Fahrt: { $load_state }
signs-board = Schild
signs-words = Text
signs-for = Gehört zu
signs-stands = Steht
signs-of-change = Wechselpunkt { $number }
signs-where-complete = wo der Wechsel fertig sein muss
signs-complete = { $rung }: bis { $cap }
    NICHT FERTIG: { $slow }
signs-road-owner = Vor dem Aufstellen den Eigentümer der Straße fragen.
signs-work = Wer Schilder aufstellt, wird gesehen und steht außerhalb des Verkehrs.
signs-check = Jede Fahrt einmal mit der Liste fahren und jedes Schild aus der Kabine abhaken.
