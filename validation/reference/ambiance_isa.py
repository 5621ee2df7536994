"""Pressure in the standard atmosphere by the library ambiance (ICAO Doc 7488/3)."""

from importlib.metadata import version

from ambiance import Atmosphere

from cases import write

cases = []
for altitude in (-300.0, 1500.0, 4000.0):
    air = Atmosphere(altitude)
    cases.append((
        "isa-pressure",
        {"altitude": f"{altitude} m"},
        {"pressure": f"{air.pressure[0] / 1000:.6f} kPa"},
        5e-4,
        "the altitude of a road is taken as geopotential: 2.5 m apart at 4000 m",
    ))
write("library-ambiance", "ambiance_isa.py", f"ambiance {version('ambiance')}", "Atmosphere.pressure", ["iso-2533"], cases)
