# Skyltar att sätta upp eller kontrollera.
signs-how = Skyltarna står på förarens sida, vända mot den körning som nämns, och läses i tid från hytten. Mät från landmärket, i färdriktningen.
signs-facing = Skyltar mot körning: { $load_state }
signs-board = Skylt
signs-words = Text
signs-for = Hör till
signs-stands = Står
signs-of-change = bytespunkt { $number }
signs-where-complete = där bytet ska vara klart
signs-complete = { $rung }: upp till { $cap }
    INTE KLART: { $slow }
signs-road-owner = Fråga vägens ägare innan en skylt sätts upp.
signs-work = De som sätter upp skyltar syns och är ur trafiken.
signs-check = Kör varje körning en gång med listan och bocka av varje skylt från hytten.
