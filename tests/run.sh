#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Installs what is missing, builds, and runs every test: once optimised, once under the address and undefined-behaviour
# sanitizers (where the random tests try fewer cases); then every fuzz target for a while. The sanitizers' build is clang++'s, since it
# serves the fuzz targets too.
set -eu
cd "$(dirname "$0")/.."
. tests/packages.sh
. tests/fuzz/targets.sh
need $BUILD_PACKAGES $TEST_PACKAGES
need $FUZZ_PACKAGES || true # said below, where they are not there
compiler=$(fuzz_compiler)
if [ -n "$compiler" ]; then
    sanitize=build-sanitize-fuzz
    with_fuzz="-DLEGWORK_FUZZ=ON -DCMAKE_CXX_COMPILER=$compiler"
else
    sanitize=build-sanitize
    with_fuzz=-DLEGWORK_FUZZ=OFF
    no_fuzz="legwork: LEFT OUT: the fuzz targets, since there is no clang++ with libFuzzer here; the sanitizers' build is the default compiler's"
    echo "$no_fuzz" >&2
fi

cmake -S . -B build-release -G Ninja -DCMAKE_BUILD_TYPE=Release -DLEGWORK_TESTS=ON -DLEGWORK_PRECOMPILE=ON
cmake --build build-release -j "$(nproc)"
# shellcheck disable=SC2086 # a list of options
cmake -S . -B "$sanitize" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG=-g1 -DLEGWORK_SANITIZE=ON $with_fuzz \
    -DLEGWORK_TESTS=ON -DLEGWORK_PRECOMPILE=ON
cmake --build "$sanitize" -j "$(nproc)"

echo "legwork: the tests under the sanitizers"
LSAN_OPTIONS="suppressions='$PWD/tests/leaks.supp':print_suppressions=0" ctest --test-dir "$sanitize" --output-on-failure --no-tests=error -j "$(nproc)"
if [ -n "$compiler" ]; then
    echo "legwork: the fuzz targets"
    sh tests/fuzz/short.sh "$sanitize" 120
fi
echo "legwork: every test"
ctest --test-dir build-release --output-on-failure --no-tests=error -j "$(nproc)"
[ -n "$compiler" ] || echo "$no_fuzz" >&2
