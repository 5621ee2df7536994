# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = Transporten säger inget om pengar, så inget kan sägas om kostnad: fyll i [money] i dess fil.
planreport-what = Vad som planerades
planreport-why = Däck som passar marken skonar väg och däck och drar bättre, så länge varje tryck passar sin last och hastighet. Rapporten ger varje tryck med gränsen som avgjorde det, vem som står för det, var föraren måste börja varje ändring, och vad det kostar i tid. Hur mycket en väg vinner beror på vägen, dess fukt och lasten: vissa publicerade försök visar ingen vinst.
planreport-effects-none = Plandokumentet har inga effekter; det gjordes innan de räknades ut, eller så kan transporten inte köras.
planreport-late = Om föraren begär sent, eller aldrig
