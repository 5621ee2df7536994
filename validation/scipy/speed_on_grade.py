"""Steady speed on a constant grade: the cubic F(v) v = P solved by numpy.roots.

Run `python3 speed_on_grade.py` with numpy installed; it writes speed_on_grade.json beside
itself. F = m g (C cos a + sin a) + 0.5 rho CdA v^2, with g, rho and CdA as written below.
"""

import json
import pathlib
import platform

import numpy

G, RHO, CDA = 9.80665, 1.2, 8.0
ENGINE_W, ACCESSORIES_W, ETA = 373e3, 15e3, 0.85


def steady(mass, rolling, grade):
    """The only positive real root, m/s."""
    slope = numpy.arctan(grade)
    f0 = mass * G * (rolling * numpy.cos(slope) + numpy.sin(slope))
    roots = numpy.roots([0.5 * RHO * CDA, 0.0, f0, -(ENGINE_W - ACCESSORIES_W) * ETA])
    (root,) = [r.real for r in roots if abs(r.imag) < 1e-9 and r.real > 0]
    return float(root)


cases = [
    {
        "mass_t": mass / 1000,
        "rolling_resistance": rolling,
        "grade": grade,
        "speed_m_per_s": steady(mass, rolling, grade),
    }
    for mass in (20e3, 36e3, 63.5e3)
    for rolling in (0.007, 0.015, 0.025, 0.040)
    for grade in (0.0, 0.01, 0.02, 0.04, 0.06, 0.08, 0.12)
]
document = {
    "made_with": {"python": platform.python_version(), "numpy": numpy.__version__, "method": "roots"},
    "air_density_kg_per_m3": RHO,
    "drag_area_m2": CDA,
    "engine_kw": ENGINE_W / 1e3,
    "accessories_kw": ACCESSORIES_W / 1e3,
    "efficiency": ETA,
    "cases": cases,
}
target = pathlib.Path(__file__).with_suffix(".json")
target.write_text(json.dumps(document, indent=1) + "\n")
