# The report to a road authority.
authority-whose = Wessen Straße
authority-private = privat
authority-public = öffentlich
authority-us-public = öffentlich, USA
authority-permits = Auflagen der Genehmigungen
authority-permit = Genehmigung
authority-pressures = Druck
authority-cold = kalte Reifen
authority-as-read = wie auf der Straße abgelesen
authority-tolerance = Toleranz
authority-permit-speed = Tempo
authority-mass = Gesamtmasse
authority-interval = Aufgezeichnet alle
authority-until = gilt bis { $day }
authority-not-in-force = NICHT GÜLTIG am Tag des Plans
authority-no-permit = Die Aufnahme hat keine Genehmigung für diese Strecke.
authority-uncovered = Öffentliche Straße ohne Genehmigung in der Aufnahme: { $legs }.
