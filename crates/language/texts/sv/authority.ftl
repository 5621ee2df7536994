# The report to a road authority.
authority-whose = Vems väg
authority-private = enskild
authority-public = allmän
authority-us-public = allmän, USA
authority-permits = Tillståndens villkor
authority-permit = Tillstånd
authority-pressures = Tryck
authority-cold = kalla däck
authority-as-read = som avläst på vägen
authority-tolerance = Tolerans
authority-permit-speed = Hastighet
authority-mass = Bruttovikt
authority-interval = Loggat var
authority-until = gäller till { $day }
authority-not-in-force = GÄLLER INTE på planens dag
authority-no-permit = Inventeringen har inget tillstånd för denna rutt.
authority-uncovered = Allmän väg utan tillstånd i inventeringen: { $legs }.
