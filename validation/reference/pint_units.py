"""Conversion factors by the library pint, each from its own definitions."""

from importlib.metadata import version
from math import atan, cos, sin

import pint

from cases import write

ureg = pint.UnitRegistry()
WANTED = [
    ("pressure", "psi", "psi", "kPa", "kPa"),
    ("mass", "lb", "lb", "kg", "kg"),
    ("force", "kip", "kip", "N", "N"),
    ("power", "hp", "horsepower", "W", "W"),
    ("volume", "gal", "gallon", "l", "liter"),
    ("volume flow", "cfm", "foot**3/minute", "l/min", "liter/minute"),
    ("speed", "mph", "mile/hour", "km/h", "km/hour"),
    ("conductance", "dm3/s/bar", "decimeter**3/second/bar", "m3/s/Pa", "m**3/second/pascal"),
]
cases = []
for kind, ours, theirs, ours_to, theirs_to in WANTED:
    factor = ureg.Quantity(1.0, theirs).to(theirs_to).magnitude
    cases.append((
        "unit-factor",
        {"kind": kind, "value": f"1 {ours}"},
        {"value": f"{factor!r} {ours_to}"},
        1e-12,
        "both exact but for float rounding",
    ))
g = ureg.Quantity(1.0, "standard_gravity")
for mass, rolling, grade, drag, speed in (("140000 lb", 0.010, 0.06, 9.0, "15 mph"), ("63.5 t", 0.025, -0.02, 8.0, "50 km/h"), ("20 t", 0.007, 0.0, 6.0, "62 mph")):
    m = ureg.Quantity(mass.replace(" t", " metric_ton"))
    v = ureg.Quantity(speed.replace("mph", "mile/hour").replace("km/h", "km/hour"))
    slope = atan(grade)
    rho = ureg.Quantity(1.17, "kg/m**3")
    force = m * g * (rolling * cos(slope) + sin(slope)) + 0.5 * rho * ureg.Quantity(drag, "m**2") * v**2
    cases.append((
        "road-load",
        {
            "mass": mass,
            "rolling_resistance": rolling,
            "grade": grade,
            "drag_area": f"{drag} m2",
            "air_density": "1.17 kg/m3",
            "speed": speed,
        },
        {"force": f"{force.to('kip').magnitude!r} kip"},
        1e-12,
        "the same sum by a program that carries its units",
    ))
for rating in (13.2, 30.0):
    swept = ureg.Quantity(rating, "foot**3/minute") / ureg.Quantity(1250, "1/minute")
    cases.append((
        "compressor-rating",
        {"rating": f"{rating} cfm"},
        {"displacement": f"{swept.to('cm**3').magnitude!r} cm3"},
        1e-12,
        "the same quotient by a program that carries its units",
    ))
write("library-pint", "pint_units.py", f"pint {version('pint')}", "UnitRegistry", ["cfr-40-1066-210", "tm-5-3805-263-14-p-3"], cases)
