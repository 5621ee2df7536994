"""Steady speed on a grade: roots of the cubic by the companion matrix of numpy."""

from importlib.metadata import version

import numpy as np

from cases import write

G = 9.80665
cases = []
for mass, power, rolling, grade in ((63500.0, 304.3, 0.015, 0.04), (20000.0, 250.0, 0.007, 0.0), (68000.0, 350.0, 0.04, 0.12)):
    slope = np.arctan(grade)
    f0 = mass * G * (rolling * np.cos(slope) + np.sin(slope))
    roots = np.roots([0.5 * 1.17 * 8.0, 0.0, f0, -power * 1e3])
    speed = next(r.real for r in roots if abs(r.imag) < 1e-9 and r.real > 0)
    cases.append((
        "grade-speed",
        {
            "mass": f"{mass} kg",
            "rolling_resistance": rolling,
            "grade": grade,
            "drag_area": "8.0 m2",
            "air_density": "1.17 kg/m3",
            "wheel_power": f"{power} kW",
        },
        {"speed": f"{speed:.10f} m/s"},
        1e-8,
        "two root finders on one cubic",
    ))
write("library-numpy", "numpy_grade.py", f"numpy {version('numpy')}", "numpy.roots", ["cfr-40-1066-210"], cases)
