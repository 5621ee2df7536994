# airtide logs
logs-file = { $file }: { $format }, { $frames } frames in { $span }
logs-buses = buses: { $names }
logs-clean = every record was read
logs-bad = { $count ->
    [one] one bad record
   *[other] { $count } bad records
}
logs-clock-back = { $count ->
    [one] time goes back once
   *[other] time goes back { $count } times
}
logs-gaps = { $count ->
    [one] one gap of more than 5 s
   *[other] { $count } gaps of more than 5 s
}
logs-since-last-hint = Time goes back at so many lines that the stamps may count from the line before: try --timing since-last.
logs-loss-malformed = not of the format's form: { $count }
logs-loss-truncated = cut off: { $count }
logs-loss-corrupt = does not unpack or contradicts itself: { $count }
logs-loss-unsupported = of a kind that is not read: { $count }
logs-loss-error_frame = error frames of the bus: { $count }
logs-loss-remote = remote frames, without data: { $count }
logs-loss-flexible_rate = CAN FD frames, not read: { $count }
logs-loss-duplicate = the same frame again: { $count }
logs-loss-broken_message = messages in packets that never became whole: { $count }
logs-loss-short_group = groups too short for a signal: { $count }
logs-loss-too_many_senders = frames of identifiers beyond those told apart: { $count }
logs-loss-too_many_codes = trouble codes beyond those told apart: { $count }
logs-line = line { $line }
logs-byte = byte { $byte }
logs-more-bad = and more
logs-groups = Groups
logs-col-pgn = group
logs-col-name = name
logs-col-from = from
logs-col-count = count
logs-col-bytes = bytes
logs-col-signal = signal
logs-col-spn = SPN
logs-col-low = lowest
logs-col-high = highest
logs-col-unit = unit
logs-col-values = values
logs-col-absent = absent
logs-signals = Signals with values
logs-no-signals = No known signal has a value.
logs-codes = Active trouble codes
logs-code = SPN { $spn }, failure mode { $failure }, from { $source }
logs-code-counted = SPN { $spn }, failure mode { $failure }, { $count } times, from { $source }
logs-identification = Vehicle identification
logs-stripped = A vehicle identification number was in the log; it is not shown. --keep-identification shows it.
logs-reading = reading { $file }
logs-without-part = this airtide was built without the reading of logs; the full build has it: cargo build --release -p cli --features logs
logs-written = { $rows } rows of native samples and the seconds in { $files } files: { $folder }
logs-off-grid = numbers that found no second, because the clock went back or there were too many locations: { $count }
logs-left-out = { $file }: left out { $what }
logs-on-route = On the route { $route }: { $positions } seconds with a position, { $off } of them off the route
logs-wheels = way by wheel speed over way along the route: { $ratio } ({ $low } to { $high } in four of five), on { $stretches } stretches of half a kilometer
logs-wheels-wrong = The wheel speed does not fit the route: its scale is wrong, or other tires are on than the truck is set to. Speeds and distances of these logs are off by as much.
logs-wheels-unknown = too few stretches with both positions and wheel speed to judge the wheel speed
