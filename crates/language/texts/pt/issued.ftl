# Planos emitidos.
issued-written = Emitido { $plan }: { $file }
issued-units = Atribuído a { $units }, desde { $from }
issued-until = Atribuído a { $units }, de { $from } a { $until }
issued-no-units = Sem unidade atribuída; emita o próximo com --assign
issued-unapproved = { $count ->
    [one] { $count } célula está por aprovar: o papel para motoristas mostra ali a pressão de estrada ou um traço.
   *[other] { $count } células estão por aprovar: o papel para motoristas mostra ali a pressão de estrada ou um traço.
}
issued-nothing = Nenhum plano emitido ainda; airtide plan SURVEY --haul NAME --issue faz isso.
issued-nothing-unit = Nenhum plano está atribuído à unidade { $unit }.
issued-title = Planos emitidos, { $day }
issued-plan = Plano
issued-date = Emitido
issued-haul = Transporte
issued-of-units = Unidades
issued-days = Vale
issued-open = desde { $from }
issued-closed = { $from } a { $until }
issued-in-force = Em vigor
issued-in-force-none = não
issued-in-force-unassigned = sem unidade
issued-in-force-all = sim
issued-in-force-for = para { $units }
issued-standing = Superado
issued-current = não
issued-comments-only = não: só comentários ou espaços mudaram em { $files }
issued-touched = não: nada de que ele depende mudou em { $files }
issued-values = sim: { $files }
issued-cannot-tell = não dá para dizer, seu transporte tem erros: { $files }
issued-lapsed = sim: uma aprovação ou licença começou ou terminou
issued-added = { $file } (acrescentado)
issued-removed = { $file } (retirado)
issued-unit-plan = A unidade { $unit } roda com { $plan } em { $day }
issued-unit-none = Nenhum plano está em vigor para a unidade { $unit } em { $day }.
issued-unit-disputed = A unidade { $unit } tem dois planos em vigor em { $day }: { $plans }. Não roda com nenhum até que um seja emitido de novo.
issued-unit-stale = Este plano está superado; veja a tabela acima.
issued-ladder = Escala para o motorista, { $chains }, { $unit } como o controlador é ajustado
issued-rung = Degrau
issued-up-to = Até
issued-road-mark = Marcado *: a pressão própria do degrau não está aprovada; a pressão de estrada fica no lugar. Um traço: ninguém garante uma pressão ali, ou o degrau não é rodado assim.
