# Effects of a plan on ground, road, traction, heat, fuel and ride.
effects-how = Against full pressure all the way: the laden pressures of the fastest rung, empty too. Numbers are low – middle – high; a ratio of 1 is no change. Ruts and wear are those of the same passes.
effects-way = Way to run
effects-way-plan = this plan
effects-way-full-pressure = full pressure
effects-way-constant-reduced = one reduced pressure
effects-way-less-load = a fifth less load
effects-cycle = Cycle
effects-gravel-rut = Gravel rut
    ×
effects-asphalt-wear = Asphalt wear
    ×
effects-trips = Trips for
    the same
effects-not-assessed = Legs not
    whole
effects-unknown = ?
effects-heat-load = Heat load of the tires over the cycle on the warmest day, in t km/h, corrected for length and heat: { $groups }. Hold it against the maker's rating of each tire.
effects-heat-load-too-long = Heat load of the tires (t km/h): the cycle is longer than the { $length } of the correction for length; ask the tire maker.

effects-leg = Leg
effects-run = Run
effects-leg-title = { $leg }, { $run }, { $from } to { $to }
effects-patch = Patch
    ×
effects-road = What the road
    feels
effects-rolling = Rolling
    ×
effects-climb = Climb, %
effects-descent = Descent, %
effects-road-rut = rut { $ratio }
effects-road-wear = wear { $ratio }
effects-road-stress = stress { $ratio }
effects-go = go
effects-doubtful = doubtful
effects-no-go = NO GO
effects-grade = { $word }: { $possible } of { $needed }
effects-legs-how = Patch, rut, wear and rolling resistance over those at full pressure, mean over the axles. Climb and descent: the steepest that can be had, of the steepest there is; descent with a tenth of gravity left to slow down with. A question mark: something must be told first, see below.
effects-legs-more = Add --full for every way and every axle group.
effects-spread = { $leg }, { $run }: of ten cases one climbs under { $p10 } %, five under { $p50 } %, nine under { $p90 } %; the leg has { $needed } %. { $first }
effects-spread-by = Most of what is unsure comes from { $input } ({ $share } of the variance): look into it first.
effects-spread-nothing = No single input decides it.
effects-uncertain-strength = the strength of the soil
effects-uncertain-moisture = its moisture
effects-uncertain-load = the load
effects-uncertain-grip = the grip of the surface
effects-uncertain-model = the choice of model
effects-easiest = { $leg }, { $run }: rolls easiest with { $groups }.
effects-easiest-group = { $group } at { $pressure } (it holds { $held }: { $more } harder to roll)
effects-easiest-lowest = { $group } at { $pressure }, the lowest allowed here (it holds { $held }: { $more } harder to roll)
effects-easiest-how = Rolling easiest, from weak to strong soil: softer tires lose more in themselves, harder ones sink in. Looked for only between the lowest and the highest pressure of the rung. Good for comparing, not for a level, and never a reason to go lower.

effects-groups-how = Each axle group in the plan's way. Air: in the tire on the warmest day, if the leg is long enough to warm it. Ride: change of body vibration at the same speed.
effects-bends = Bends
effects-area = Patch
effects-mean-pressure = Pressure
    in it
effects-stress-below = Stress at
    0.3 m
effects-gap = Dual gap
effects-air = Air
effects-ride = Ride
effects-asphalt-strain = Asphalt
    strain, µm/m
effects-asphalt-life = Asphalt
    life ×
effects-subgrade-strain = Ground
    strain, µm/m
effects-subgrade-life = Ground life ×
    (by load)

