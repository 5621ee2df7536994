"""A whole truck's air, raised from rest: stiff integration with located switches, by scipy."""

from importlib.metadata import version
from math import sqrt

from scipy.integrate import solve_ivp

from cases import write

PSI, AMBIENT, P_0, B = 6894.757293168361, 14.696 * 6894.757293168361, 100e3, 0.25
CUT_IN, CUT_OUT, SHUTS, OPENS = (AMBIENT + p * PSI for p in (100.0, 125.0, 70.0, 85.0))


def phi(r):
    return 1.0 if r <= B else sqrt(max(0.0, 1 - ((r - B) / (1 - B)) ** 2))


def raise_tires(cc, rpm, service, c, tires, start, target):
    """Time, lowest service pressure (gauge psi) and closures of the protection valve."""
    loaded, opened = False, True
    y, now, lowest, closures = [AMBIENT + 120 * PSI, AMBIENT + start * PSI], 0.0, 1e9, 0
    while True:

        def rates(_, y):
            eta = 0.95 * (1 - 0.05 * ((y[0] / AMBIENT) ** (1 / 1.3) - 1))
            delivered = cc * 1e-6 * rpm / 60 * eta * AMBIENT / P_0 if loaded else 0.0
            taken = c * 1e-8 * y[0] * phi(y[1] / y[0]) if opened else 0.0
            return [(delivered - taken) * P_0 / service, taken * P_0 / tires]

        watched = [(1, AMBIENT + target * PSI, 1)]
        watched.append((0, CUT_OUT, 1) if loaded else (0, CUT_IN, -1))
        watched.append((0, SHUTS, -1) if opened else (0, OPENS, 1))
        events = []
        for index, level, direction in watched:
            event = lambda _, y, i=index, level=level: y[i] - level  # noqa: E731
            event.terminal, event.direction = True, direction
            events.append(event)
        run = solve_ivp(rates, (now, now + 36000), y, events=events, method="Radau",
                        rtol=1e-10, atol=1e-3, max_step=5.0)
        lowest = min(lowest, run.y[0].min())
        now, y = run.t[-1], list(run.y[:, -1])
        if len(run.t_events[0]):
            return now, (lowest - AMBIENT) / PSI, closures
        if len(run.t_events[1]):
            loaded = not loaded
        if len(run.t_events[2]):
            closures += opened
            opened = not opened


cases = []
for cc, rpm, service, c, tires, target in (
    (299, 1600, 90, 1.5, 896, 75), (299, 1600, 90, 1.5, 896, 100),
    (299, 700, 90, 1.5, 896, 75), (636, 1400, 120, 3.0, 1792, 100),
):
    time, lowest, closures = raise_tires(cc, rpm, service * 1e-3, c, tires * 1e-3, 45.0, target)
    cases.append((
        "whole-truck-raise",
        {
            "displacement": f"{cc} cm3",
            "engine_speed": f"{rpm} rpm",
            "service_volume": f"{service} l",
            "conductance": f"{c} dm3/s/bar",
            "tire_volume": f"{tires} l",
            "from": "45 psi",
            "to": f"{target} psi",
        },
        {"time": f"{time:.6f} s", "lowest_service": f"{lowest:.6f} psi", "closures": closures},
        1e-4,
        "the network steps by up to 1 s and linearizes near equal pressures",
    ))
write(
    "library-scipy-truck", "scipy_truck.py", f"scipy {version('scipy')}",
    "integrate.solve_ivp Radau at 1e-10, switches as terminal events", ["ideal-gas-vessels"], cases,
)
