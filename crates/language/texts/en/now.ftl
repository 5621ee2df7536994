# The call from the road.
now-go = GO, NO FASTER THAN { $speed }
now-go-slow = NO FASTER THAN { $speed }, AND ONLY TO WHERE IT CAN BE MENDED
now-walk = WALKING PACE, OFF THE ROAD. THEN GAUGE.
now-stop = STOP

now-how-far = How far
now-far-nowhere = not at all until it is mended
now-far-off-the-road = off the road to the nearest safe place, no further
now-far-hold = { $limit }; then stop or raise
now-far-next-stop = to the next stop; gauge again there
now-truck = Truck
now-truck-unit = unit { $unit }, { $combination }, haul { $haul }
now-truck-combination = { $combination }, haul { $haul }
now-holds-rung = Holds rung
now-why = Why
now-next = Check next
now-safety = Always
now-groups = Axle group by axle group
now-read = Gauge
now-air = Tire air
now-at-most = At most
now-kept = not gauged
now-not-gauged = NOT GAUGED
now-set-for = What was set, against what this load needs
now-was-set = Was set
now-needed = Needed

# Why.
now-reason-not-gauged = { $axle_group }: nobody gauged it. What is not known does not count as good.
now-reason-kept-as-surveyed = { $axle_group }: not gauged; taken at the { $kept } cold that the survey keeps it at.
now-reason-under-service-share = { $axle_group }: { $cold } cold is { $share } of the { $needed } its load needs at walking pace. At or under 80 % do not put air in.
now-reason-too-soft = { $axle_group }: { $cold } cold is too soft for any speed with this load; the least is { $needed } cold.
now-reason-too-soft-approved = { $axle_group }: { $cold } cold is under { $needed }, the least that the tire maker or a standard stands behind for this load.
now-reason-nothing-approved = { $axle_group }: at { $cold } cold nobody stands behind any speed with this load.
now-reason-cannot-be-reached = { $axle_group }: { $reading } is not above { $closes }, where its wheel valves close. Air from the cab does not reach it.
now-reason-above-highest = { $axle_group }: { $cold } cold is above the highest, { $highest } ({ $governed_by }). Lower it before going on.
now-reason-mates-differ = { $axle_group }: the tires of a dual differ by { $difference }; 5 psi (34 kPa) is the most. The softer one counts.
now-reason-overloaded = { $axle_group }: it carries { $load }, more than the { $highest } it bears. No pressure mends that.
now-reason-impossible = { $axle_group }: no pressure will do: { $why }.
now-reason-sets-the-speed = { $axle_group } sets the speed. Next above it: { $governed_by }.
now-reason-load-unknown = Nobody knows the load: it must stand every load state, { $load_state } the heaviest.
now-reason-warmth-unknown = Nobody said whether the tires were cold: they count as warm, so as softer than they read.
now-reason-ran-last-hour = It ran in the last hour: no tire is cold, whatever was said.
now-reason-trailer-unknown = Nobody knows the trailer: it needs road pressure at every speed.
now-reason-trailer-left-low = The trailer was left on low pressure: raise it and check it against the plan before it moves.
now-reason-trailer-left-shut = The trailer was left with its wheel ends shut: open them and check it against the plan before it moves.
now-reason-trailer-other-tires = The trailer has other tires; those were judged.
now-reason-other-load-state-selected = The controller still holds the pressures of { $load_state }.
now-reason-held-shortly = Rung { $rung } is held for a short time only.
now-reason-unit-slip = { $axle_group }: { $reading } looks like a number in { $meant } given in { $typed }. It was taken as given.
now-reason-unapproved-counted = FOR THE SPECIALIST, NOT FOR THE DRIVER: pressures nobody approved were counted.

# What to check or do next.
now-check-gauge = { $axle_group }: gauge every tire by hand, the inner ones too.
now-check-raise = { $channel }: raise to { $set } (rung { $rung }) standing, wait until complete, and gauge again.
now-check-lower = { $axle_group }: let the tires cool, then lower to { $highest } cold or less.
now-check-leave-to-trained-people = { $axle_group }: do not fill. Trained people let the air out, take the wheel off and look inside.
now-check-deflate-before-service = { $axle_group }: it may run so, but the tire maker counts { $recommended } as recommended. Before a wheel comes off, trained people deflate it completely and inspect it.
now-check-find-why-softer = { $axle_group }: find why one tire is softer: leak, shut wheel end or blocked line.
now-check-wheel-ends-shut = { $axle_group }: { $count } wheel ends are shut by hand and do not follow; gauge those tires one by one.
now-check-raise-before-parking = { $axle_group }: raise before parking; on the coldest night its wheel valves would close.
now-check-ask-maker = { $channel }: no pressure that anybody stands behind can be set for this load. Ask the tire maker before it is driven so.
now-check-find-out-load = Find out what is loaded, or weigh it.
now-check-take-load-off = { $axle_group }: take load off.
now-check-read-sidewalls = Trailer: read size, load range and molded maximum on every sidewall, and compare.
now-check-open-wheel-ends = Trailer: open every wheel end.
now-check-select-load-state = Select { $load_state }, wait until complete on every channel, and gauge.
now-check-read-unit-again = { $axle_group }: read the gauge again, with its unit.
now-check-ask-again = Then ask again with what the gauge shows.

# The same as a table for a card.
now-table-title = Highest speed by gauge, haul { $haul }
now-table-cold = For cold tires: standing for three hours, or moved a mile at most.
now-table-warm = For warm tires.
now-table-not-known = For tires of which nobody knows whether they are cold: they count as warm.
now-table-how = The slowest channel counts. –: do not drive; too soft above the first speed of a column, too hard under the last. Gauge between two rows: take the softer one, and a dash as a dash.
