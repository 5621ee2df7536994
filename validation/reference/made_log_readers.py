"""A made log read by python-can and cantools, held against its truth.

    airtide new fleet --demo windfarm-rock
    airtide logs make fleet --out logs --cycles 1
    python made_log_readers.py logs/T-31-2026-01-12.log

python-can reads the lines, cantools decodes the signals from a DBC written here from the numbers of
the open extract (start bit, width, scale, offset). Prints a table for docs/made-logs.md.
"""

import json
import sys
from pathlib import Path

import can
import cantools

DBC = """
VERSION ""
BO_ 2566845694 TireCondition: 8 X
 SG_ location : 0|8@1+ (1,0) [0|255] "" X
 SG_ pressure : 8|8@1+ (4,0) [0|1000] "kPa" X
 SG_ temperature : 16|16@1+ (0.03125,-273) [-273|1735] "C" X
BO_ 2566827774 AirSupply: 8 X
 SG_ service_1 : 16|8@1+ (8,0) [0|2000] "kPa" X
 SG_ service_2 : 24|8@1+ (8,0) [0|2000] "kPa" X
BO_ 2566844926 Speed: 8 X
 SG_ wheel_speed : 8|16@1+ (0.00390625,0) [0|251] "km/h" X
BO_ 2364540158 Engine: 8 X
 SG_ speed : 24|16@1+ (0.125,0) [0|8032] "rpm" X
BO_ 2566845438 Position: 8 X
 SG_ latitude : 0|32@1+ (1e-07,-210) [-210|211] "deg" X
 SG_ longitude : 32|32@1+ (1e-07,-210) [-210|211] "deg" X
"""


def interpolated(times, values, at):
    """Value at a time and how far it moves in the two minutes around it."""
    low, high = 0, len(times) - 1
    while high - low > 1:
        middle = (low + high) // 2
        if times[middle] <= at:
            low = middle
        else:
            high = middle
    share = min(max((at - times[low]) / (times[high] - times[low]), 0.0), 1.0)
    around = values[max(low - 6, 0) : high + 7]
    return values[low] + (values[high] - values[low]) * share, max(around) - min(around)


def main(path):
    truth = json.loads(path.with_suffix(".truth.json").read_text())
    database = cantools.database.load_string(DBC, "dbc")
    by_group = {(message.frame_id >> 8) & 0x3FFFF: message for message in database.messages}
    values = truth["values"]
    tires = {tire["location"]: index for index, tire in enumerate(truth["tires"])}
    frames, groups, announced, worst, first, last = 0, set(), 0, 0.0, None, None
    counts = {}
    with can.CanutilsLogReader(str(path)) as log:
        for frame in log:
            frames += 1
            assert frame.is_extended_id
            field = (frame.arbitration_id >> 8) & 0x3FFFF
            group = field if (field >> 8) & 0xFF >= 240 else field & 0x3FF00
            groups.add(group)
            first = first if first is not None else frame.timestamp
            last = frame.timestamp
            if group == 60416 and frame.data[0] == 32:
                announced += 1
            message = by_group.get(group)
            if message is None:
                continue
            counts[message.name] = counts.get(message.name, 0) + 1
            at = frame.timestamp - truth["begins_unix_s"]
            if message.name == "TireCondition":
                said = message.decode(frame.data)
                index = tires[said["location"]]
                true, moves = interpolated(values["time_s"], values["tire_kpa"][index], at)
                off = truth["tires"][index]["sensor_off_kpa"]
                if moves < 1.0:
                    worst = max(worst, abs(said["pressure"] - off - true))
    print("| by python-can and cantools | |\n|---|---|")
    print(f"| frames | {frames} |\n| groups | {len(groups)} |\n| span, s | {last - first:.0f} |")
    print(f"| messages by transport | {announced} |")
    for name, count in sorted(counts.items()):
        print(f"| {name} | {count} |")
    print(f"| farthest tire pressure from the truth while steady, kPa | {worst:.2f} |")


main(Path(sys.argv[1]))
