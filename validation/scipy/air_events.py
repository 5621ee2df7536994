"""Event times of whole-truck air networks, solved with SciPy for comparison.

Run `python3 air_events.py` with numpy and scipy installed; it writes air_events.json
beside itself: each case with all its inputs, the events in order, and the pressures at
the end. The equations are written out here anew from the flow law; every event is
located by the solver's own event functions on Radau at rtol 1e-10.

Pressures are gauge kPa in the inputs and absolute Pa in the equations; a tire's state is
its pressure referred to 293.15 K, so it follows the mass of its air.
"""

import json
import pathlib
import platform
from math import pi, sin, sqrt

import numpy
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

P0, T0, BETA = 100e3, 293.15, 0.999
RTOL, ATOL = 1e-10, 1e-5


def shape(b, r):
    """Flow over choked flow, with the linear end above BETA."""
    if r >= 1:
        return 0.0
    if r > BETA:
        return shape(b, BETA) * (1 - r) / (1 - BETA)
    if r <= b:
        return 1.0
    return sqrt(1 - ((r - b) / (1 - b)) ** 2)


class Series:
    """Restrictions in series: one mass flow, the pressure stepped downstream."""

    def __init__(self, parts):
        self.parts = parts
        low, high = 0.0, min(c for c, _ in parts)
        if self.left(high) is None:
            while (middle := 0.5 * (low + high)) not in (low, high):
                if self.left(middle) is None:
                    high = middle
                else:
                    low = middle
            high = low
        self.choked, self.choke_ratio = high, self.left(high)
        self.at_beta = self.solve(BETA)

    def left(self, q):
        """Pressure left of 1 when q passes, or None when it cannot."""
        p = 1.0
        for c, b in self.parts:
            u = q / (c * p)
            if u > 1:
                return None
            p *= b + (1 - b) * sqrt(1 - u * u)
        return p

    def solve(self, r):
        if r <= self.choke_ratio:
            return self.choked
        excess = lambda a: self.left(self.choked * sin(a)) - r
        return self.choked * sin(brentq(excess, 0.0, pi / 2, xtol=1e-15, rtol=1e-14))

    def __call__(self, r):
        if r >= 1:
            return 0.0
        if r > BETA:
            return self.at_beta * (1 - r) / (1 - BETA)
        return self.solve(r)


def parts(elements, n=1):
    return [(e["c_dm3_per_s_bar"] * 1e-8 * n, e["b"]) for e in elements]


