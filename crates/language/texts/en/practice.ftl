# Practice and its verdict.
practice-title = Practice of { $haul }, seed { $seed }
practice-arrived = Arrived.
practice-not-arrived = NOT ARRIVED: THE DRIVE ENDED ON THE WAY
practice-no-surprise = Nothing went otherwise than planned.
practice-surprise = Otherwise than planned: { $what }
surprise-slow-compressor = a worn compressor
surprise-leak = a leak behind the compressor
surprise-unexpected-stop = something in the way on the laden run
surprise-closed-lay-by = a lay-by was closed
surprise-wrong-load-state = the empty load state was still selected when the laden pressures were called
surprise-soft-leg = a leg softened by rain
practice-findings = Findings
practice-no-finding = No finding: the drive kept the plan.
practice-finding = Finding
practice-when = After
practice-at = At
practice-lasted = For
practice-evidence = What was seen
practice-severity = Weight
practice-price = Against the plan's own drive
practice-item = Item
practice-yours = Yours
practice-plans = Plan
practice-more = More
practice-cost = Cost
practice-no-price = no price
practice-item-time = Time
practice-item-fuel = Fuel
practice-item-compressor = Compressor on load
practice-item-changes = Changes ordered
practice-item-road = Harder than the road wants
practice-item-tires = Under the minimum, by time
practice-cost-together = Together { $cost } { $currency }, of what the survey has a price for.
practice-nothing-priced = The survey has no prices for this haul; give them in its file to see money.
practice-on-the-real-road = A practice is no licence: the truck, the road and the law decide on the day.
practice-problems = { $count ->
    [one] 1 line of the drive cannot be used
   *[other] { $count } lines of the drive cannot be used
}
step-practising = driving
