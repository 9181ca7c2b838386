#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# What CI runs, from the top folder:  sh tests/fuzz/short.sh BUILD SECONDS
# Every target over all it begins with, then so many seconds of fuzzing shared by all targets: from the same seed each time, so that a
# finding comes again as far as the machine gets. As many targets at once as there are cores.
set -eu
. tests/fuzz/targets.sh
build=$1 seconds=$2
one_target() {
    target=$1
    logs=$build/fuzz-logs/$target seeds=$PWD/$build/seeds/$target short=$PWD/$build/short/$target
    fuzz_run "$build" "$target" "$logs-seeds" -runs=0 -max_len=1048576 "$seeds" ||
        { fuzz_tell "$build" "$target" "$logs-seeds"; return 1; }
    [ "$(fuzz_executions "$logs-seeds")" -gt "$(find "$seeds" -type f | wc -l)" ] ||
        { echo "legwork: fuzz target $target left out some of $seeds" >&2; return 1; }
    grep -q 'found LLVMFuzzerCustomMutator' "$logs-seeds" ||
        { echo "legwork: fuzz target $target is linked without its mutator" >&2; return 1; }
    # From the short ones, so that the time goes to new inputs.
    mkdir -p "$short"
    find "$seeds" -type f -size -2k -exec cp {} "$short" \;
    fuzz_run "$build" "$target" "$logs" -seed=1 -max_total_time="$seconds" "$short" ||
        { fuzz_tell "$build" "$target" "$logs"; return 1; }
    printf 'legwork: fuzz target %-8s %7d executions\n' "$target" \
        $(($(fuzz_executions "$logs-seeds") + $(fuzz_executions "$logs")))
}

if [ -n "${3:-}" ]; then
    one_target "$3"
else
    "$build/tests/fuzz/fuzz_dictionary" >"$build/legwork.dict"
    fuzz_seeds "$build/seeds"
    rm -rf "$build/short"
    mkdir -p "$build/fuzz-logs"
    set -- $FUZZ_TARGETS
    cores=$(nproc)
    share=$((seconds * cores / $#))
    printf '%s\n' "$@" | xargs -P "$cores" -I TARGET sh tests/fuzz/short.sh "$build" "$share" TARGET
fi
