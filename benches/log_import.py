"""The peer of `cargo bench -p benches --bench log_import`: python-can reads the text, cantools decodes it.

    pip install python-can cantools

Called by the bench with a text of candump and a DBC of its groups; prints frames a second, one line a run."""

import sys
import time

RUNS = 5


def main():
    try:
        import can
        import cantools
    except ImportError as missing:
        sys.exit(f"{missing}; pip install python-can cantools")
    text, groups = sys.argv[1:3]
    database = cantools.database.load_file(groups, strict=False)
    known = {message.frame_id: message for message in database.messages}
    for _ in range(RUNS):
        start = time.perf_counter()
        frames = 0
        with can.CanutilsLogReader(text) as reader:
            for frame in reader:
                frames += 1
                message = known.get(frame.arbitration_id)
                if message is not None:
                    message.decode(frame.data, decode_choices=False)
        print(frames / (time.perf_counter() - start))


main()
