#!/usr/bin/env bash
# Time of the README's first command from nothing: a bare clone, no target folder, and (with --cold)
# no registry either. Prints seconds; give a commit or branch to measure, HEAD if none.
set -euo pipefail
root=$(git -C "$(dirname "$0")" rev-parse --show-toplevel)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
if [ "${1:-}" = "--cold" ]; then
    export CARGO_HOME="$work/cargo-home"
    mkdir -p "$CARGO_HOME"
    [ -f "$HOME/.cargo/config.toml" ] && cp "$HOME/.cargo/config.toml" "$CARGO_HOME/"
    shift
fi
git clone -q "$root" "$work/clone"
cd "$work/clone"
git checkout -q "${1:-HEAD}"
unset CARGO_TARGET_DIR
start=$(date +%s.%N)
cargo run --release --quiet -- plan demo/windfarm-rock >"$work/plan.txt" || [ $? -eq 1 ]
end=$(date +%s.%N)
tail -n 3 "$work/plan.txt"
awk -v a="$start" -v b="$end" 'BEGIN { printf "first command: %.1f s on %d cores\n", b - a, '"$(nproc)"' }'
