#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Fuzzes for so many minutes:  sh tests/fuzz/run.sh MINUTES [TARGET]
# Targets: read check balance propose print form call; all share the time when none is named. Builds optimised in build-fuzz, keeps
# what it learns in build-fuzz/corpus and what it finds in build-fuzz/findings; goes on after a finding. Ends with 1 when there is one.
set -eu
cd "$(dirname "$0")/../.."
. tests/packages.sh
. tests/fuzz/targets.sh
minutes=${1:?minutes are missing: sh tests/fuzz/run.sh MINUTES [TARGET]}
[ -z "${2:-}" ] || FUZZ_TARGETS=$2
need $BUILD_PACKAGES $FUZZ_PACKAGES
compiler=$(fuzz_compiler)
[ -n "$compiler" ] || { echo "legwork: there is no clang++ with libFuzzer, which fuzzing needs" >&2; exit 1; }

cmake -S . -B build-fuzz -G Ninja -DCMAKE_CXX_COMPILER="$compiler" -DCMAKE_BUILD_TYPE=Debug "-DCMAKE_CXX_FLAGS_DEBUG=-O1 -g1" \
    -DLEGWORK_SANITIZE=ON -DLEGWORK_FUZZ=ON -DLEGWORK_TESTS=OFF -DLEGWORK_PRECOMPILE=ON
cmake --build build-fuzz -j "$(nproc)"
build-fuzz/tests/fuzz/fuzz_dictionary >build-fuzz/legwork.dict
fuzz_seeds build-fuzz/seeds

# One target until the time is over, again after each finding.
run_target() {
    target=$1 seconds=$2
    corpus=$PWD/build-fuzz/corpus/$target
    mkdir -p "$corpus"
    until=$(($(date +%s) + seconds)) round=0
    [ "$target" = read ] && options=-max_len=512 || options= # most mistakes are short
    : >"build-fuzz/$target.executions"
    while [ "$(date +%s)" -lt "$until" ] && [ "$round" -lt 50 ]; do
        round=$((round + 1))
        log=build-fuzz/$target-$round.log
        # shellcheck disable=SC2086 # a list of options
        fuzz_run build-fuzz "$target" "$log" $options -seed="$(date +%s)" -max_total_time=$((until - $(date +%s))) "$corpus" \
            "$PWD/build-fuzz/seeds/$target" || fuzz_tell build-fuzz "$target" "$log"
        fuzz_executions "$log" >>"build-fuzz/$target.executions"
    done
}

findings() { find build-fuzz/findings -type f 2>/dev/null | sort; }

before=$(findings | wc -l)
cores=$(nproc) running=0
set -- $FUZZ_TARGETS
batches=$((($# + cores - 1) / cores))
share=$((minutes * 60 / batches))
for target in "$@"; do
    run_target "$target" "$share" &
    running=$((running + 1))
    [ $((running % cores)) -ne 0 ] || wait
done
wait

for target in "$@"; do
    awk -v target="$target" '{ n += $1 } END { printf "%-8s %10d executions\n", target, n }' "build-fuzz/$target.executions"
done
after=$(findings | wc -l)
echo "legwork: $((after - before)) new findings in build-fuzz/findings"
[ "$after" -eq "$before" ]
