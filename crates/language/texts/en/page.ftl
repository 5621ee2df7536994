# The local page.
page-skip = To the content
page-parts = Parts
page-part-survey = Survey
page-part-plan = Plan
page-part-now = Now
page-part-timeline = Timeline
page-language = Language
page-units = Units
page-units-si = kPa, km/h, kg
page-units-us = psi, mph, lb
page-units-metric-bar = bar, km/h, kg
page-look = Look
page-look-auto = as the device
page-look-light = light
page-look-dark = dark
page-unreachable = The program does not answer. Start airtide serve again; what you typed stays here.
page-changed-elsewhere = Files of the survey were changed in another window or program. What you see now is new.
page-understood = Understood
page-read-only = This window may only read.
page-pairing-code = Code for the next device: { $code }
page-working = Working …
page-close = Close
page-haul = Haul
page-no-haul = No haul can be planned yet.
page-broken-hauls = Not planned until their problems are mended: { $hauls }.
page-see-problems = See the problems

page-what-if = What if
page-what-if-load = Load
page-what-if-bearing = Bearing of the ground
page-what-if-ambient = Air temperature
page-what-if-delivery = Compressor delivery
page-what-if-late = Called late by
page-as-surveyed = As surveyed
page-time-lost = Lost by calls elsewhere
page-strip-summary = { $changes ->
    [one] { $changes } change point.
   *[other] { $changes } change points.
} Lowest on the empty run: { $empty }. Lowest on the laden run: { $laden }. Fastest when laden: { $speed }.
page-legend-minimum = lowest allowed, cold
page-legend-drag = Drag a change point, or move it with the arrow keys; Escape puts it back.
page-as-table = As a table
page-start-at = Start at
page-planned-at = planned at { $place }
page-put-back = Put back
page-fits = Complete in time
page-does-fit = yes
page-does-not-fit = NO
page-late-by = NO: { $road } too late
page-ladder-how = Type a cold pressure in { $unit }, at { $temperature }, to try it. Under it: lowest and highest allowed, what decides the lowest, and who stands behind it. Shaded: this haul runs it.
page-not-a-number = Type a number, such as 85 or 5.9.
page-save-cells = { $count ->
    [one] Save { $count } cell in the survey
   *[other] Save { $count } cells in the survey
}
page-saved = Saved: { $file }
page-compare = Compare
page-compare-how = Keep this plan aside, then change something: the differences stand here.
page-keep-aside = Keep this plan aside
page-let-go = Let it go
page-no-difference = The two plans are the same.
page-what = What
page-kept = Kept aside
page-on-show = On show
page-change-number = Change point { $number }
page-issue = Issue
page-issue-now = Issue the plan
page-issue-as-saved = The plan is issued as the survey has it, not as tried above.
page-responsible = Responsible

page-now-truck = Which truck
page-now-load = What it carries
page-now-nobody-knows = nobody knows
page-now-gauge = What the gauge shows
page-now-cold = tires cold
page-now-warm = tires warm
page-now-not-known = not known
page-now-ask = Answer

page-files = Files
page-files-survey = Survey
page-files-units = Units
page-files-tire = Tires
page-files-vehicle = Vehicles
page-files-combination = Combinations
page-files-route = Routes
page-files-haul = Hauls
page-files-permit = Permits
page-files-approval = Approvals
page-problems = Problems
page-no-problems = No problems. Choose a file.
page-undo = Undo
page-as-text = As text
page-as-form = As a form
page-text-of-file = Text of the file
page-save = Save
page-add = Add
page-add-value = Add a value
page-add-row = Add to { $name }
page-remove = Remove
page-remove-row = Remove { $name }
page-conflict = This file was changed in another window or program. Nothing was saved, nothing is lost.
page-conflict-again = Make my change on the new file
page-conflict-theirs = Show the new file

page-series = Series
page-clock = Time from shift start
page-zoom = Zoom
page-zoom-in = Closer
page-zoom-out = Wider
page-zoom-back = Back
page-zoom-on = On
page-zoom-whole = All
page-timeline-kpa = Pressure
page-timeline-kmh = Speed
page-timeline-c = Temperature
page-timeline-pct = Grade
