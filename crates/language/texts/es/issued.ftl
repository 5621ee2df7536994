# Planes emitidos.
issued-written = Emitido { $plan }: { $file }
issued-units = Asignado a { $units }, desde { $from }
issued-until = Asignado a { $units }, de { $from } a { $until }
issued-no-units = Sin unidad asignada; emita el próximo con --assign
issued-unapproved = { $count ->
    [one] { $count } celda está por aprobar: el papel para conductores muestra ahí la presión de carretera o un guion.
   *[other] { $count } celdas están por aprobar: el papel para conductores muestra ahí la presión de carretera o un guion.
}
issued-nothing = Aún no hay planes emitidos; airtide plan SURVEY --haul NAME --issue lo hace.
issued-nothing-unit = Ningún plan está asignado a la unidad { $unit }.
issued-title = Planes emitidos, { $day }
issued-plan = Plan
issued-date = Emitido
issued-haul = Acarreo
issued-of-units = Unidades
issued-days = Vale
issued-open = desde { $from }
issued-closed = { $from } a { $until }
issued-in-force = Vigente
issued-in-force-none = no
issued-in-force-unassigned = sin unidad
issued-in-force-all = sí
issued-in-force-for = para { $units }
issued-standing = Superado
issued-current = no
issued-comments-only = no: solo cambiaron comentarios o espacios en { $files }
issued-touched = no: nada de lo que depende cambió en { $files }
issued-values = sí: { $files }
issued-cannot-tell = no se puede decir, su acarreo tiene errores: { $files }
issued-lapsed = sí: una aprobación o un permiso empezó o terminó
issued-added = { $file } (agregado)
issued-removed = { $file } (quitado)
issued-unit-plan = La unidad { $unit } anda con { $plan } el { $day }
issued-unit-none = No hay plan vigente para la unidad { $unit } el { $day }.
issued-unit-disputed = La unidad { $unit } tiene dos planes vigentes el { $day }: { $plans }. No anda con ninguno hasta emitir uno de nuevo.
issued-unit-stale = Este plan está superado; vea la tabla de arriba.
issued-ladder = Escala para el conductor, { $chains }, { $unit } como se fija el controlador
issued-rung = Escalón
issued-up-to = Hasta
issued-road-mark = Marcado *: la presión propia del escalón no está aprobada; la presión de carretera la reemplaza. Un guion: nadie respalda ahí una presión, o el escalón no se recorre así.
