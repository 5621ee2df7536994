"""Stress under circles, an implicit thickness and a quarter-truck, by general solvers of scipy."""

from importlib.metadata import version
from math import cos, exp, log10, pi, sqrt

import numpy as np
from scipy.integrate import dblquad
from scipy.optimize import brentq

from cases import write


def below_circle(q, a, offset, z, nu):
    """Froehlich's point-load law integrated over the area of the circle."""

    def ring(phi, rho):
        r2 = rho * rho + offset * offset - 2 * rho * offset * cos(phi)
        return rho * nu * q * z**nu / (2 * pi * (r2 + z * z) ** (nu / 2 + 1))

    return 2 * dblquad(ring, 0, a, 0, pi, epsabs=1e-9, epsrel=1e-9)[0]


def giroud_han(p_wheel, p, passes, rut, cbr, base):
    r = sqrt(p_wheel / (pi * p))
    r_e = min(3.48 * base**0.3 / cbr, 5)

    def short(h):
        m = rut / 75 * (1 - 0.9 * exp(-((r / h) ** 2)))
        traffic = 0.868 + 0.661 * (r / h) ** 1.5 * log10(passes)
        return traffic / (1 + 0.204 * (r_e - 1)) * (sqrt(p / (m * 3.14 * 30 * cbr)) - 1) * r - h

    return brentq(short, 0.1, 3, xtol=1e-12)


def weighting(f):
    """W_k of ISO 2631-1 as a product of transfer functions."""
    s = 2j * pi * f

    def pole(corner, q):
        w = 2 * pi * corner
        return 1 + s / (q * w) + (s / w) ** 2

    high = (s / (2 * pi * 0.4)) ** 2 / pole(0.4, sqrt(0.5))
    low = 1 / pole(100, sqrt(0.5))
    transition = (1 + s / (2 * pi * 12.5)) / pole(12.5, 0.63)
    step = pole(2.37, 0.91) / pole(3.35, 0.91) * (2.37 / 3.35) ** 2
    return abs(high * low * transition * step)


def levels(k_s, k_t, m_s=3350.0, m_u=500.0, c=15e3):
    """Weighted body acceleration and wheel force from the matrices of the two masses."""
    mass = np.diag([m_s, m_u])
    damping = np.array([[c, -c], [-c, c]])
    stiffness = np.array([[k_s, -k_s], [-k_s, k_s + k_t]])
    f = np.linspace(0.1, 50, 20001)
    w = 2 * pi * f
    dynamic = stiffness[None] + 1j * w[:, None, None] * damping[None] - (w**2)[:, None, None] * mass[None]
    x = np.linalg.solve(dynamic, np.array([0, k_t])[None, :, None])[:, :, 0]
    body = np.abs(w**2 * x[:, 0]) * weighting(f)
    force = np.abs(k_t * (1 - x[:, 1]))
    return [sqrt(np.trapezoid(y**2 / f**2, f)) for y in (body, force)]


def kpa(x):
    return f"{x:.9f} kPa"


cases = []
for offset, z, nu in ((0.0, 0.2, 5.0), (0.15, 0.15, 3.0), (0.1, 0.3, 4.0), (0.3175, 0.2, 4.0), (0.5, 0.4, 6.0)):
    cases.append((
        "soil-stress-beside",
        {
            "contact_pressure": "600 kPa",
            "radius": "0.15 m",
            "offset": f"{offset} m",
            "depth": f"{z} m",
            "concentration": nu,
        },
        {"stress": kpa(below_circle(600, 0.15, offset, z, nu))},
        1e-4,
        "a midpoint rule of 256 steps against adaptive double integration",
    ))
for q, z in ((607.4, 0.1), (607.4, 0.3), (334.1, 0.2)):
    a = sqrt(18.9 / (pi * q))
    under = below_circle(q, a, 0, z, 4) + below_circle(q, a, 0.3175, z, 4)
    gap = 2 * below_circle(q, a, 0.15875, z, 4)
    cases.append((
        "soil-stress-dual",
        {
            "load": "18.9 kN",
            "contact_pressure": f"{q} kPa",
            "spacing": "0.3175 m",
            "depth": f"{z} m",
            "concentration": 4.0,
        },
        {"under_tire": kpa(under), "mid_gap": kpa(gap)},
        1e-4,
        "a midpoint rule of 256 steps against adaptive double integration",
    ))
for p, passes, rut, cbr in ((550, 5000, 75, 1), (690, 100, 50, 0.5), (414, 5000, 75, 2), (345, 1000, 60, 2.5)):
    cases.append((
        "giroud-han",
        {
            "wheel_load": "40 kN",
            "pressure": f"{p} kPa",
            "passes": passes,
            "rut": f"{rut} mm",
            "subgrade_cbr": cbr,
            "base_cbr": 15,
        },
        {"thickness": f"{giroud_han(40, p, passes, rut, cbr, 15):.9f} m"},
        1e-6,
        "bisection against Brent's method",
    ))
for suspension, k_s in (("air", 0.3e6), ("steel", 1.0e6)):
    for to in (1.62e6, 0.96e6):
        before, after = levels(k_s, 1.91e6), levels(k_s, to)
        cases.append((
            "ride-change",
            {
                "suspension": suspension,
                "sprung": "3350 kg",
                "unsprung": "500 kg",
                "from_n_per_mm": 1910,
                "to_n_per_mm": to / 1e3,
            },
            {
                "body_ratio": after[0] / before[0],
                "wheel_load_ratio": after[1] / before[1],
            },
            1e-3,
            "2000 steps of frequency against 20000, closed response against matrices",
        ))

write(
    "library-scipy-ground",
    "scipy_ground.py",
    f"scipy {version('scipy')}",
    "general solvers applied to the laws",
    [
        "boussinesq-froehlich",
        "giroud-han-2004",
        "quarter-truck-cebon",
        "iso-2631-1-weighting",
        "iso-8608",
    ],
    cases,
)
