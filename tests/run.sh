#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Installs what is missing, builds, and runs every test: once optimised, once under the address and undefined-behaviour
# sanitizers (where the random tests try fewer cases).
set -eu
cd "$(dirname "$0")/.."
. tests/packages.sh
need $BUILD_PACKAGES $TEST_PACKAGES

cmake -S . -B build-release -G Ninja -DCMAKE_BUILD_TYPE=Release -DLEGWORK_TESTS=ON -DLEGWORK_PRECOMPILE=ON
cmake --build build-release -j "$(nproc)"
cmake -S . -B build-sanitize -G Ninja -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG=-g1 -DLEGWORK_SANITIZE=ON \
    -DLEGWORK_TESTS=ON -DLEGWORK_PRECOMPILE=ON
cmake --build build-sanitize -j "$(nproc)"

echo "legwork: the tests under the sanitizers"
LSAN_OPTIONS="suppressions='$PWD/tests/leaks.supp':print_suppressions=0" ctest --test-dir build-sanitize --output-on-failure --no-tests=error -j "$(nproc)"
echo "legwork: every test"
ctest --test-dir build-release --output-on-failure --no-tests=error -j "$(nproc)"
