# The plan asked backwards.
ask-change = Change point { $number }, { $load_state }: from { $from } to { $to }, started at { $at }, complete by { $reach_by }.
ask-judged-nine-of-ten = Judged by nine of ten changes. Each means alone, everything else as it is; planned anew with it.
ask-judged-nominal = Judged by the nominal change. Each means alone, everything else as it is; planned anew with it.

ask-supply-title = Which air supply makes it fit
ask-supply-fits = It fits as it is: nothing has to be added.
ask-supply-compressor = Compressor
ask-supply-times = { $times } times today's delivery
ask-supply-times-not = not even { $times } times today's delivery
ask-supply-tank = Reserve tank
ask-supply-reserve = { $volume } more
ask-supply-reserve-not = not even { $volume } more

ask-cap-title = Air channel { $channel }, { $load_state }, { $pressure } cold
ask-cap-approved = Maker or standard stands behind
ask-cap-window = Windows allow
ask-cap-exact = The same, not rounded
ask-cap-governed = Next above it
ask-cap-none = no speed
ask-cap-above-highest = ABOVE THE HIGHEST: LOWER IT FIRST

ask-late-title = How late is too late
ask-late-latest = On a usual run the latest call is at { $latest }. The plan keeps { $in_hand } in hand before it, for nine of ten runs.
ask-late-never = No call is in time: the change is not complete by the place from anywhere.
ask-late-standing = It is made standing, so there is no later call.
ask-late-by = Later by
ask-late-complete = Complete
ask-late-wrong-road = On the wrong pressure
ask-late-descent = Descent
ask-late-on-descent = FILLS ON A DESCENT
ask-late-how = Later than the latest call. Time against a call there, over the whole cycle; nominal, without spread between trucks and runs.
