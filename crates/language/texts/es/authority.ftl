# The report to a road authority.
authority-whose = De quién es el camino
authority-private = privado
authority-public = público
authority-us-public = público, Estados Unidos
authority-permits = Términos de los permisos
authority-permit = Permiso
authority-pressures = Presión
authority-cold = neumáticos fríos
authority-as-read = como se lee en el camino
authority-tolerance = Tolerancia
authority-permit-speed = Velocidad
authority-mass = Masa bruta
authority-interval = Registrado cada
authority-until = vale hasta { $day }
authority-not-in-force = NO VIGENTE el día del plan
authority-no-permit = El levantamiento no tiene permiso para esta ruta.
authority-uncovered = Camino público sin permiso en el levantamiento: { $legs }.
