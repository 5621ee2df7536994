# Charts of a run along the route.
chart-strip-title = Run along the route
chart-strip-haul = Haul { $haul }, route { $route }
chart-strip-description = Two halves side by side, each along the chainage: on the left the empty run, on the right the laden run. Panels from top to bottom: elevation and surface, speed, tire pressure, supply pressure. { $changes ->
    [one] { $changes } change point is flagged.
   *[other] { $changes } change points are flagged.
}
chart-empty-run = Empty run
chart-laden-run = Laden run
chart-load-state = load state { $name }
chart-travel-up = toward higher chainage
chart-travel-down = toward lower chainage
chart-no-run = No sample of this run while moving

chart-elevation = Elevation
chart-elevation-and-surface = Elevation and surface
chart-no-elevation = No elevation given
chart-speed = Speed
chart-tire-pressure = Tire pressure
chart-supply-pressure = Supply pressure
chart-own-scale = each run has its own scale
chart-chainage = Chainage
chart-in-unit = { $what }, { $unit }
chart-names-hidden = { $count ->
    [one] { $count } name not shown for lack of room
   *[other] { $count } names not shown for lack of room
}

chart-surface-paved = paved
chart-surface-sealed = sealed
chart-surface-gravel = gravel
chart-surface-earth = earth
chart-surface-soft-ground = soft ground
chart-surface-sand = sand
chart-surface-snow-or-ice = snow or ice

chart-label-speed = speed
chart-label-cap = speed cap
chart-label-limit = speed limit
chart-label-supply = supply

chart-flag-place = from { $from }, complete by { $to }
chart-flag-place-open = from { $from }
chart-flag-list = Change points

chart-standing = Standing
chart-standing-loading = { $time } min loading
chart-standing-waiting-change = waiting { $time } min for tire pressures before moving off
chart-standing-before-off = { $time } min before moving off
chart-standing-unloading = { $time } min unloading
chart-standing-on-the-way = { $time } min at { $place }
chart-standing-more = { $count } more, { $time } min in all
chart-standing-none = no standing of a minute or longer

chart-legend-speed = speed driven
chart-legend-cap = speed cap of the pressures held
chart-legend-limit = speed limit of the leg
chart-legend-tire = tire pressure as a gauge reads it, one line style an air channel
chart-legend-minimum = thin, same style: lowest allowed, cold, on the rung ordered
chart-legend-supply = supply pressure
chart-legend-compressor = compressor delivers
chart-legend-change = from the change point to where the change must be complete
chart-legend-changing = bar: a change is under way
chart-legend-landmark = landmark
chart-legend-lay-by = lay-by

# Charts of what a plan changes.
chart-effects-title = What the plan changes
chart-effects-description = Above, bars of patch, wear or rut of the road, and rolling resistance over those at full pressure, for each leg and run and each way to run, with their bands. Below, vertical stress in the ground over depth under the laden truck.
chart-effects-band = Bars go from full pressure (1) to the expected ratio; whiskers from low to high.
chart-effects-patch = Contact patch, ratio
chart-effects-road = Rut or wear of the road, ratio
chart-effects-rolling = Rolling resistance, ratio
chart-effects-unknown = not told: see To fill in
chart-effects-depth = Stress in the ground under the laden truck: { $leg }
chart-effects-depth-note = Lines are expected stress, shade the plan's band from firm to soft ground. From 0.3 m down measurements found next to no effect of pressure; load rules there.
chart-effects-stress = stress
chart-effects-below = depth
