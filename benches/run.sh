#!/usr/bin/env bash
# Every bench of this folder, with the peers beside them in the same run. The peers need Python with numpy, scipy,
# python-can and cantools; `pip install numpy scipy python-can cantools` brings them. Medians are in the output.
set -euo pipefail
cd "$(dirname "$0")/.."
cargo bench -q -p benches
python3 benches/peers.py
