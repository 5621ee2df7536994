# Talk of the commands, on standard error.
check-errors = { $count ->
    [0] no errors
    [one] { $count } error
   *[other] { $count } errors
}
check-warnings = { $count ->
    [0] no warnings
    [one] { $count } warning
   *[other] { $count } warnings
}
check-import = The maker's rows of { $tire } are read from { $table } so:
check-sound = Ready to plan: { $hauls }
check-left-out = Left out until the errors are mended: { $hauls }
new-next = Next: airtide check { $folder }, then airtide plan { $folder }
plan-chart-written = Chart written: { $file }
step-planning = planning
step-simulating = simulating
cycles-tenths = { $haul }: one cycle of ten takes { $p10 } min or less, the middle one { $p50 } min, nine of ten { $p90 } min or less
serve-open = The page is at { $address }
serve-open-shared = For devices on the local network: { $address }
serve-code = Code for the next device: { $code }
serve-not-encrypted = What such a device sees and sends is not encrypted: share on a network you trust.
serve-stop = Stop with Ctrl+C.
