# The plan page, top to bottom.
plan-title = Pressure plan
plan-for-haul = Pressure plan for haul { $haul }
plan-combination = Combination
plan-route = Route
plan-draft = Draft: not issued, not for the driver
plan-issued = Plan { $number }, issued { $date }

plan-ladder = Ladder
plan-rung = Rung
plan-rungs = Rungs
plan-speed-cap = Speed cap
plan-hold-limit = Hold limit
plan-hold-limit-both = { $time } or { $distance }, whichever comes first; then stop or raise
plan-no-hold-limit = no limit
plan-channel = Air channel
plan-axle-group = Axle group
plan-load-state = Load state
plan-laden = laden
plan-empty = empty
plan-chain-state = Chains
plan-chains-on = on
plan-chains-off = off
plan-value-to-set = Set the controller to
plan-cold-pressure = Cold pressure
plan-deflection = Deflection

plan-window = Window
plan-lowest = Lowest
plan-highest = Highest
plan-minimum = Minimum
plan-maximum = Maximum
plan-governed-by = Governed by
plan-next-closest = Next closest
plan-source = Source
plan-approval = Approval
plan-approval-maker = approved by the tire maker
plan-approval-standard = within the standard
plan-approval-needed = needs approval
plan-approval-not-possible = not possible
plan-approval-expired = approval expired { $date }: back to draft
plan-no-window = Not possible: the lowest allowed, { $lowest }, is above the highest allowed, { $highest }

plan-stack = What was added
plan-stack-gauge = gauge error
plan-stack-deadband = controller deadband
plan-stack-duals = difference within a dual
plan-stack-load-share = uneven load share
plan-stack-warmest = warmest tire on this rung
plan-stack-snap = up to the controller's next step
plan-stack-total = added in all

plan-change-points = Change points
plan-change-count = { $count ->
    [one] { $count } change point
   *[other] { $count } change points
}
plan-start-raising = START RAISING
plan-start-lowering = START LOWERING
plan-stop-and-change = STOP AND CHANGE
plan-lead = Lead
plan-reach-by = Complete by
plan-change-time = Time of the change
plan-change-time-slow = Time, one run in ten is slower
plan-cap-while-changing = Speed cap while it changes
plan-from-rung = From
plan-to-rung = To

plan-cycle = Cycle
plan-cycle-time = Time of a cycle
plan-cycle-time-added = Added by pressure changes
plan-cycle-fuel = Fuel of a cycle
plan-compressor-loaded = Compressor loaded
plan-lowest-supply = Lowest supply pressure
plan-before-first-move = Before the first move
plan-before-first-move-raise = Raise to { $pressure } cold before moving: after the coldest night a tire could be too low
plan-shift-end = Shift end: raise to road pressure before parking

plan-effects = What it changes
plan-cost = Cost
plan-what-decided = What decided each number
plan-cautions = Cautions
plan-problems = Not solved

plan-standing-read = read in the source
plan-standing-given = given for this fleet
plan-standing-practice = common practice, no source
plan-standing-memory = from memory: compare with the source before use
plan-extrapolated = outside the range its source covers

# The page in a terminal: labels of tables, and short lines.
plan-route-forward = { $route }, { $length }; the load goes up the chainage
plan-route-backward = { $route }, { $length }; the load goes down the chainage
plan-cold-named-at = Temperatures
plan-temperatures = cold pressures are those at { $reference }; planned for { $coldest } to { $warmest }
plan-for-units = Units
plan-measured-delivery = delivery of the compressor
plan-measured-conductance = conductance of { $channel }
plan-measured-tire-volume = tire volume of { $channel }
plan-measured-counted = Counted: { $what } of unit { $unit } is { $share } % of its type's, measured { $date }.
plan-measured-not-counted = Not counted: { $what } of unit { $unit } is { $share } % of its type's, measured { $date }. Its changes take longer than here; plan it with --unit { $unit }.
plan-controller = Controller
plan-controller-unit = works in { $unit }
plan-controller-other-unit = works in { $unit }; the value to set is shown in { $unit } too, and that one counts
plan-breaks-limits = { $count ->
    [one] DO NOT DRIVE THIS PLAN AS IT STANDS: it breaks a limit.
   *[other] DO NOT DRIVE THIS PLAN AS IT STANDS: it breaks { $count } limits.
}
plan-axle-groups = Axle groups and loads
plan-tire = Tire
plan-tires = Tires
plan-single = single
plan-dual = dual
plan-fixed-pressure = fixed pressure

