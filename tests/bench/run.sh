#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
# Builds the release and prints what it costs, each figure beside its target: printing, the balance and its proofs, the
# search of check, short wires, and how late a hard stop ends (that last is read off the clock on the wall, so leave the machine
# alone meanwhile). Needs libbenchmark-dev and coinor-cbc.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
build=${1:-$root/build-bench}
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DLEGWORK_BENCH=ON -DLEGWORK_TESTS=OFF
cmake --build "$build" --target legwork_bench
"$build/tests/bench/legwork_bench"
