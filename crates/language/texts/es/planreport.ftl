# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = El acarreo no dice nada de dinero, así que nada se puede decir del costo: llene [money] en su archivo.
planreport-what = Qué se planificó
planreport-why = Los neumáticos adecuados al suelo cuidan el camino y el neumático y traccionan mejor, siempre que cada presión corresponda a su carga y velocidad. Este informe da cada presión con el límite que la decidió, quién responde por ella, dónde debe empezar el conductor cada cambio y cuánto cuesta en tiempo. Cuánto gana un camino depende del camino, su humedad y la carga: algunos ensayos publicados no muestran ganancia.
planreport-effects-none = Este documento de plan no tiene efectos; se hizo antes de calcularlos, o el acarreo no se puede conducir.
planreport-late = Si el conductor pide tarde, o nunca