plan-ladder-how = Set: what the controller is set to, for the warmest tire on the rung. Cold: what that leaves in a cold tire. Lowest and highest: the window, cold.
plan-ladder-same = { $cells }: the same as { $chains }
plan-cap = Cap
plan-set = Set
plan-cold = Cold
plan-channel-brief = Channel
plan-approval-brief-maker = tire maker
plan-approval-brief-standard = standard
plan-cell-not-possible = { $cell } is not possible: { $why }.
plan-cell-hold = { $cell }: at most { $distance } at a time, by the maker's row; then stop or raise.
plan-rung-unused = This haul does not use: { $rungs }.

plan-more-cells = { $count ->
    [one] One more cell is not shown: other load or chain states, rungs that this haul does not use.
   *[other] { $count } more cells are not shown: other load and chain states, rungs that this haul does not use.
}
plan-more-not-possible = { $count ->
    [one] One of them is not possible – { $cells }.
   *[other] { $count } of them are not possible – { $cells }.
}
plan-more-possible = All of them are possible.
plan-more-how = Add --full to see everything, and the full account of each number.
plan-decided-by = decided by
plan-decided-lowest = lowest
plan-decided-next = next
plan-decided-set = set
plan-decided-how = Lowest: the limit that decided, cold. Next: the one that would, without it. Set: lowest and what was added.
plan-decided-allowance = +{ $share }

plan-ground = the ground would like { $advice } or less (advice)
plan-stack-sealed-gauge = sealed gauge at this altitude
plan-stack-hand-set = set higher by hand
plan-stack-brief-gauge = gauge
plan-stack-brief-deadband = deadband
plan-stack-brief-duals = duals
plan-stack-brief-warmest = warm tire and step
plan-stack-brief-sealed-gauge = sealed gauge
plan-stack-brief-hand-set = by hand
plan-stack-sums-to = { $items }: set { $set } (warmest tire { $warmest })
plan-deflection-then = deflection { $percent } of section height
plan-other-tire = where tire { $tire } is fitted
plan-worst-tire = { $load } on the worst tire
plan-covers = covers { $speed }
plan-load-allowance = load allowance { $share }
plan-pressure-added = { $pressure } added by the row
plan-deflection-at-most = at most { $share } of section height
plan-from-reading = from { $pressure }
plan-at-temperature = at { $temperature }
plan-least-gap = { $gap } at least
plan-standing-brief-read = read
plan-standing-brief-given = given
plan-standing-brief-memory = from memory

plan-fixed-groups = Groups at a fixed pressure
plan-worst-tire-load = Worst tire
plan-holds-cold = Holds, cold
plan-needs-cold = Needs, cold
plan-verdict = Verdict
plan-enough = enough
plan-too-low = TOO LOW
plan-morning-after = Morning after
plan-morning-how = Parked on the lowest rung, after a night at { $coldest }: what a gauge reads, against what the empty tire needs there.
plan-parked-on = Parked on
plan-reads = Reads
plan-needs = Needs
plan-share = Share
plan-may-move = may move off
plan-raise-first = RAISE FIRST

plan-change-points-how = In the order of travel. Start at the place or before it; the new speed cap holds from the start of a lowering, and from the end of a raising. { $times }
plan-times-nominal = Times and leads are nominal, without spread between trucks and runs.
plan-times-sampled = Time: the middle of many runs, in brackets what nine of ten keep; leads are for nine of ten.
plan-times-partly-sampled = Time: the middle of many runs, in brackets what nine of ten keep; leads are for nine of ten. A time without brackets is nominal, and so is its lead.
plan-time-sampled = Time
    (9 of 10)
