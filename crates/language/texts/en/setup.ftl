# Papers for mechanics: what they have in common, and the set-up sheet.
mechanic-before = Before any nut, hose or wheel is touched
mechanic-unit = Unit
mechanic-trailers = Trailers
mechanic-controller = Number on the controller
mechanic-place = Place
mechanic-name = Name
mechanic-date = Date
mechanic-signed = Signed
mechanic-found = Found

setup-two-units = The controller works in { $controller }; numbers in { $reader } stand in brackets. Store the number in { $controller }.
setup-controller = Controller
setup-setting = Setting
setup-as-stated = As the survey states it
setup-unit = Unit of pressure
setup-step = Smallest step
setup-deadband = Deadband
setup-gauge-error = Error of its gauge, either way
setup-gauge = Kind of gauge
setup-gauge-vented = vented: reads over the air around it
setup-gauge-sealed = sealed: reads low at altitude
setup-check-interval = Time between its own checks
setup-stored-rungs = Rungs it can store
setup-rungs-of-this-plan = this plan: { $count }
setup-brake-threshold = Takes no air for tires while brake pressure is under
setup-brake-resume = Takes air again from
setup-channels = Channels
setup-channels-together = all at once
setup-channels-in-turn = one after the other
setup-compressor-limit = Longest compressor run without a pause

setup-pressures = Pressures to store
setup-pressures-how = As the controller reads them, for each load, chain state and rung. Each holds for the warmest tire on its rung: do not lower it because tires are warm.
setup-set = store, in { $unit }
setup-stored = Stored
setup-dash-mark = A dash: store nothing there. Nobody stands behind a pressure for it, and the rung is not run with this load.

setup-wheel-ends = Wheel ends
setup-valve = Kind
setup-closes-below = Closes below
setup-valve-by-hand = wheel shut-off, by hand
setup-valve-self-closing = self-closing wheel valve
setup-valve-none = no air channel
setup-shut = shut by hand now: { $count }
setup-self-closing = A self-closing wheel valve shuts by falling line pressure. A tire softer than its closing pressure is not reached from the cab.
setup-by-hand = A wheel shut-off stays as it was left. A shut wheel end does not follow any change: find out why before you open it.

setup-air = Air supply
setup-cut-in = Governor: starts to fill at
setup-cut-out = Governor: stops at
setup-protection-opens = Protection valve of the tire circuit: opens above
setup-protection-shuts = Protection valve: shuts under
setup-service-volume = Service and wet reservoirs
setup-reserve-volume = Reserve tank for tire air
setup-no-reserve = none fitted

setup-look-up = To be read in the controller's manual
setup-look-up-how = The survey does not tell these. Read them in the manual and write them down here; the driver must know them.
setup-look-up-measures = Where it measures
setup-look-up-select = How load and rung are selected
setup-look-up-overspeed = What it does over a speed cap
setup-look-up-restart = What it does after a restart
setup-look-up-low-supply = What it does at low supply
setup-look-up-lost-signal = What it does without speed or sensor

setup-checks = When everything is stored
setup-check-numbers = Every stored number was read back and compared with this sheet by a second person.
setup-check-unit = The unit on the display is the unit of this sheet.
setup-check-fixed = Groups without an air channel hold their fixed pressure, cold, by hand gauge.
setup-check-wheel-ends = Every wheel end is open, or noted as shut with the reason.
setup-check-selected = Road pressure of the load on the truck is selected, and every channel is complete.
setup-check-card = The driver card in the cab has the same plan number as this sheet.
