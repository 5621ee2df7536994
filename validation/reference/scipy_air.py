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
write("library-scipy", "scipy_air.py", f"scipy {version('scipy')}", "optimize.brentq, integrate.solve_ivp Radau", ["iso-6358-3", "reciprocating-compressor-textbook"], cases)