plan-does-not-fit-p90 = Change point { $number } fits on a usual run; more than one run in ten is not complete where it must be.
plan-no-change-points = None: one rung serves the whole route.
plan-done-by = Done by
plan-run = { $load_state } run
plan-number = No.
plan-at = At
plan-place = Place
plan-call = Call
plan-from-to = Rungs
plan-time = Time
plan-at-landmark = at { $landmark }
plan-before-landmark = { $distance } before { $landmark }
plan-beyond-landmark = { $distance } beyond { $landmark }
plan-does-not-fit = Change point { $number } does not fit: the change is not complete where it must be.
plan-refused-compressor-limit = Change point { $number } would be complete in time, and is refused: the compressor would run longer without a pause than it may.
plan-refused-supply-before-descent = Change point { $number } would be complete in time, and is refused: the reservoirs would not be at cut-in at the top of the next long descent.
plan-chosen-way = Change point { $number } is made so: { $way }.
plan-other-ways = Change point { $number }, other ways: { $ways }.
plan-before-descent = Change point { $number } stands earlier than it would, because no air is taken on or just before a long descent.
plan-way-rolling = rolling
plan-way-go-on-slowly = go on at the lower cap for { $distance } past the place
plan-way-lay-by = stop in { $place } at { $km } until complete
plan-way-slower = drive the stretch before it at { $speed } in the mean
plan-way-other-rung = run on rung { $rung }, which is reached in time
plan-way-more-air = { $times } times today's compressor delivery
plan-way-more-road = start { $distance } earlier
plan-loses = loses { $time }
plan-gains = saves { $time }
plan-loses-nothing = costs no time
plan-wrong-road = wrong for { $distance }
plan-on-descent = { $what }, and fills tires on a long descent, where the brakes need the air
plan-late = If the driver calls late: time, and road on the wrong pressure; and the air of each change
plan-late-by = Late by { $distance }
plan-never = Never
plan-run-ends = the run ends first
plan-lowest-supply-brief = Low supply
plan-compressor-run = Compressor
    at a time

plan-laden-change = From empty to laden pressures
plan-way = Way
plan-time-lost = Time lost
plan-ordered-at = Ordered at
plan-empty-road-hard = Empty road at
    laden pressures
plan-choice = Choice
plan-chosen = chosen
plan-chosen-not-possible = chosen, NOT POSSIBLE
plan-laden-not-allowed-while-loading = the survey does not allow changes while loading
plan-laden-road-too-short = the last stretch before loading is too short for it
plan-laden-never-complete = the air does not reach the pressure
plan-laden-why = { $way }: not possible, { $why }.
plan-laden-rolling = rolling, before loading
plan-laden-while-loading = while loading
plan-laden-after-loading = standing, after loading

plan-cycle-waited = Waited for pressure alone
plan-cycle-water = Water taken in, for the dryer
plan-cycles-per-day = Cycles a day
plan-part = Part
plan-waited = Waited
plan-fuel = Fuel
plan-compressor-time = Compressor
plan-phase-shift-start = shift start
plan-phase-empty = empty run
plan-phase-loading = loading
plan-phase-laden = laden run
plan-phase-unloading = unloading

plan-sources = Sources
plan-cautions-broken = These break a limit. Do not drive the plan before they are mended:
plan-cautions-told = Also to know:

# How a ladder was found.
plan-search = Why this ladder
plan-search-asked = Searched for: at most { $asked } rungs were asked for, { $found } are kept, out of { $caps } speed caps from { $lowest } to { $highest }.
plan-search-required = Required by the survey: { $caps }.
plan-search-term = A cycle takes
plan-search-amount = Amount
plan-search-price = Price
plan-search-time = driving and waiting
plan-search-hard-road = harder than the ground wants, kPa km
plan-search-changes = changes
plan-search-compressor = loaded compressor
plan-search-in-all = in all
plan-search-price-time = { $price } an hour
plan-search-price-hard-road = { $price } a kPa km
plan-search-price-changes = { $price } a change
plan-search-price-compressor = { $price } an hour
plan-search-fewer-more = One rung fewer: { $difference } { $currency } more a cycle.
plan-search-fewer-less = One rung fewer: { $difference } { $currency } less a cycle.
plan-search-fewer-same = One rung fewer costs the same.
plan-search-no-fewer = One rung fewer: no such ladder covers every leg.
plan-search-more-more = One rung more: { $difference } { $currency } more a cycle.
plan-search-more-less = One rung more: { $difference } { $currency } less a cycle.
plan-search-more-same = One rung more saves nothing.
plan-search-no-more = One rung more: no speed cap is left to try.
plan-search-exact = Gap 0: on the road cut into legs and the caps tried, no other choice costs less.
plan-search-gap = Gap { $gap } { $currency }: the search was cut short, and another choice could cost so much less.
plan-search-rounds = { $count ->
    [one] The ladder found was then planned whole, once.
   *[other] The ladder found was planned whole { $count } times, and what a change really cost was put in.
}

# Cells in a line of text.
cells-every-rung = every rung
cells-on = { $states } ({ $rungs })
