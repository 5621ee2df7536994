# Ce qui décide la pression la plus basse et la plus haute d'une plage.
limit-load-table = tableau charges-pressions
limit-load-power-law = charge et point nominal (loi de puissance)
limit-low-speed-allowance = tolérance du tableau à basse vitesse
limit-maker-row = ligne approuvée par le fabricant du pneu
limit-lowest-row = plus basse publiée : tableaux et pratique ne descendent pas plus bas à ce plafond
limit-deflection = écrasement pour le plafond de vitesse
limit-bead = talon et jante
limit-wheel-valve = valve de roue à fermeture automatique, au plus froid
limit-flat-rule = chemin public : sous la moitié du maximum moulé, le pneu compte comme à plat
limit-roadside-hot = chemin public : contrôle routier d'un pneu chaud
limit-permit-minimum = permis, minimum
limit-permit-maximum = permis, maximum
limit-dual-gap = écart entre jumelés
limit-mate-diameter = diamètre du jumelé voisin
limit-chains = chaînes : pression de route
limit-chains-shared = chaînes sur un autre groupe du même circuit d'air
limit-turning-scrub = ripage en virage
limit-tire-heat = chaleur du pneu
limit-tire-maximum = maximum moulé sur le pneu
limit-rim-maximum = jante
limit-supply = pression d'alimentation sur laquelle compter
limit-ground = sol (conseil)
limit-fixed = fixe : ce groupe n'a pas de circuit d'air
limit-hand-set = réglé à la main dans le relevé
limit-other-group = autre groupe d'essieux du même circuit d'air
limit-service-rule = 80 % de la pression requise
limit-heavier-state = état de charge inconnu : état plus lourd suivant utilisé
limit-unknown-trailer = remorque inconnue : pression de route
limit-restricted-speed = tableau à vitesse limitée

# La même chose dans une colonne.
limit-brief-load-table = tableau charges
limit-brief-restricted-speed = tableau vitesse
limit-brief-maker-row = ligne fabricant
limit-brief-deflection = écrasement
limit-brief-bead = talon
limit-brief-lowest-row = plus bas publié
limit-brief-wheel-valve = valve de roue
limit-brief-flat-rule = moitié du max
limit-brief-roadside-hot = contrôle à chaud
limit-brief-dual-gap = écart jumelés
limit-brief-chains = chaînes
limit-brief-turning-scrub = ripage
limit-brief-tire-heat = chaleur pneu
limit-brief-tire-maximum = maximum moulé
limit-brief-rim-maximum = jante
limit-brief-supply = alimentation
limit-brief-permit-minimum = permis
limit-brief-permit-maximum = permis
limit-brief-ground = sol (conseil)

# Pourquoi une case n'est pas possible.
why-overloaded = le pire pneu porte { $load }, plus que les { $highest } permis à { $cap }
why-too-fast = le plafond de vitesse de { $cap } dépasse les { $rated } du symbole de vitesse du pneu
why-too-hot = l'air du pneu dépasse { $highest } à toute pression
why-duals-touch = les jumelés se touchent à toute pression avec un entraxe de { $spacing }
why-no-deflection = aucune pression ne garde l'écrasement sous { $share }
why-empty-supply = il faut régler à { $lowest } et l'alimentation atteint { $highest }
why-empty-rim = il faut régler à { $lowest } et la jante supporte { $highest }
why-empty-tire = il faut régler à { $lowest } et le maximum moulé est de { $highest }
why-empty-permit = il faut régler à { $lowest } et le permis admet { $highest }
why-not-rated = le pneu n'a pas de charge nominale pour ce montage

# La même chose dans une colonne.
why-brief-overloaded = SURCHARGE
why-brief-too-fast = trop vite
why-brief-too-hot = trop chaud
why-brief-duals-touch = jumelés touchent
why-brief-no-deflection = écrasement
why-brief-not-rated = sans charge nominale
why-brief-empty-supply = au-delà alimentation
why-brief-empty-rim = au-delà jante
why-brief-empty-tire = au-delà max moulé
why-brief-empty-permit = au-delà permis
