# Lo que protege a las personas. Breve, claro, una cosa por línea.

# The mark of texts that no native speaker has reviewed yet; see the English file.
caution-unreviewed = Texto de seguridad no revisado por un hablante nativo; en caso de duda, lea el inglés.
    .reviewed = no

caution-maker-approves = El fabricante del neumático aprueba las presiones. Un número de aquí no es una aprobación.
caution-law-decides = La ley local y la autoridad vial deciden qué puede circular por sus caminos.
caution-trained-people = El trabajo en ruedas, llantas y frenos es de personas capacitadas y autorizadas.
caution-rollover = No se evalúa el riesgo de volcamiento.
caution-side-slope = Ningún escalón bajo en ladera ni en curvas cerradas.
caution-tipping = Ningún escalón bajo al volcar la tolva o al levantar carga.
caution-ice = No baje la presión para ganar agarre en hielo o nieve dura.
caution-speed = No pase el tope de velocidad. Primero suba la presión, después acelere.
caution-lower-cap-first = Baje al tope de velocidad menor antes de empezar a bajar la presión.
caution-wait-complete = Cargado, no se mueva hasta que el cambio termine en todos los circuitos.
caution-hold-limit = En el límite de permanencia, deténgase o suba la presión.
caution-brakes-first = Los frenos tienen prioridad sobre el aire. No se infla en una bajada larga ni justo antes.
caution-supply-low = El suministro puede caer a { $pressure } en este acarreo.
caution-unapproved = En papel para conductores, una celda sin aprobar muestra la presión de carretera o un guion.
caution-from-memory = Un valor se cita de memoria. Compárelo con su fuente antes de usarlo.
caution-cold-tires = Las presiones valen para neumáticos fríos a { $temperature }. Un neumático caliente marca más.
caution-service-rule = Con 80 % o menos de la presión necesaria, personas capacitadas retiran e inspeccionan el neumático. Es nuestra lectura de 29 CFR 1910.177: presión en frío del peor neumático frente a la carga y la velocidad reales.
caution-reads-only = Este programa solo lee los vehículos. No les envía nada.

# Advertencias de un plan, con sus números. Las celdas se reúnen en una lista.
caution-needs-approval = Necesita la aprobación del fabricante del neumático antes de rodar – { $cells }.
caution-under-recommended = Con 80 % o menos de { $recommended }, que el fabricante del neumático cuenta como recomendada. Según 29 CFR 1910.177, como lo leemos, personas capacitadas desinflan por completo ese neumático y lo inspeccionan antes de quitar la rueda – { $cells }.
caution-not-possible = No es posible, y este acarreo no lo pide – { $cells }.
caution-not-possible-wanted = No es posible, aunque este acarreo lo pide – { $cells }.
caution-slower-rung-used = { $load_state }: { $wanted } no es posible; se usa { $rung } en su lugar.
caution-fixed-group-too-soft = { $axle_group }, { $load_state }: su presión fija es demasiado baja para su carga. Súbala o quite carga.
caution-wheel-ends-shut = { $axle_group }: { $count } puntas de eje cerradas a mano; sus neumáticos no siguen un cambio.
caution-hand-set-too-low = { $cells }: { $wanted } se fijó a mano y está bajo el mínimo, { $lowest }. No se usó.
caution-above-ground-advice = El suelo pediría { $advice } o menos y los neumáticos no lo permiten – { $cells }.
caution-lead-does-not-fit = Punto de cambio { $number } en { $place }: el cambio no termina donde debe. Vea sus opciones.
caution-before-first-move = { $channel }: suba la presión antes de mover el camión tras la noche más fría.
caution-held-too-long = { $load_state }: { $rung } se mantiene por { $road }; su límite de permanencia es { $limit }.
caution-held-too-long-in-time = { $load_state }: { $rung } se mantiene { $time }, detenciones incluidas; su límite de permanencia es { $limit }.
caution-kept-low = { $load_state }: de { $from } a { $to } el camión sigue en { $rung }; subir a { $wanted } no terminaría en ese trecho.
caution-compressor-over-limit = El compresor trabaja { $longest } sin pausa; su límite es { $limit }.
caution-supply-touches-brakes = El suministro cae a { $lowest }; a { $threshold } se corta el aire de los neumáticos para que los frenos conserven el suyo.
caution-crossfall-not-assessed = { $load_state }: no se conoce la altura de la carga, así que la pendiente transversal no suma nada al lado bajo. Desconocido no es seguro: mídala.
caution-estimated-weight = Pesos estimados, no pesados: { $groups }.
caution-body-raised = { $load_state }: la tolva está levantada. Ningún escalón bajo, suelo firme y nivelado, sin girar; bájela antes de seguir.
caution-treated-as = { $load_state }: no se conocen sus cargas; se usan las de { $other_state }. Péselo.
caution-approval-expired = { $tire }: su aprobación ({ $document }) venció el { $date }. Sus filas no se usan hasta renovarla.
caution-approval-tire-changed = { $tire }: su aprobación ({ $document }) se dio para otro neumático. Sus filas no se usan.
caution-approval-rim-changed = { $tire }: su aprobación ({ $document }) se dio para otra llanta. Sus filas no se usan.
caution-lead-fits-only-nominally = Punto de cambio { $number } en { $place }: más de un viaje de cada diez no termina donde debe.
caution-wheel-valves-shut-early = { $channel }: con el mayor frío, las válvulas de rueda se cierran antes de llegar al escalón más bajo.
caution-driving-habits = Se supone cuánto frena, tira y dobla el conductor (práctica común, sin fuente).
caution-not-driven = El acarreo no se puede recorrer según el levantamiento: { $reason }.

# Tras una pérdida rápida de presión, en este orden.
caution-loss-stop-filling = Tras una pérdida rápida: deje de inflar desde la cabina.
caution-loss-slow = Reduzca con suavidad. Sin frenazos ni golpes de volante.
caution-loss-stop = Deténgase en suelo firme. Ponga cuñas. Hágase ver.
caution-loss-look = Mire desde el lado de la banda de rodamiento, a distancia.
caution-loss-stay-away = Humo, bulto, calor, olor a quemado, rayos o línea eléctrica: aléjese y llame.
caution-loss-isolate = Cierre puntas de eje solo después de eso.
caution-loss-trained = Cerrar un venteo o inflar por una toma de prueba es de personas capacitadas.

# Mecánicos.
caution-mechanic-engine = Motor apagado.
caution-mechanic-isolate = Aísle el sistema.
caution-mechanic-vent = Vacíe la línea de aire antes de soltar una tuerca o manguera.

# Atascado.
caution-stuck = Atascado: siga el procedimiento impreso o niéguese. Por teléfono no se inventa ningún número.
