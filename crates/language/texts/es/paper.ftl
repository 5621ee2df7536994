# Lo que tienen en común los documentos en papel.
paper-kind-driver-card = Tarjeta del conductor
paper-kind-sign-list = Lista de letreros
paper-kind-driver-lesson = Lección del conductor
paper-kind-plan-report = Informe del plan
paper-kind-authority-report = Informe a la autoridad vial
paper-issued = Plan { $plan }, emitido el { $date }
paper-draft = BORRADOR, sin emitir: no es para el conductor
paper-page = Página
paper-about = Acarreo { $haul }, { $combination }
paper-about-units = Acarreo { $haul }, { $combination }, unidades { $units }
paper-sources = Fuentes
paper-source-what = Qué se apoya en ella
paper-source = Fuente
paper-source-standing = Qué tan segura es
paper-drawing = Dibujo
paper-fill-in = Para llenar
paper-unit = Unidad

# El comando.
paper-written = { $kind }: { $file }
paper-draft-note = borrador: el plan del relevamiento actual no está emitido. Planes emitidos de este acarreo: { $plans }; imprima uno con --plan.
paper-draft-note-none = borrador: no hay plan emitido de este acarreo; airtide plan SURVEY --haul NAME --issue lo emite.
paper-kind-setup-sheet = Hoja de ajuste
paper-kind-commissioning-record = Acta de puesta en marcha
paper-kind-service-list = Lista de servicio
paper-kind-recovery-procedure = Procedimiento para salir de un atasco
paper-kind-approval-request = Solicitud de aprobación
paper-more-pages = ocupa { $pages } páginas donde se piensan { $most }: en un tamaño legible, { $channels } circuitos de aire y { $changes } puntos de cambio no caben en { $paper }. Un --paper más grande puede bastar.
