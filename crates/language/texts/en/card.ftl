# The driver card. Short: it is read in a cab.
card-up-to = up to { $unit }
card-set = { $load_state }: controller set to, { $unit }
card-set-both = { $load_state }: set to, { $unit } (controller: { $controller })
card-road-mark = * Road pressure stands in: the rung's own pressure is not approved.
card-dash-mark = A dash: do not run this rung with this load.
card-fixed = Fixed, set by hand, cold: { $groups }.
card-hold = { $rung }: at most { $limit }
card-hold-one = { $limit }; then stop or raise
card-chains = With { $chains }, { $load_state }: { $cells }.
card-elsewhere = Off this route, unknown trailer or unknown load: road pressure.
card-elsewhere-road = Rung { $rung }, laden: { $figures } { $unit }. Not reached: do not go over the speed that the gauge allows.
card-elsewhere-stand = No road pressure of this plan is approved for every channel: stay, and call.

card-strip = The route
card-strip-described = Route { $route } as a strip: surfaces, landmarks, and { $changes ->
    [one] { $changes } change point by its number
   *[other] { $changes } change points by their numbers
}; laden run above, empty run below. Filled triangle up: raising. Open triangle down: lowering.
card-number = No.
card-not-driven = This haul cannot be driven as surveyed; no change points are known.
card-not-complete = NOT COMPLETE IN TIME: hold the lower cap until every channel is complete.
card-change-told = No. { $number }: { $told }
card-before-first-move = Before the first move, raise: { $channels }.
card-laden-after-loading = Loaded: select { $state }, wait until complete on every channel ({ $time }), then move off.
card-laden-while-loading = While loading: select { $state } ({ $time }). Do not move off before it is complete on every channel.
card-laden-rolling = Before loading, at { $at }: select { $state } ({ $time }). Do not move off laden before it is complete on every channel.
card-laden-not-possible = { $state }: no way to reach the laden pressures is known. Do not load; call.
card-unloaded = Unloaded: select { $state } before you move off.

card-gauge = What the gauge allows
card-gauge-how = Every gauge must show at least the number of the row; the slowest tire sets your speed. A dash, or softer than the last row: do not drive. Harder than the first row: do not drive, lower first. Warm or cold.
card-gauge-none = No reading allows driving with what is approved. Do not drive; call.
card-drive-up-to = Drive up to, { $unit }
card-not-above = not above

card-event = If
card-do = do
card-event-brake-air = Brake air is low
card-do-brake-air = Stop filling tires at once. Slow down, stop in a safe place, set the parking brake. Do not move before the cause is found.
card-event-not-rising = A channel does not follow
card-do-not-rising = Go no faster than its gauge allows. Stop at the next safe place and call.
card-event-late = You called late
card-do-late = Hold the lower cap until every channel is complete. Never race the pressure.
card-event-too-fast = You are over the cap
card-do-too-fast = Ease down to the cap; then stay slow, or raise. After long over the cap: stop, let the tires cool, report it.
card-event-display = The display is dark or in doubt
card-do-display = The pressure is not known. Gauge every tire by hand; until then walking pace, off the road.
card-event-stuck = You are stuck
card-do-stuck = Follow the printed procedure, or wait for help. No number is made up on the phone.
card-event-shift-end = The shift ends
card-supply-touches-brakes = Air gets low on this haul: brakes keep first claim. If filling stops by itself, hold the lower cap.
