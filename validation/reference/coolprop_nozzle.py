"""Isentropic nozzle flow of real air, moist reference air: CoolProp with a scalar maximiser of scipy."""

from importlib.metadata import version
from math import pi, sqrt

from CoolProp.CoolProp import HAPropsSI, PropsSI
from scipy.optimize import minimize_scalar

from cases import write

T = 293.15
RHO_0 = 1.185
AREA = pi / 4 * 0.004**2


def flux(p, p1):
    s, h1 = PropsSI("S", "P", p1, "T", T, "Air"), PropsSI("H", "P", p1, "T", T, "Air")
    speed = sqrt(max(0.0, 2 * (h1 - PropsSI("H", "P", p, "S", s, "Air"))))
    return PropsSI("D", "P", p, "S", s, "Air") * speed


def nozzle(p1, p2):
    """Mass flow through the hole: the largest flux at or above the pressure behind it."""
    best = minimize_scalar(lambda p: -flux(p, p1), bounds=(0.4 * p1, 0.7 * p1), method="bounded")
    throat = max(best.x, p2)
    return AREA * flux(throat, p1)


cases = []
for discharge, p1 in ((1.0, 3e5), (0.8, 7e5), (0.65, 9.5e5)):
    c = discharge * nozzle(p1, 0.3 * p1) / (RHO_0 * p1)
    cases.append((
        "orifice-conductance",
        {"bore": "4 mm", "discharge": discharge},
        {"conductance": f"{c * 1e8:.6f} dm3/s/bar"},
        0.015,
        f"at {p1 / 1e5} bar; density of real air and of the reference air differ by up to 1 %",
    ))
C = AREA * 0.040415 / (RHO_0 * sqrt(T))
for p1, ratio in ((8e5, 0.3), (8e5, 0.7), (8e5, 0.85), (8e5, 0.95)):
    cases.append((
        "restriction-flow",
        {
            "conductance": f"{C * 1e8:.8f} dm3/s/bar",
            "critical_ratio": 0.5283,
            "upstream": f"{p1 / 1e3} kPa",
            "downstream": f"{ratio * p1 / 1e3} kPa",
            "temperature": "20 C",
        },
        {"mass_flow": f"{nozzle(p1, ratio * p1):.9f} kg/s"},
        0.02,
        "the ellipse stands for the isentropic curve; air is real",
    ))
for volume in (1.0,):
    v = HAPropsSI("Vha", "T", T, "P", 100e3, "R", 0.65)
    cases.append((
        "free-air-mass",
        {"volume": f"{volume} m3"},
        {"mass": f"{volume / v:.6f} kg"},
        0.003,
        "the standard counts with 1.185 kg/m3; moist real air has 1.182",
    ))
write(
    "library-coolprop-nozzle",
    "coolprop_nozzle.py",
    f"CoolProp {version('CoolProp')}, scipy {version('scipy')}",
    "PropsSI and HAPropsSI, fluid Air",
    ["iso-6358-1", "short-tube-orifice-2016", "iso-8778"],
    cases,
)
