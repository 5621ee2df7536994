# Letreros: por poner o por revisar.
signs-how = Los letreros van del lado del conductor, de cara al viaje nombrado, y se leen a tiempo desde la cabina. Mida desde la seña, en el sentido de la marcha.
signs-facing = Letreros de cara al viaje { $load_state }
signs-board = Letrero
signs-words = Texto
signs-for = Pertenece a
signs-stands = Puesto
signs-of-change = punto de cambio { $number }
signs-where-complete = donde el cambio debe estar terminado
signs-complete = { $rung }: hasta { $cap }
    NO TERMINADO: { $slow }
signs-road-owner = Pregunte al dueño del camino antes de poner un letrero.
signs-work = Quien pone letreros se hace ver y está fuera del tránsito.
signs-check = Haga cada viaje una vez con la lista y marque cada letrero desde la cabina.
