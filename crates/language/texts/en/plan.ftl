# The plan page, top to bottom.
plan-title = Pressure plan
plan-for-haul = Plan for haul { $haul }
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
