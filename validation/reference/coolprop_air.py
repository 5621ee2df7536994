"""Real air by CoolProp: warming at constant volume, and density."""

from importlib.metadata import version

from CoolProp.CoolProp import PropsSI

from cases import write

ZERO = 273.15
cases = []
for gauge, t1, t2, ambient in ((690.0, 20.0, 58.0, 101.325), (480.0, 20.0, -10.0, 101.325), (900.0, 15.0, -35.0, 90.0)):
    rho = PropsSI("D", "P", (gauge + ambient) * 1e3, "T", t1 + ZERO, "Air")
    after = PropsSI("P", "D", rho, "T", t2 + ZERO, "Air") / 1e3 - ambient
    cases.append((
        "cold-warm-pressure",
        {
            "pressure": f"{gauge} kPa",
            "from_temperature": f"{t1} C",
            "to_temperature": f"{t2} C",
            "from_ambient": f"{ambient} kPa",
            "to_ambient": f"{ambient} kPa",
        },
        {"pressure": f"{after:.5f} kPa"},
        0.007,
        "dry air departs from the ideal gas, most in the cold and at high pressure",
    ))
for pressure, t in ((101.325, 15.0), (84.56, -20.0), (95.0, 40.0)):
    rho = PropsSI("D", "P", pressure * 1e3, "T", t + ZERO, "Air")
    cases.append((
        "air-density",
        {"pressure": f"{pressure} kPa", "temperature": f"{t} C"},
        {"density": f"{rho:.6f} kg/m3"},
        0.001,
        "dry air departs from the ideal gas by under 0.1 % at ambient pressure",
    ))
write("library-coolprop", "coolprop_air.py", f"CoolProp {version('CoolProp')}", "PropsSI, fluid Air", ["ideal-gas-law", "iso-2533"], cases)
