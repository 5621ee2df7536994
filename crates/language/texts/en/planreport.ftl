# The plan report for whoever answers for the haul and pays for it.
planreport-what = What was planned
planreport-why = Tires that fit the ground under them spare road and tire and pull better, as long as each pressure fits its load and its speed. This report gives each pressure with the limit that decided it, who stands behind it, where the driver must start each change, and what it costs in time. How much a road gains depends on the road, its moisture and the load: some published trials show no gain.
planreport-effects-none = This plan document holds no effects; it was made before they were worked out, or the haul cannot be driven.
planreport-cost-none = The haul tells no money, so nothing can be said of cost: fill in [money] in its file.
planreport-late = If the driver calls late, or never
