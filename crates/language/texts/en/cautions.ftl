# What protects people. Short, plain, one thing a line.

# Stands beside the safety texts of this language as long as `reviewed` is not yes. A native speaker
# of the trade who has read cautions.ftl and now.ftl of the language sets it to yes; whoever changes
# a safety text of the language afterwards sets it back to no.
caution-unreviewed = Safety text not reviewed by a native speaker.
    .reviewed = yes

caution-maker-approves = The tire maker approves pressures. A number here is not an approval.
caution-law-decides = Local law and the road authority decide what may run on their roads.
caution-trained-people = Wheel, rim and brake work belongs to trained and licensed people.
caution-rollover = Rollover is not assessed.
caution-side-slope = No low rung on a side slope or in tight curves.
caution-tipping = No low rung while tipping or lifting.
caution-ice = Do not lower pressure for grip on ice or hard snow.
caution-speed = Keep under the speed cap. Raise first, then go faster.
caution-lower-cap-first = Slow to the lower speed cap before you start lowering.
caution-wait-complete = Do not move off laden before the change is complete on every channel.
caution-hold-limit = At the hold limit, stop or raise.
caution-brakes-first = Brakes keep first claim on air. No raising on or just before a long descent.
caution-supply-low = Supply may fall to { $pressure } on this haul.
caution-unapproved = Unapproved cells show road pressure or a dash on paper for drivers.
caution-from-memory = A value rests on memory. Compare it with its source before use.
caution-cold-tires = Pressures are for cold tires at { $temperature }. A warm tire reads higher.
caution-service-rule = At or under 80 % of the pressure needed, a tire is taken off and inspected by trained people. This is our reading of 29 CFR 1910.177: cold pressure of the worst tire against the load and speed actually run.
caution-reads-only = This program only reads vehicles. It sends nothing to them.

# Cautions of a plan, with their numbers. Cells are joined in one list.
caution-needs-approval = Needs the tire maker's approval before it is driven – { $cells }.
caution-under-recommended = At or under 80 % of { $recommended }, which the tire maker counts as recommended. By 29 CFR 1910.177, as we read it, trained people deflate such a tire completely and inspect it before its wheel comes off – { $cells }.
caution-not-possible = Not possible, and not wanted on this haul – { $cells }.
caution-not-possible-wanted = Not possible, though this haul wants it – { $cells }.
caution-slower-rung-used = { $load_state }: { $wanted } is not possible; { $rung } is used in its place.
caution-fixed-group-too-soft = { $axle_group }, { $load_state }: its fixed pressure is too low for its load. Raise it or take load off.
caution-wheel-ends-shut = { $axle_group }: { $count } wheel ends are shut by hand; their tires do not follow a change.
caution-hand-set-too-low = { $cells }: { $wanted } was set by hand and lies under the lowest, { $lowest }. It was not used.
caution-above-ground-advice = The ground would like { $advice } or less and the tires do not allow it – { $cells }.
caution-lead-does-not-fit = Change point { $number } at { $place }: the change is not complete where it must be. See its options.
caution-before-first-move = { $channel }: raise before the first move after the coldest night.
caution-held-too-long = { $load_state }: { $rung } is held for { $road }; its hold limit is { $limit }.
caution-held-too-long-in-time = { $load_state }: { $rung } is held for { $time }, standing included; its hold limit is { $limit }.
caution-kept-low = { $load_state }: from { $from } to { $to } the truck stays on { $rung }; a raise to { $wanted } would not be complete within that stretch.
caution-compressor-over-limit = The compressor runs { $longest } without a pause; its limit is { $limit }.
caution-supply-touches-brakes = Supply falls to { $lowest }; at { $threshold } tire air stops, so that the brakes keep theirs.
caution-crossfall-not-assessed = { $load_state }: the height of the load is not known, so crossfall adds nothing to the low side. Unknown is not safe: measure it.
caution-estimated-weight = Weights are estimates, not weighed: { $groups }.
caution-body-raised = { $load_state }: the body is raised. No low rung, level firm ground, no turning; lower it before driving on.
caution-treated-as = { $load_state }: its loads are not known, so those of { $other_state } are used. Weigh it.
caution-approval-expired = { $tire }: its approval ({ $document }) expired { $date }. Its rows are not used until it is renewed.
caution-approval-tire-changed = { $tire }: its approval ({ $document }) was given for another tire. Its rows are not used.
caution-approval-rim-changed = { $tire }: its approval ({ $document }) was given for another rim. Its rows are not used.
caution-lead-fits-only-nominally = Change point { $number } at { $place }: more than one run in ten is not complete where it must be.
caution-wheel-valves-shut-early = { $channel }: at the coldest the wheel valves close before the lowest rung is reached.
caution-driving-habits = How hard the driver brakes, pulls and corners is assumed (common practice, no source).
caution-not-driven = The haul cannot be driven as surveyed: { $reason }.

# After a fast loss of pressure, in this order.
caution-loss-stop-filling = After a fast loss: stop filling from the cab.
caution-loss-slow = Slow gently. No hard braking or steering.
caution-loss-stop = Stop on firm ground. Chock. Be seen.
caution-loss-look = Look from the tread side, at a distance.
caution-loss-stay-away = Smoke, bulge, heat, burnt smell, lightning or a power line: stay away and call.
caution-loss-isolate = Shut off wheel ends only after that.
caution-loss-trained = Shutting a vent or filling through a test port is for trained people.

# Mechanics.
caution-mechanic-engine = Engine off.
caution-mechanic-isolate = Isolate the system.
caution-mechanic-vent = Vent the line before you loosen any nut or hose.

# When stuck.
caution-stuck = Stuck: follow the printed procedure or refuse. No number is made up on the phone.
