# Registros hechos.
step-making = creando registros
make-log = Registro
make-frames = Tramas
make-lost = Perdidas
make-hours = Horas
make-distance = Recorrido
make-asked =
    Cambios
    pedidos
make-complete = terminados
make-forgotten = olvidados
make-truth-beside = Junto a cada registro está su verdad, en .truth.json. Nada en ellos es real.

make-fault = Falla
make-fault-range = Tamaño
make-fault-what = Qué es
make-fault-examples = Pida una con --fault, por ejemplo:

make-fault-tire-leak = un agujero en un neumático, tan ancho como dice el tamaño
make-fault-line-leak = un agujero en la línea de un canal
make-fault-line-off = la línea de un canal se soltó
make-fault-line-narrowed = una línea doblada u obstruida; el tamaño es lo que queda de su conductancia
make-fault-line-shut = la línea está cerrada antes de las ruedas
make-fault-fill-stuck-shut = la válvula de inflado no abre
make-fault-fill-slow = la válvula de inflado abre en parte; el tamaño es lo que queda
make-fault-exhaust-stuck-shut = el escape no abre
make-fault-exhaust-stuck-open = el escape no cierra
make-fault-exhaust-slow = el escape abre en parte; el tamaño es lo que queda
make-fault-exhaust-frozen = el escape no abre mientras hace menos de 0 °C
make-fault-wheel-end-shut = una rueda cerrada a mano que debería estar abierta
make-fault-core-left-in = un óbus de válvula dejado en un neumático; el tamaño es lo que queda de su conductancia
make-fault-weak-compressor = un compresor gastado o una toma obstruida; el tamaño es lo que queda de su caudal
make-fault-cut-in-off = el gobernador conecta a otra presión, desviada en el tamaño
make-fault-cut-out-off = el gobernador desconecta a otra presión, desviada en el tamaño
make-fault-protection-off = la válvula de protección actúa a otras presiones, desviadas en el tamaño
make-fault-brake-leak = los frenos pierden tanto aire libre
make-fault-gauge-off = el manómetro del controlador lee de más en el tamaño en un canal
make-fault-gauge-other-kind = el manómetro del controlador en un canal es sellado en vez de abierto al aire, o al revés
make-fault-hot-wheel = un freno que roza o un mal rodamiento calienta en el tamaño los neumáticos de una rueda
make-fault-sensor-off = el sensor de un neumático lee de más en el tamaño
make-fault-sensor-drift = el sensor de un neumático lee cada hora más, en el tamaño
make-fault-sensor-stuck = el sensor de un neumático repite lo que decía al empezar la falla
make-fault-sensor-dead = el sensor de un neumático no dice nada
make-fault-sensors-swapped = los sensores de dos neumáticos están cambiados
make-fault-log-gap = no se graba nada; necesita for=
make-fault-clock-off = el reloj del registrador adelanta en el tamaño
