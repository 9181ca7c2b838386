#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Installs what is missing, builds, and runs every test: those whose work is long, and those of the whole program, optimised; every
# other under the address and undefined-behaviour sanitizers (where the random tests try fewer cases); then every fuzz target for a
# while. tests/CMakeLists.txt says which runs where, and why. The sanitizers' build is clang++'s, since it serves the fuzz targets
# too, and so both compilers read all of the program.
set -eu
cd "$(dirname "$0")/.."
. tests/packages.sh
. tests/fuzz/targets.sh
need $BUILD_PACKAGES $TEST_PACKAGES
need $FUZZ_PACKAGES || true # said below, where they are not there
need $FORMAT_PACKAGES || true
left_out=
leave_out() { left_out="$left_out
legwork: LEFT OUT: $1"; echo "legwork: LEFT OUT: $1" >&2; }

sh tests/format.sh
compiler=$(fuzz_compiler)
if [ -n "$compiler" ]; then
    sanitize=build-sanitize-fuzz
    with_fuzz="-DLEGWORK_FUZZ=ON -DCMAKE_CXX_COMPILER=$compiler"
    "$compiler" -fuse-ld=lld -Wl,--version >/dev/null 2>&1 && with_fuzz="$with_fuzz -DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=lld"
else
    sanitize=build-sanitize
    with_fuzz=-DLEGWORK_FUZZ=OFF
    if command -v clang++ >/dev/null 2>&1; then
        with_fuzz="$with_fuzz -DCMAKE_CXX_COMPILER=clang++"
        leave_out "the fuzz targets, since clang++ has no libFuzzer here"
    else
        leave_out "the fuzz targets, and whether clang++ takes the sources, since there is none here"
    fi
fi

cmake -S . -B build-release -G Ninja -DCMAKE_BUILD_TYPE=Release -DLEGWORK_TESTS=ON -DLEGWORK_LONG_TESTS=ON -DLEGWORK_PRECOMPILE=ON
cmake --build build-release -j "$(nproc)"
# shellcheck disable=SC2086 # a list of options
cmake -S . -B "$sanitize" -G Ninja -DCMAKE_BUILD_TYPE=Debug "-DCMAKE_CXX_FLAGS_DEBUG=-O1 -g1" -DLEGWORK_SANITIZE=ON $with_fuzz \
    -DLEGWORK_TESTS=ON -DLEGWORK_PRECOMPILE=ON
cmake --build "$sanitize" -j "$(nproc)"

echo "legwork: the tests under the sanitizers"
LSAN_OPTIONS="suppressions='$PWD/tests/leaks.supp':print_suppressions=0" ctest --test-dir "$sanitize" --output-on-failure --no-tests=error -j "$(nproc)"
if [ -n "$compiler" ]; then
    echo "legwork: the fuzz targets"
    sh tests/fuzz/short.sh "$sanitize" 120
fi
echo "legwork: the tests whose work is long, and those of the program"
ctest --test-dir build-release --output-on-failure --no-tests=error -j "$(nproc)"
[ -z "$left_out" ] || echo "$left_out" >&2
