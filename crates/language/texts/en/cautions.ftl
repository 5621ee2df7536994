# What protects people. Short, plain, one thing a line.
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
