# What governs the lowest and the highest pressure of a window.
limit-load-table = load-inflation table
limit-load-power-law = load against rated point (power law)
limit-low-speed-allowance = low-speed allowance of the table
limit-maker-row = tire maker's approved row
limit-lowest-row = lowest in print: published tables or practice go no lower at this cap
limit-deflection = deflection for the speed cap
limit-bead = bead and rim
limit-wheel-valve = self-closing wheel valve, at the coldest
limit-flat-rule = public road: under half of the molded maximum counts as flat
limit-roadside-hot = public road: roadside check of a hot tire
limit-permit-minimum = permit, minimum
limit-permit-maximum = permit, maximum
limit-dual-gap = gap between duals
limit-mate-diameter = diameter of the dual mate
limit-chains = chains: road pressure
limit-chains-shared = chains on another group of the same air channel
limit-turning-scrub = turning scrub
limit-tire-heat = tire heat
limit-tire-maximum = molded maximum of the tire
limit-rim-maximum = rim
limit-supply = supply pressure that can be counted on
limit-ground = ground (advice)
limit-fixed = fixed: this group has no air channel
limit-hand-set = set by hand in the survey
limit-other-group = another axle group on the same air channel
limit-service-rule = 80 % of the pressure needed
limit-heavier-state = unknown load state: next heavier state used
limit-unknown-trailer = unknown trailer: road pressure
limit-restricted-speed = restricted-speed table

# The same in a column of a table.
limit-brief-load-table = load table
limit-brief-restricted-speed = speed table
limit-brief-maker-row = maker's row
limit-brief-deflection = deflection
limit-brief-bead = bead
limit-brief-lowest-row = lowest in print
limit-brief-wheel-valve = wheel valve
limit-brief-flat-rule = half of max
limit-brief-roadside-hot = roadside, hot
limit-brief-dual-gap = dual gap
limit-brief-chains = chains
limit-brief-turning-scrub = turning scrub
limit-brief-tire-heat = tire heat
limit-brief-tire-maximum = molded maximum
limit-brief-rim-maximum = rim
limit-brief-supply = supply
limit-brief-permit-minimum = permit
limit-brief-permit-maximum = permit
limit-brief-ground = ground (advice)

# Why a cell is not possible.
why-overloaded = the worst tire carries { $load }, more than the { $highest } it may carry at { $cap }
why-too-fast = the speed cap of { $cap } is above the { $rated } of the tire's speed symbol
why-too-hot = the air in the tire passes { $highest } at every pressure
why-duals-touch = the duals touch at every pressure with a spacing of { $spacing }
why-no-deflection = no pressure keeps the deflection under { $share }
why-empty-supply = it must be set to { $lowest }, and the supply reaches { $highest }
why-empty-rim = it must be set to { $lowest }, and the rim bears { $highest }
why-empty-tire = it must be set to { $lowest }, and the molded maximum is { $highest }
why-empty-permit = it must be set to { $lowest }, and the permit allows { $highest }
why-not-rated = the tire has no rating for this fitment

# The same in a column of a table.
why-brief-overloaded = OVERLOADED
why-brief-too-fast = over rated speed
why-brief-too-hot = too hot
why-brief-duals-touch = duals touch
why-brief-no-deflection = deflection
why-brief-not-rated = not rated
why-brief-empty-supply = over supply
why-brief-empty-rim = over rim maximum
why-brief-empty-tire = over molded max
why-brief-empty-permit = over permit
