# O que os comandos dizem, na saída de erro.
check-errors = { $count ->
    [0] sem erros
    [one] { $count } erro
   *[other] { $count } erros
}
check-warnings = { $count ->
    [0] sem alertas
    [one] { $count } alerta
   *[other] { $count } alertas
}
check-import = As linhas do fabricante para { $tire } são lidas de { $table } assim:
check-sound = Pronto para planejar: { $hauls }
check-left-out = Fica de fora até corrigir os erros: { $hauls }
new-next = A seguir: airtide check { $folder }, depois airtide plan { $folder }
plan-chart-written = Gráfico gravado: { $file }
step-planning = planejando
step-simulating = simulando
cycles-tenths = { $haul }: um ciclo em dez leva { $p10 } min ou menos, o do meio { $p50 } min, nove em dez { $p90 } min ou menos
serve-open = A página está em { $address }
serve-open-shared = Para aparelhos da rede local: { $address }
serve-code = Código para o próximo aparelho: { $code }
serve-not-encrypted = O que esse aparelho vê e envia não é cifrado: compartilhe numa rede de confiança.
serve-stop = Pare com Ctrl+C.