class Truck:
    def __init__(self, case):
        self.case = case
        supply, air = case["supply"], case["surroundings"]
        self.pa = air["ambient_kpa"] * 1e3
        self.t = air["temperature_k"]
        self.warm = [t / T0 for t in air["tire_temperature_k"]]
        density = T0 / (self.t * P0)
        turns = air["engine_rpm"] / 60 * supply["speed_ratio"]
        self.swept = supply["displacement_l"] * 1e-3 * turns * self.pa * density
        self.brakes = air["brake_draw_l_per_s"] * 1e-3 * self.pa * density
        self.gain = 1 / (density * supply["service_l"] * 1e-3)
        reserve = supply["reserve_l"]
        self.reserve_gain = 1 / (density * reserve * 1e-3) if reserve else None
        self.protection = parts([supply["protection"]])[0]
        self.fill, self.vent, self.tire_gain = [], [], []
        for channel in case["channels"]:
            inward = parts(channel["path"]) + parts(
                channel["wheel_end"], channel["open_wheel_ends"]
            )
            self.fill.append(Series(inward))
            self.vent.append(Series(inward[::-1] + parts([channel["exhaust"]])))
            self.tire_gain.append(P0 / (channel["tire_l"] * 1e-3))

    def target(self, k):
        return (self.case["targets_kpa"][k] * 1e3 + self.pa) / self.warm[k]

    def rates(self, y, mode):
        supply = self.case["supply"]
        service, reserve, tires = y[0], y[1], y[2:]
        root = sqrt(T0 / self.t)
        compressed = 0.0
        if mode["loading"]:
            k, c, n = supply["efficiency"], supply["clearance"], supply["polytropic"]
            compressed = self.swept * k * (1 - c * ((service / self.pa) ** (1 / n) - 1))
        q = [0.0] * len(tires)
        fills = [k for k, way in mode["work"].items() if way > 0]
        for k, way in mode["work"].items():
            if way < 0:
                read = tires[k] * self.warm[k]
                q[k] = -read * sqrt(1 / self.warm[k]) * self.vent[k](self.pa / read)
        drawn = 0.0
        if self.reserve_gain:
            for k in fills:
                q[k] = root * reserve * self.fill[k](tires[k] * self.warm[k] / reserve)
            if mode["protection"] and service > reserve:
                c, b = self.protection
                drawn = root * service * c * shape(b, reserve / service)
            reserve_rate = (drawn - sum(q[k] for k in fills)) * self.reserve_gain
        else:
            reserve_rate = 0.0
            if fills:
                c, b = self.protection
                read = {k: tires[k] * self.warm[k] / service for k in fills}

                def excess(m):
                    return c * shape(b, m) - sum(m * self.fill[k](read[k] / m) for k in fills)

                low = min(read.values())
                m = brentq(excess, low, 1.0, xtol=1e-15, rtol=1e-14) if low < 1 else 1.0
                for k in fills:
                    q[k] = root * service * m * self.fill[k](read[k] / m)
                drawn = sum(q[k] for k in fills)
        rates = [(compressed - self.brakes - drawn) * self.gain, reserve_rate]
        return rates + [flow * gain for flow, gain in zip(q, self.tire_gain)]

    def allot(self, y, mode, settled):
        """Which channels work now, and which way: 1 fills, -1 vents."""
        work = {}
        for k in range(len(self.fill)):
            if k in settled:
                continue
            way = 1 if y[2 + k] < self.target(k) else -1
            open_ = mode["gate"] and (mode["protection"] or self.reserve_gain)
            if way < 0 or open_:
                work[k] = way
            if not self.case["together"]:
                break
        mode["work"] = work

    def run(self):
        case, supply = self.case, self.case["supply"]
        start = case["start"]
        y = [start["service_kpa"] * 1e3 + self.pa]
        y.append((start["reserve_kpa"] or 0.0) * 1e3 + self.pa)
        y += [(p * 1e3 + self.pa) / w for p, w in zip(start["tires_kpa"], self.warm)]
        gauge = start["service_kpa"]
        gate = case["gate"]
        mode = {
            "loading": gauge <= supply["cut_in_kpa"],
            "protection": gauge >= supply["opens_kpa"],
            "gate": gate is None or gauge >= gate["resumes_at_kpa"],
        }
        time, events, settled = 0.0, [], set()
        while len(settled) < len(self.fill):
            self.allot(y, mode, settled)
            watches = []

            def watch(event, index, level, direction, channel=None):
                f = lambda _t, y: y[index] - level
                f.terminal, f.direction = True, direction
                watches.append((f, event, channel))

            def pair(switch, rises_at, rise, falls_at, fall, turns_on_rising=True):
                on = mode[switch]
                if on == turns_on_rising:
                    watch(fall, 0, falls_at * 1e3 + self.pa, -1)
                else:
                    watch(rise, 0, rises_at * 1e3 + self.pa, 1)

            pair("loading", supply["cut_out_kpa"], "CompressorUnloads", supply["cut_in_kpa"],
                 "CompressorLoads", turns_on_rising=False)
            pair("protection", supply["opens_kpa"], "ProtectionOpens", supply["shuts_kpa"],
                 "ProtectionShuts")
            if gate:
                pair("gate", gate["resumes_at_kpa"], "GateResumes", gate["stops_below_kpa"],
                     "GateStops")
            for k, way in mode["work"].items():
                watch("ChannelReached", 2 + k, self.target(k), way, k)
            solution = solve_ivp(
                lambda _t, y: self.rates(y, mode), (time, 36000.0), y, method="Radau",
                rtol=RTOL, atol=ATOL, max_step=20.0, events=[f for f, _, _ in watches],
            )
            fired = [i for i, times in enumerate(solution.t_events) if len(times)]
            assert len(fired) == 1, (case["name"], solution.message, fired)
            _, event, channel = watches[fired[0]]
            time = float(solution.t_events[fired[0]][0])
            y = [float(v) for v in solution.y_events[fired[0]][0]]
            events.append({"time_s": time, "event": event, "channel": channel})
            if event == "ChannelReached":
                settled.add(channel)
            else:
                switch = {"C": "loading", "P": "protection", "G": "gate"}[event[0]]
                mode[switch] = not mode[switch]
            print(case["name"], f"{time:.6f}", event, channel, flush=True)
        case["events"] = events
        case["end_pa"] = {"service": y[0], "reserve": y[1] if self.reserve_gain else None,
                          "tires_referred": y[2:]}
        return case


def part(c, b):
    return {"c_dm3_per_s_bar": c, "b": b}


def channel(path, wheel_end, ends, exhaust, liters):
    return {"path": path, "wheel_end": wheel_end, "open_wheel_ends": ends,
            "exhaust": exhaust, "tire_l": liters}


def supply(displacement_l, service_l, reserve_l, protection):
    return {"displacement_l": displacement_l, "speed_ratio": 1.2, "efficiency": 0.94,
            "clearance": 0.05, "polytropic": 1.3, "cut_in_kpa": 700.0, "cut_out_kpa": 860.0,
            "service_l": service_l, "reserve_l": reserve_l, "opens_kpa": 590.0,
            "shuts_kpa": 490.0, "protection": protection}


FOUR = [
    channel([part(2.5, 0.3), part(4.7, 0.24)], [part(1.4, 0.25)], 2, part(2.0, 0.3), 224.0),
    channel([part(2.0, 0.3), part(3.9, 0.2)], [part(0.9, 0.2), part(1.2, 0.35)], 4,
            part(2.4, 0.35), 896.0),
    channel([part(2.2, 0.28)], [part(1.1, 0.3)], 4, part(1.8, 0.25), 664.0),
    channel([part(1.6, 0.33), part(2.8, 0.17)], [part(1.0, 0.25)], 2, part(2.2, 0.3), 448.0),
]


