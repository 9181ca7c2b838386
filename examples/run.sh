#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Installs what is missing, builds, and runs the main job on every job beside this file: check, balance, load, print. The sheets
# come to examples/out/NAME/.
set -eu
cd "$(dirname "$0")/.."
. tests/packages.sh
need $BUILD_PACKAGES

[ -f build-release/CMakeCache.txt ] || cmake -S . -B build-release -G Ninja -DCMAKE_BUILD_TYPE=Release -DLEGWORK_TESTS=OFF
cmake --build build-release -j "$(nproc)" --target legwork
legwork=build-release/legwork

# The exit status that a job is there to show: faulty.toml has error findings, unreadable.toml cannot be read.
expected() {
    case $1 in
        faulty) echo 1 ;;
        unreadable) echo 2 ;;
        *) echo 0 ;;
    esac
}

failed=0
# run WANTED COMMAND...
run() {
    wanted=$1
    shift
    printf '\n$ %s\n' "$*"
    status=0
    "$@" || status=$?
    [ "$status" -eq "$wanted" ] && return
    echo "legwork: exit status $status, not $wanted: $*" >&2
    failed=1
}

for job in examples/*.toml; do
    name=$(basename "$job" .toml)
    case $name in *.before*) continue ;; esac
    run "$(expected "$name")" "$legwork" check "$job"
    case $name in faulty | unreadable) continue ;; esac
    run 0 "$legwork" balance "$job"
    run 0 "$legwork" load "$job"
    rm -rf "examples/out/$name"
    run 0 "$legwork" print "$job" --out "examples/out/$name"
done

[ "$failed" -eq 0 ] || exit 1
printf '\nThe sheets are in:\n'
printf '  %s\n' "$PWD"/examples/out/*/
