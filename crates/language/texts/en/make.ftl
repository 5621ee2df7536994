# Made logs.
step-making = making logs
make-log = Log
make-frames = Frames
make-lost = Lost
make-hours = Hours
make-distance = Driven
make-asked =
    Changes
    asked
make-complete = complete
make-forgotten = forgotten
make-truth-beside = Beside each log lies its truth, as .truth.json. Nothing in them is real.

make-fault = Fault
make-fault-range = Size
make-fault-what = What it is
make-fault-examples = Ask for one with --fault, such as:

make-fault-tire-leak = a hole in a tire, as wide as the size says
make-fault-line-leak = a hole in the line of a channel
make-fault-line-off = the line of a channel has come off
make-fault-line-narrowed = a kinked or clogged line; the size is what is left of its conductance
make-fault-line-shut = the line is shut off before the wheel ends
make-fault-fill-stuck-shut = the filling valve does not open
make-fault-fill-slow = the filling valve opens in part; the size is what is left
make-fault-exhaust-stuck-shut = the exhaust does not open
make-fault-exhaust-stuck-open = the exhaust does not shut
make-fault-exhaust-slow = the exhaust opens in part; the size is what is left
make-fault-exhaust-frozen = the exhaust does not open while it is colder than 0 °C
make-fault-wheel-end-shut = a wheel end shut by hand that should be open
make-fault-core-left-in = a valve core left in a tire; the size is what is left of its conductance
make-fault-weak-compressor = a worn compressor or clogged intake; the size is what is left of its delivery
make-fault-cut-in-off = the governor cuts in at another pressure, off by the size
make-fault-cut-out-off = the governor cuts out at another pressure, off by the size
make-fault-protection-off = the protection valve works at other pressures, off by the size
make-fault-brake-leak = the brakes lose so much free air
make-fault-gauge-off = the controller's gauge reads too high by the size on a channel
make-fault-gauge-other-kind = the controller's gauge on a channel is sealed where it should be vented, or the reverse
make-fault-hot-wheel = a dragging brake or bad bearing warms the tires of a wheel end by the size
make-fault-sensor-off = a tire's sensor reads too high by the size
make-fault-sensor-drift = a tire's sensor reads more by the size every hour
make-fault-sensor-stuck = a tire's sensor says what it said when the fault began
make-fault-sensor-dead = a tire's sensor says nothing
make-fault-sensors-swapped = the sensors of two tires have changed places
make-fault-log-gap = nothing is recorded; it needs for=
make-fault-clock-off = the logger's clock is ahead by the size
