# Lo que dicen los comandos, en la salida de error.
check-errors = { $count ->
    [0] sin errores
    [one] { $count } error
   *[other] { $count } errores
}
check-warnings = { $count ->
    [0] sin avisos
    [one] { $count } aviso
   *[other] { $count } avisos
}
check-import = Las filas del fabricante para { $tire } se leen de { $table } así:
check-sound = Listo para planificar: { $hauls }
check-left-out = Queda fuera hasta corregir los errores: { $hauls }
new-next = Sigue: airtide check { $folder }, después airtide plan { $folder }
plan-chart-written = Gráfico escrito: { $file }
step-planning = planificando
step-simulating = simulando
cycles-tenths = { $haul }: un ciclo de diez toma { $p10 } min o menos, el del medio { $p50 } min, nueve de diez { $p90 } min o menos
serve-open = La página está en { $address }
serve-open-shared = Para equipos de la red local: { $address }
serve-code = Código para el próximo equipo: { $code }
serve-not-encrypted = Lo que ese equipo ve y envía no va cifrado: comparta en una red de confianza.
serve-stop = Detener con Ctrl+C.
