"""Air paths and a compressor by general solvers of scipy, from the laws and not from closed forms."""

from importlib.metadata import version

from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from cases import write

RHO_0 = 1.185
PATH = [(2.5e-8, 0.30), (4.695e-8, 0.244), (1.5e-8, 0.25), (3.0e-8, 0.35)]


def flow(c, b, p1, p2):
    x = max(0.0, (p2 / p1 - b) / (1 - b))
    return c * RHO_0 * p1 * max(0.0, 1 - x * x) ** 0.5


def behind(c, b, p1, q):
    """Pressure behind one restriction that lets q through, at or above choking."""
    low = b * p1
    if flow(c, b, p1, low) <= q:
        return None
    return brentq(lambda p: flow(c, b, p1, p) - q, low, p1, xtol=1e-9, rtol=1e-15)


def end_pressure(q, p1):
    p = p1
    for c, b in PATH:
        p = behind(c, b, p, q)
        if p is None:
            return None
    return p


def series(p1, p2):
    """The flow whose pressure behind the last restriction is p2; the largest that passes if choked."""
    low, high = 0.0, 1.5e-8 * RHO_0 * p1
    for _ in range(200):
        q = (low + high) / 2
        end = end_pressure(q, p1)
        low, high = (q, high) if end is not None and end > p2 else (low, q)
    return low


cases = []
for p2 in (2e5, 4e5, 6e5):
    cases.append((
        "series-flow",
        {
            **{f"conductance_{i}": f"{c * 1e8:.4f} dm3/s/bar" for i, (c, _) in enumerate(PATH, 1)},
            **{f"critical_ratio_{i}": b for i, (_, b) in enumerate(PATH, 1)},
            "upstream": "800 kPa",
            "downstream": f"{p2 / 1e3} kPa",
            "temperature": "20 C",
        },
        {"mass_flow": f"{series(8e5, p2):.12f} kg/s"},
        1e-6,
        "nested root finding",
    ))


def volumetric_efficiency(clearance, n, ratio):
    """Clearance air expands until intake opens: dp/dV = -n p / V, by integration."""
    opens = lambda v, p: p[0] - 1.0  # noqa: E731
    opens.terminal = True
    run = solve_ivp(lambda v, p: [-n * p[0] / v], (clearance, 1 + clearance), [ratio],
                    events=opens, method="Radau", rtol=1e-11, atol=1e-13)
    return 1 + clearance - run.t_events[0][0]


for clearance, n, ratio in ((0.05, 1.3, 9.165), (0.04, 1.25, 5.0), (0.06, 1.35, 11.0)):
    cases.append((
        "volumetric-efficiency",
        {
            "efficiency": 1.0,
            "clearance": clearance,
            "polytropic": n,
            "intake": "100 kPa",
            "delivery": f"{100 * ratio} kPa",
        },
        {"ratio": volumetric_efficiency(clearance, n, ratio)},
        1e-7,
        "integration of the re-expansion",
    ))


# Filling and venting: the balance of mass and energy in a vessel, integrated until the target is met.
P_0, T_0, KAPPA = 100e3, 293.15, 1.4
R = P_0 / (RHO_0 * T_0)
VOLUME, C = 0.110, 1.5e-8


def vessel(b, start, end, supply=None, ambient=None, adiabatic=False):
    """Time and end temperature of a vessel at T_0 that is filled from a supply or vented."""

    def change(_, y):
        m, t = y
        p = m * R * t / VOLUME
        q = flow(C, b, supply, p) if supply else -flow(C, b, p, ambient) * (T_0 / t) ** 0.5
        if not adiabatic:
            return [q, 0.0]
        inflow = KAPPA * T_0 if supply else KAPPA * t
        return [q, q * (inflow - t) / m]

    met = lambda _, y: y[0] * R * y[1] / VOLUME - end  # noqa: E731
    met.terminal = True
    run = solve_ivp(change, (0, 3600), [start * VOLUME / (R * T_0), T_0], events=met,
                    method="Radau", rtol=1e-10, atol=1e-13, max_step=2.0)
    return run.t_events[0][0], run.y_events[0][0][1]


def vessel_case(equation, b, start, end, expected, **behind):
    name, pressure = next(iter(behind.items()))
    return (
        equation,
        {
            "volume": f"{VOLUME * 1e3} l",
            "conductance": f"{C * 1e8} dm3/s/bar",
            "critical_ratio": b,
            name: f"{pressure / 1e5} bar",
            "from": f"{start / 1e5} bar",
            "to": f"{end / 1e5} bar",
        },
        expected,
        1e-6,
        "integration of the vessel's balance",
    )


for b, start, end in ((0.25, 4.0e5, 7.5e5), (0.25, 1.0e5, 7.5e5), (0.5, 2.0e5, 9.0e5)):
    time, _ = vessel(b, start, end, supply=9.3e5)
    cases.append(vessel_case("fill-time", b, start, end, {"time": f"{time:.8f} s"}, supply=9.3e5))
for b, start, end in ((0.25, 8.2e5, 1.6e5), (0.6, 8.2e5, 1.2e5), (0.5, 8.2e5, 1.5e5)):
    time, _ = vessel(b, start, end, ambient=1.013e5)
    cases.append(vessel_case("vent-time", b, start, end, {"time": f"{time:.8f} s"}, ambient=1.013e5))
time, _ = vessel(0.25, 1.0e5, 2.3e5, supply=9.3e5, adiabatic=True)
cases.append(vessel_case("adiabatic-fill-time", 0.25, 1.0e5, 2.3e5, {"time": f"{time:.8f} s"}, supply=9.3e5))
time, temperature = vessel(0.25, 8.2e5, 4.1e5, ambient=1.013e5, adiabatic=True)
cases.append(vessel_case(
    "adiabatic-vent", 0.25, 8.2e5, 4.1e5,
    {"time": f"{time:.8f} s", "end_temperature": f"{temperature:.7f} K"}, ambient=1.013e5,
))
write("library-scipy", "scipy_air.py", f"scipy {version('scipy')}", "optimize.brentq, integrate.solve_ivp Radau", ["iso-6358-3", "reciprocating-compressor-textbook", "closed-form-fill-vent"], cases)
