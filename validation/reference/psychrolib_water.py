"""Water in moist air by the library psychrolib (ASHRAE Handbook, chapter 1)."""

from importlib.metadata import version

import psychrolib

from cases import write

psychrolib.SetUnitSystem(psychrolib.SI)
cases = []
for t, humidity in ((20.0, 0.65), (35.0, 0.8), (2.0, 0.9)):
    ratio = psychrolib.GetHumRatioFromRelHum(t, humidity, 101325.0)
    volume = psychrolib.GetMoistAirVolume(t, ratio, 101325.0)
    cases.append((
        "water-taken-in",
        {"free_air": "1 m3", "temperature": f"{t} C", "humidity": humidity},
        {"water": f"{ratio / volume:.8f} kg"},
        0.005,
        "two fits of saturation pressure",
    ))
write("library-psychrolib", "psychrolib_water.py", f"PsychroLib {version('PsychroLib')}", "GetHumRatioFromRelHum", ["wmo-8-magnus"], cases)
