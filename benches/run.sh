#!/usr/bin/env bash
# Every bench of this folder, with the peers beside them in the same run. Needs Python with numpy and
# scipy for the peers; `pip install numpy scipy` brings them. Median figures are in criterion's output.
set -euo pipefail
cd "$(dirname "$0")/.."
cargo bench -q -p benches
python3 benches/peers.py
