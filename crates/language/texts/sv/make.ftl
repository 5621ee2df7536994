# Gjorda loggar.
step-making = gör loggar
make-log = Logg
make-frames = Ramar
make-lost = Förlorade
make-hours = Timmar
make-distance = Kört
make-asked =
    Ändringar
    begärda
make-complete = klara
make-forgotten = glömda
make-truth-beside = Bredvid varje logg ligger dess sanning, som .truth.json. Inget i dem är verkligt.

make-fault = Fel
make-fault-range = Storlek
make-fault-what = Vad det är
make-fault-examples = Begär ett med --fault, till exempel:

make-fault-tire-leak = ett hål i ett däck, så brett som storleken säger
make-fault-line-leak = ett hål i en kanals ledning
make-fault-line-off = en kanals ledning har lossnat
make-fault-line-narrowed = en vikt eller igensatt ledning; storleken är vad som är kvar av dess konduktans
make-fault-line-shut = ledningen är avstängd före hjulen
make-fault-fill-stuck-shut = fyllventilen öppnar inte
make-fault-fill-slow = fyllventilen öppnar delvis; storleken är vad som är kvar
make-fault-exhaust-stuck-shut = avluftningen öppnar inte
make-fault-exhaust-stuck-open = avluftningen stänger inte
make-fault-exhaust-slow = avluftningen öppnar delvis; storleken är vad som är kvar
make-fault-exhaust-frozen = avluftningen öppnar inte medan det är kallare än 0 °C
make-fault-wheel-end-shut = en hjulände stängd för hand som borde vara öppen
make-fault-core-left-in = en ventilinsats kvar i ett däck; storleken är vad som är kvar av dess konduktans
make-fault-weak-compressor = en sliten kompressor eller igensatt insugning; storleken är vad som är kvar av dess flöde
make-fault-cut-in-off = regulatorn slår till vid ett annat tryck, fel med storleken
make-fault-cut-out-off = regulatorn slår från vid ett annat tryck, fel med storleken
make-fault-protection-off = skyddsventilen arbetar vid andra tryck, fel med storleken
make-fault-brake-leak = bromsarna förlorar så mycket fri luft
make-fault-gauge-off = styrningens mätare visar för högt med storleken på en kanal
make-fault-gauge-other-kind = styrningens mätare på en kanal är sluten i stället för öppen mot luften, eller tvärtom
make-fault-hot-wheel = en släpande broms eller ett dåligt lager värmer däcken i en hjulände med storleken
make-fault-sensor-off = ett däcks givare visar för högt med storleken
make-fault-sensor-drift = ett däcks givare visar mer med storleken varje timme
make-fault-sensor-stuck = ett däcks givare säger vad den sade när felet började
make-fault-sensor-dead = ett däcks givare säger inget
make-fault-sensors-swapped = givarna i två däck har bytt plats
make-fault-log-gap = inget spelas in; det behöver for=
make-fault-clock-off = loggerns klocka går före med storleken
