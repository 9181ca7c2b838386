#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# clang-tidy over the program's own code, by the checks of .clang-tidy:
#     sh tests/tidy.sh [FILE...]        all of src/, which takes half an hour, or the files named
# By hand and not in CI, for the time that it takes. Ends with 1 where it finds something.
set -eu
cd "$(dirname "$0")/.."
. tests/packages.sh
need $BUILD_PACKAGES $TIDY_PACKAGES

cmake -S . -B build-tidy -G Ninja -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_BUILD_TYPE=Release -DLEGWORK_TESTS=OFF \
    -DCMAKE_EXPORT_COMPILE_COMMANDS=ON >/dev/null
[ $# -gt 0 ] || set -- $(find src -name '*.cpp' | sort)
status=0
printf '%s\n' "$@" | xargs -P "$(nproc)" -n 1 clang-tidy --quiet --warnings-as-errors='*' -p build-tidy 2>build-tidy/counts.log || status=$?
[ "$status" -eq 0 ] || { echo "legwork: clang-tidy finds something" >&2; exit 1; }
echo "legwork: clang-tidy finds nothing in $# files"
