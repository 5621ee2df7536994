# Issued plans.
issued-written = Issued { $plan }: { $file }
issued-units = Assigned to { $units }, from { $from }
issued-until = Assigned to { $units }, from { $from } to { $until }
issued-no-units = Assigned to no unit; issue the next one with --assign
issued-unapproved = { $count ->
    [one] { $count } cell needs approval: paper for drivers shows road pressure or a dash for it.
   *[other] { $count } cells need approval: paper for drivers shows road pressure or a dash for them.
}
issued-nothing = No plan is issued yet; airtide plan SURVEY --haul NAME --issue does it.
issued-nothing-unit = No plan is assigned to unit { $unit }.
issued-title = Issued plans, { $day }
issued-plan = Plan
issued-date = Issued
issued-haul = Haul
issued-of-units = Units
issued-days = Holds
issued-open = from { $from }
issued-closed = { $from } to { $until }
issued-in-force = In force
issued-in-force-none = no
issued-in-force-unassigned = no unit
issued-in-force-all = yes
issued-in-force-for = for { $units }
issued-standing = Stale
issued-current = no
issued-comments-only = no: only comments or spacing changed in { $files }
issued-touched = no: nothing it rests on changed in { $files }
issued-values = yes: { $files }
issued-cannot-tell = cannot tell, its haul has errors: { $files }
issued-lapsed = yes: an approval or permit began or ended
issued-added = { $file } (added)
issued-removed = { $file } (removed)
issued-unit-plan = Unit { $unit } drives by { $plan } on { $day }
issued-unit-none = No plan is in force for unit { $unit } on { $day }.
issued-unit-disputed = Unit { $unit } has two plans in force on { $day }: { $plans }. It drives by neither until one is issued again.
issued-unit-stale = This plan is stale; see the table above.
issued-ladder = Ladder for the driver, { $chains }, { $unit } as the controller is set
issued-rung = Rung
issued-up-to = Up to
issued-road-mark = Marked *: the own pressure of the rung is not approved; road pressure stands in for it. A dash: nobody stands behind a pressure there, or the rung is not run so.
