# Práctica y veredicto.
practice-title = Práctica de { $haul }, semilla { $seed }
practice-arrived = Llegó.
practice-not-arrived = NO LLEGÓ: EL VIAJE TERMINÓ EN EL CAMINO
practice-no-surprise = Nada fue distinto de lo planeado.
practice-surprise = Distinto de lo planeado: { $what }
surprise-slow-compressor = un compresor gastado
surprise-leak = una fuga tras el compresor
surprise-unexpected-stop = un obstáculo en el viaje cargado
surprise-closed-lay-by = un apartadero estaba cerrado
surprise-wrong-load-state = el estado vacío seguía elegido al pedir las presiones de carga
surprise-soft-leg = un tramo ablandado por la lluvia
practice-findings = Hallazgos
practice-no-finding = Sin hallazgos: el viaje siguió el plan.
practice-finding = Hallazgo
practice-when = Tras
practice-at = En
practice-lasted = Duración
practice-evidence = Lo que se vio
practice-severity = Peso
practice-price = Frente al viaje del plan
practice-item = Concepto
practice-yours = El suyo
practice-plans = Plan
practice-more = De más
practice-cost = Costo
practice-no-price = sin precio
practice-item-time = Tiempo
practice-item-fuel = Combustible
practice-item-compressor = Compresor en carga
practice-item-changes = Cambios pedidos
practice-item-road = Más duro de lo que quiere el camino
practice-item-tires = Bajo el mínimo, por tiempo
practice-cost-together = En total { $cost } { $currency }, de lo que tiene precio en el levantamiento.
practice-nothing-priced = El levantamiento no tiene precios para este acarreo; dé los precios en su archivo para ver dinero.
practice-on-the-real-road = Una práctica no es una licencia: el camión, el camino y la ley deciden ese día.
practice-problems = { $count ->
    [one] 1 línea del viaje no sirve
   *[other] { $count } líneas del viaje no sirven
}
step-practising = conduciendo
