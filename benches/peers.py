"""Times SciPy on the stored air cases, beside `cargo bench -p benches --bench air_events`.

Run with numpy and scipy installed: median of 5 runs of each case by the solver of
validation/scipy/air_events.py (Radau at rtol 1e-10, the accuracy reference).
"""

import contextlib
import copy
import importlib.util
import io
import pathlib
import statistics
import time

root = pathlib.Path(__file__).resolve().parent.parent
path = root / "validation" / "scipy" / "air_events.py"
spec = importlib.util.spec_from_file_location("air_events", path)
air_events = importlib.util.module_from_spec(spec)
spec.loader.exec_module(air_events)


def main():
    for case in air_events.CASES:
        seconds = []
        for _ in range(5):
            start = time.perf_counter()
            with contextlib.redirect_stdout(io.StringIO()):
                air_events.Truck(copy.deepcopy(case)).run()
            seconds.append(time.perf_counter() - start)
        print(f"{case['name']}: {statistics.median(seconds) * 1e3:.1f} ms")


main()
