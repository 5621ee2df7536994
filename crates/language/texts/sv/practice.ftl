# Övning och omdöme.
practice-title = Övning av { $haul }, frö { $seed }
practice-arrived = Framme.
practice-not-arrived = INTE FRAMME: KÖRNINGEN SLUTADE PÅ VÄGEN
practice-no-surprise = Inget blev annorlunda än planerat.
practice-surprise = Annorlunda än planerat: { $what }
surprise-slow-compressor = en sliten kompressor
surprise-leak = ett läckage efter kompressorn
surprise-unexpected-stop = ett hinder på den lastade körningen
surprise-closed-lay-by = en vägficka var stängd
surprise-wrong-load-state = läget tom var ännu valt när de lastade trycken begärdes
surprise-soft-leg = en delsträcka uppmjukad av regn
practice-findings = Fynd
practice-no-finding = Inga fynd: körningen följde planen.
practice-finding = Fynd
practice-when = Efter
practice-at = Vid
practice-lasted = Under
practice-evidence = Vad som syntes
practice-severity = Vikt
practice-price = Mot planens egen körning
practice-item = Post
practice-yours = Din
practice-plans = Planen
practice-more = Mer
practice-cost = Kostnad
practice-no-price = inget pris
practice-item-time = Tid
practice-item-fuel = Bränsle
practice-item-compressor = Kompressorn arbetar
practice-item-changes = Begärda byten
practice-item-road = Hårdare än vägen vill
practice-item-tires = Under minimum, gånger tid
practice-cost-together = Tillsammans { $cost } { $currency }, av det som inventeringen har pris på.
practice-nothing-priced = Inventeringen har inga priser för transporten; ange dem i dess fil för att se pengar.
practice-on-the-real-road = En övning är inget körkort: lastbilen, vägen och lagen avgör på dagen.
practice-problems = { $count ->
    [one] 1 rad i körningen kan inte användas
   *[other] { $count } rader i körningen kan inte användas
}
step-practising = kör
