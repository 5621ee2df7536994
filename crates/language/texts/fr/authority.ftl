# The report to a road authority.
authority-whose = À qui la route
authority-private = privée
authority-public = publique
authority-us-public = publique, États-Unis
authority-permits = Conditions des permis
authority-permit = Permis
authority-pressures = Pression
authority-cold = pneus froids
authority-as-read = telle que lue sur la route
authority-tolerance = Tolérance
authority-permit-speed = Vitesse
authority-mass = Masse brute
authority-interval = Noté toutes les
authority-until = valable jusqu'au { $day }
authority-not-in-force = PAS EN VIGUEUR le jour du plan
authority-no-permit = Le relevé n'a aucun permis pour cette route.
authority-uncovered = Route publique sans permis dans le relevé : { $legs }.
