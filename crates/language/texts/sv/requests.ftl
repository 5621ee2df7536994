# Begäran om godkännande: ett brev till tillverkaren av varje däck.
request-title = Begäran om godkännande: { $size }, lastindex { $index }, hastighetssymbol { $symbol }
request-from = Från
request-from-who = { $responsible }, för { $survey }
request-tire = Däck
request-tire-what = { $size }, märklaster enligt { $body }; i vår inventering { $name }
request-rim = Fälg
request-rim-what = { $rim }, stämplat högsta { $maximum }
request-rim-unknown = inte känd för oss än, stämplat högsta { $maximum }; vi läser stämpeln och meddelar er
request-molded = Märkt högsta
request-so-far = Ert svar hittills
request-none-so-far = inget
request-lapsed = { $document }; det räknas inte längre
request-haul = Transport { $haul }: { $distance } per omlopp, { $cycles } omlopp per dag, luft från { $coldest } till { $warmest }. Trycken är kalla, vid { $reference }.
request-line = Rad
request-state = Last-
    läge
request-load = Last
request-speed = Hastighet
request-distance = Per omlopp
request-stay = I ett
request-hold = I ett
    min
request-wanted = Önskat
request-today = I dag
request-ground = Rad { $line }: marken vill ha { $pressure } eller mindre.
request-none-left = Rad { $line }: med vad vi har går inget tryck. Vad skulle ni godkänna?
request-how = Last: det sämsta däcket, med vägens lutning, olika tvillingar och vägningens fel. Per omlopp: väg på raden i ett omlopp. I ett: längsta väg och tid utan paus, stillastående inräknat. Önskat: det lägsta trycket i något däck som planen skulle köra.
request-please = Vänligen ange för varje rad
request-please-pressure = det lägsta kalla tryck ni godkänner;
request-please-hold = den längsta väg och tid i ett, om ni begränsar dem;
request-please-standing = en rad för en stillastående bil vars däck ändras under lastning ({ $time }), om ni ger en;
request-please-service = vad som räknas som rekommenderat tryck för ett däck i drift: er rad eller er vanliga tabell;
request-please-days = nummer, dag och sista dag för ert svar, och vilket däck och vilken fälg det gäller.
request-nothing = Inget att begära: tillverkaren eller standarden står för varje tryck som dessa transporter kör.
request-no-tire = inget däck '{ $tire }' väntar på svar; de som gör det: { $tires }
request-csv-written = Skrivet, att fyllas i av tillverkaren: { $file }
