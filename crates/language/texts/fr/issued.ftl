# Plans émis.
issued-written = Émis { $plan } : { $file }
issued-units = Assigné à { $units }, à partir du { $from }
issued-until = Assigné à { $units }, du { $from } au { $until }
issued-no-units = Assigné à aucune unité; émettre le suivant avec --assign
issued-unapproved = { $count ->
    [one] { $count } case est à approuver : le papier pour chauffeurs y montre la pression de route ou un tiret.
   *[other] { $count } cases sont à approuver : le papier pour chauffeurs y montre la pression de route ou un tiret.
}
issued-nothing = Aucun plan n'est encore émis; airtide plan SURVEY --haul NAME --issue le fait.
issued-nothing-unit = Aucun plan n'est assigné à l'unité { $unit }.
issued-title = Plans émis, { $day }
issued-plan = Plan
issued-date = Émis le
issued-haul = Transport
issued-of-units = Unités
issued-days = Valable
issued-open = dès { $from }
issued-closed = { $from } à { $until }
issued-in-force = En vigueur
issued-in-force-none = non
issued-in-force-unassigned = aucune unité
issued-in-force-all = oui
issued-in-force-for = pour { $units }
issued-standing = Dépassé
issued-current = non
issued-comments-only = non : seuls des commentaires ou espaces ont changé dans { $files }
issued-touched = non : rien dont il dépend n'a changé dans { $files }
issued-values = oui : { $files }
issued-cannot-tell = impossible à dire, son transport a des erreurs : { $files }
issued-lapsed = oui : une approbation ou un permis a commencé ou pris fin
issued-added = { $file } (ajouté)
issued-removed = { $file } (retiré)
issued-unit-plan = L'unité { $unit } roule selon { $plan } le { $day }
issued-unit-none = Aucun plan n'est en vigueur pour l'unité { $unit } le { $day }.
issued-unit-disputed = L'unité { $unit } a deux plans en vigueur le { $day } : { $plans }. Elle ne roule selon aucun avant que l'un soit émis de nouveau.
issued-unit-stale = Ce plan est dépassé; voir le tableau ci-dessus.
issued-ladder = Échelle pour le chauffeur, { $chains }, { $unit } au réglage du contrôleur
issued-rung = Échelon
issued-up-to = Jusqu'à
issued-road-mark = Marqué * : la pression propre de l'échelon n'est pas approuvée; la pression de route la remplace. Un tiret : personne ne répond d'une pression là, ou l'échelon ne se roule pas ainsi.
