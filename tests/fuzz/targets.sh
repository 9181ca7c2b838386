# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# The fuzz targets, what they begin with and how they are run. Sourced by run.sh and by tests/run.sh from the top folder; POSIX sh.

FUZZ_TARGETS="read check balance propose print form call"

# The compiler that has libFuzzer, by the name that it goes by here; nothing where there is none.
fuzz_compiler() {
    for compiler in clang++ clang++-20 clang++-19 clang++-18 clang++-17 clang++-16 clang++-15 clang++-14; do
        command -v "$compiler" >/dev/null 2>&1 || continue
        probe=$(mktemp -d)
        echo 'extern "C" int LLVMFuzzerTestOneInput(unsigned char const*, unsigned long) { return 0; }' >"$probe/probe.cpp"
        if "$compiler" -fsanitize=fuzzer,address "$probe/probe.cpp" -o "$probe/probe" 2>/dev/null; then
            rm -rf "$probe"
            echo "$compiler"
            return
        fi
        rm -rf "$probe"
    done
}

# fuzz_seeds FOLDER: one folder a target, from the examples, the cases and the forms of this tree, and the regressions.
fuzz_seeds() {
    rm -rf "$1"
    for target in $FUZZ_TARGETS; do
        mkdir -p "$1/$target"
        for found in "tests/fuzz/corpus/$target"/*; do
            [ ! -e "$found" ] || cp "$found" "$1/$target"
        done
        case $target in
        form) cp templates/*-*.toml "$1/$target" ;;
        call) fuzz_calls "$1/$target" ;;
        *) cp examples/*.toml templates/starter.toml tests/cases/*.toml tests/cases/load/*.toml tests/sound/*.toml "$1/$target" ;;
        esac
    done
}

# Each line of calls.txt with a job: the words, an empty line, the job.
fuzz_calls() {
    number=0
    for job in tests/cases/load/d1a.toml tests/cases/pair-across-one-row.toml; do
        while read -r words; do
            number=$((number + 1))
            { printf '%s\n' "$words" | tr '\t' '\n'; echo; cat "$job"; } >"$1/call-$number"
        done <tests/fuzz/calls.txt
    done
}

# fuzz_run BUILD TARGET LOG OPTION-OR-FOLDER...: keeps a finding as BUILD/findings/TARGET-*. The programs work in a folder that is thrown
# away after them. No leaks are looked for: the tests under the sanitizers do. Weighing the corpus (entropic) would take twice the time
# of the program itself.
fuzz_run() {
    build=$1 target=$2 log=$3
    shift 3
    mkdir -p "$build/findings"
    scratch=$(mktemp -d)
    status=0
    TMPDIR=$scratch ASAN_OPTIONS=detect_leaks=0:malloc_context_size=8:quarantine_size_mb=32 UBSAN_OPTIONS=print_stacktrace=1 \
        "$PWD/$build/tests/fuzz/fuzz_$target" -dict="$PWD/$build/legwork.dict" -print_final_stats=1 -detect_leaks=0 -timeout=300 -report_slow_units=300 \
        -entropic=0 -max_len=6000 -artifact_prefix="$PWD/$build/findings/$target-" "$@" >"$log" 2>&1 </dev/null || status=$?
    rm -rf "$scratch"
    return "$status"
}

# What a log of fuzz_run counts.
fuzz_executions() { sed -n 's/^stat::number_of_executed_units: *//p' "$1" | tail -n 1; }

# fuzz_tell BUILD TARGET LOG: a finding in plain words.
fuzz_tell() {
    grep -aE -A 20 '^BROKEN PROMISE|ERROR: |runtime error|terminate called' "$3" | head -n 30 >&2 || true
    input=$(sed -n 's/.*Test unit written to //p' "$3" | tail -n 1)
    echo "legwork: fuzz target $2 found something. The input is kept: ${input:-see $3}" >&2
    echo "legwork: to see it again:  $1/tests/fuzz/fuzz_$2 $input" >&2
    echo "legwork: once it is cured, put the input into tests/fuzz/corpus/$2/ under a name that says what it was" >&2
}
