# Demandes d'approbation : une lettre au fabricant de chaque pneu.
request-title = Demande d'approbation : { $size }, indice de charge { $index }, symbole de vitesse { $symbol }
request-from = De
request-from-who = { $responsible }, pour { $survey }
request-tire = Pneu
request-tire-what = { $size }, charges nominales selon { $body }; dans notre relevé { $name }
request-rim = Jante
request-rim-what = { $rim }, maximum estampé { $maximum }
request-rim-unknown = inconnue de nous pour l'instant, maximum estampé { $maximum }; nous lisons l'estampille et vous le disons
request-molded = Maximum moulé
request-so-far = Votre réponse à ce jour
request-none-so-far = aucune
request-lapsed = { $document }; elle ne compte plus
request-haul = Transport { $haul } : { $distance } par cycle, { $cycles } cycles par jour, air de { $coldest } à { $warmest }. Pressions à froid, à { $reference }.
request-line = Ligne
request-state = État de
    charge
request-load = Charge
request-speed = Vitesse
request-distance = Par cycle
request-stay = D'affilée
request-hold = D'affilée
    min
request-wanted = Voulu
request-today = Aujourd'hui
request-ground = Ligne { $line } : le sol voudrait { $pressure } ou moins.
request-none-left = Ligne { $line } : selon ce que nous avons, aucune pression n'est possible. Qu'approuveriez-vous?
request-how = Charge : le pire pneu, avec le dévers de la route, les jumelés inégaux et l'erreur de pesée. Par cycle : route sur cette ligne en un cycle. D'affilée : plus long bout de route et plus long temps sans pause, arrêts compris. Voulu : la pression la plus basse de tout pneu que le plan ferait rouler.
request-please = Merci de nous dire pour chaque ligne
request-please-pressure = la pression à froid la plus basse que vous approuvez;
request-please-hold = la plus longue route et le plus long temps d'affilée, si vous les limitez;
request-please-standing = une ligne pour un camion à l'arrêt dont les pneus changent pendant le chargement ({ $time }), si vous en donnez une;
request-please-service = ce qui compte comme pression recommandée d'un pneu en service : votre ligne, ou votre tableau ordinaire;
request-please-days = numéro, date et dernier jour de votre réponse, et le pneu et la jante visés.
request-nothing = Rien à demander : le fabricant ou la norme répond de chaque pression que ces transports roulent.
request-no-tire = aucun pneu « { $tire } » n'attend de réponse; ceux qui en attendent : { $tires }
request-csv-written = Écrit, à remplir par le fabricant : { $file }