effects-missing = To fill in
effects-missing-line = { $what }: { $place }, { $keys }. Without it: no { $decides }.
effects-missing-cost-line = { $what }: { $place }, { $keys }. Left out of the cost until told; 0 says there is none.
effects-on-legs = { $file }, { $legs }
effects-or = or
effects-give-soil-strength = strength of the soil
effects-give-pavement-layers = layers of the pavement
effects-give-grip = grip, measured
effects-give-dual-spacing = spacing of the duals
effects-give-money = money of the haul
effects-give-fuel-price = price of fuel
effects-give-season = season days gained
effects-give-payload = payload gained
effects-give-tire-saving = tire cost saved
effects-give-repair-saving = repairs saved
effects-give-road-cost = upkeep of the road
effects-give-road-saving = share of road upkeep saved
effects-of-time = cycle time
effects-of-contact = contact patch
effects-of-stress-below = stress in the ground
effects-of-gravel-rut = rut of gravel
effects-of-soil-rut = rut in soil
effects-of-dual-gap = gap between duals
effects-of-heat-load = heat load
effects-of-washboard = washboard
effects-of-pavement = wear of the pavement
effects-of-climb = climb
effects-of-descent = descent
effects-of-rolling = rolling resistance and fuel
effects-of-heat = heat in the tire
effects-of-ride = ride
effects-of-wind-up = wind-up
effects-of-spread = spread
effects-of-cost = cost
effects-of-cost-item = line of the cost

effects-no-law = { $leg }: { $effect } cannot be told, because { $reason }.
effects-flag-descent = CAREFUL GOING DOWN: by the least it climbs more than it can hold going down on { $places }. What soft tires give uphill is not there for the brakes.
effects-flag-wind-up = Driven axles at different pressures wind each other up: { $places }. Leave locks open on firm ground.
effects-flag-washboard = Likely to make washboard, because the empty tires are so hard: { $places }.
effects-flag-gap = Less than 10 mm could be left between duals: { $places }. Measure the gap on the truck, at the lowest pressure and full load. With chains: measure first, no truck chain clearance was found in print.
effects-flag-heat-stop = TOO HOT on the warmest day, if the leg is long enough to warm the tire: { $places }.
effects-flag-heat-warn = Warm on the warmest day, if the leg is long enough to warm the tire: { $places }. Look why, or slow down.
effects-ride-less = Ride: { $least } to { $most } % less body vibration at unchanged speed. Not on every section, and lost if the driver speeds up; no seat or health number can be given.
effects-ride-none = Ride: no less body vibration.
effects-note-top = Low pressure spares the top of the road. From 0.3 m down the load rules, and measurements found next to no difference; less load spares that ground too.
effects-note-asphalt = Wear of asphalt is a best case: the model presses evenly, tires do not. It says nothing of a seal lifting or of the edge of the road.
effects-note-memory = Soil ruts, the rut of gravel and the pull models rest in part on equations from memory. Compare with the source, and with a rut seen on the road, before money or a permit hangs on them.
effects-note-own-case = How much a road gains depends on the road, its moisture and the load; no one percentage holds.

effects-trials = What trials of lower pressure found on such ground, those that found nothing among them (low pressure over high):
effects-trials-brief = { $count ->
    [one] Trials of lower pressure on such ground: one found a gain (--full tells how much), these found none:
   *[other] Trials of lower pressure on such ground: { $count } found a gain (--full tells how much), these found none:
}
effects-sources = The effects rest on { $count } sources, which --full lists. From memory: { $memory }. Common practice, no source: { $practice }.
effects-trial = { $effect } on { $ground }: { $found } [{ $source }, { $read }]
effects-trial-between = { $low } to { $high }
effects-trial-up-to = up to { $high }
effects-trial-less = less, no number told
effects-trial-no-difference = no difference
effects-trial-of-traffic-to-failure = traffic until it failed
effects-trial-of-asphalt-strain = asphalt strain
effects-trial-of-asphalt-life = asphalt life
effects-trial-of-rutting = ruts
effects-trial-of-aggregate-thickness = aggregate needed
effects-trial-of-maintenance = upkeep of the surface
effects-trial-of-sediment = sediment
effects-trial-of-deep-stress = stress at 0.3 m and deeper
effects-trial-on-asphalt = asphalt
effects-trial-on-asphalt-on-peat = thin asphalt on peat
effects-trial-on-thawed-pavement = a paved road in the thaw
effects-trial-on-thin-membrane = a thin seal
effects-trial-on-aggregate = aggregate
effects-trial-on-dry-strong-gravel = dry strong gravel
effects-trial-on-subsoil = soil
effects-trial-read-abstract = abstract read
effects-trial-read-news = news read