def surroundings(rpm, draw):
    return {"engine_rpm": rpm, "ambient_kpa": 93.0, "temperature_k": 288.15,
            "brake_draw_l_per_s": draw, "tire_temperature_k": [303.15, 318.15, 313.15, 296.15]}


CASES = [
    {
        "name": "four channels filling together through a protection valve, at idle",
        "supply": supply(0.36, 80.0, None, part(5.0, 0.35)), "gate": None,
        "surroundings": surroundings(700.0, 0.3), "channels": FOUR, "together": True,
        "start": {"service_kpa": 830.0, "reserve_kpa": None,
                  "tires_kpa": [420.0, 300.0, 330.0, 380.0]},
        "targets_kpa": [560.0, 430.0, 470.0, 480.0],
    },
    {
        "name": "four channels filling together from a reserve tank",
        "supply": supply(0.5, 80.0, 60.0, part(4.0, 0.4)), "gate": None,
        "surroundings": surroundings(1500.0, 0.5), "channels": FOUR, "together": True,
        "start": {"service_kpa": 840.0, "reserve_kpa": 800.0,
                  "tires_kpa": [420.0, 300.0, 330.0, 380.0]},
        "targets_kpa": [590.0, 450.0, 500.0, 490.0],
    },
    {
        "name": "four channels, two venting and two filling",
        "supply": supply(0.36, 80.0, None, part(5.0, 0.35)), "gate": None,
        "surroundings": surroundings(1500.0, 0.3), "channels": FOUR, "together": True,
        "start": {"service_kpa": 830.0, "reserve_kpa": None,
                  "tires_kpa": [600.0, 640.0, 330.0, 380.0]},
        "targets_kpa": [380.0, 310.0, 420.0, 450.0],
    },
    {
        "name": "four channels venting, the last nearly to ambient",
        "supply": supply(0.36, 80.0, None, part(5.0, 0.35)), "gate": None,
        "surroundings": surroundings(1500.0, 1.2), "channels": FOUR, "together": True,
        "start": {"service_kpa": 830.0, "reserve_kpa": None,
                  "tires_kpa": [600.0, 640.0, 590.0, 620.0]},
        "targets_kpa": [380.0, 310.0, 340.0, 30.0],
    },
    {
        "name": "channels one after another under a brake gate",
        "supply": supply(0.36, 80.0, None, part(5.0, 0.35)),
        "gate": {"stops_below_kpa": 600.0, "resumes_at_kpa": 690.0},
        "surroundings": surroundings(900.0, 0.3), "channels": FOUR, "together": False,
        "start": {"service_kpa": 830.0, "reserve_kpa": None,
                  "tires_kpa": [420.0, 390.0, 330.0, 380.0]},
        "targets_kpa": [520.0, 430.0, 400.0, 330.0],
    },
    {
        # A tank of 0.12 m3 charged at 0.008 kg/s fills 1.6 m3 through C 1e-8, b 0.3, at
        # 293.15 K from 9 and 4 bar absolute until the tire meets 7. With R = 287.05 and
        # 1.185 kg/m3 it does after 711.172581 s; here p0/(rho0 T0) = 287.867 stands for R,
        # so both volumes are larger by that ratio.
        "name": "tank into tire",
        "supply": {
            "displacement_l": 0.008 / 1.185 * 60, "speed_ratio": 1.0, "efficiency": 1.0,
            "clearance": 0.0, "polytropic": 1.3, "cut_in_kpa": 850.0, "cut_out_kpa": 1200.0,
            "service_l": 120.0 * P0 / (1.185 * T0 * 287.05), "reserve_l": None,
            "opens_kpa": 300.0, "shuts_kpa": 200.0, "protection": part(1e6, 0.5)},
        "gate": None,
        "surroundings": {"engine_rpm": 1000.0, "ambient_kpa": 100.0, "temperature_k": T0,
                         "brake_draw_l_per_s": 0.0, "tire_temperature_k": [T0]},
        "channels": [channel([part(1.0, 0.3)], [], 1, part(1.0, 0.3),
                             1600.0 * P0 / (1.185 * T0 * 287.05))],
        "together": True,
        "start": {"service_kpa": 800.0, "reserve_kpa": None, "tires_kpa": [300.0]},
        "targets_kpa": [600.0],
    },
]

if __name__ == "__main__":
    document = {
        "made_with": {"python": platform.python_version(), "numpy": numpy.__version__,
                      "scipy": scipy.__version__, "method": "Radau", "rtol": RTOL,
                      "atol_pa": ATOL},
        "cases": [Truck(case).run() for case in CASES],
    }
    path = pathlib.Path(__file__).with_suffix(".json")
    path.write_text(json.dumps(document, indent=1) + "\n")
