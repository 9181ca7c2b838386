#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Builds and tests in another release of Debian or Ubuntu than this machine's, and holds its answers against those of this one:
#     sh tests/other-debian.sh RELEASE [FOLDER]        trixie, noble
# The release is put into FOLDER once (2 GB) and used again: release.sh; what is built there is a copy of these sources. Needs root.
# Every test is built optimised there, by that release's compiler and libraries.
set -eu
release=${1:?the release is missing: sh tests/other-debian.sh RELEASE [FOLDER]}
cd "$(dirname "$0")/.."
. tests/packages.sh
. tests/release.sh
root=$(release_folder "${2:-}" "$release")
make_release "$release" "$root"
need $BUILD_PACKAGES

mount -t proc proc "$root/proc"
trap 'umount "$root/proc"' EXIT
trap 'exit 1' INT TERM

# The files that git knows or would take, with their times, so that only what changed is built again.
rm -rf "$root/legwork/sources"
mkdir -p "$root/legwork/sources"
git ls-files -z --cached --others --exclude-standard | tar --null --ignore-failed-read -cf - -T - | tar -xf - -C "$root/legwork/sources"

in_release "$root" 'cd sources
    . tests/packages.sh
    need $BUILD_PACKAGES $TEST_PACKAGES
    cmake -S . -B ../build -G Ninja -DCMAKE_BUILD_TYPE=Release -DLEGWORK_TESTS=ON -DLEGWORK_PRECOMPILE=ON
    cmake --build ../build -j "$(nproc)"
    ctest --test-dir ../build --output-on-failure --no-tests=error -j "$(nproc)"
    rm -rf ../answers
    sh tests/answers.sh ../build/legwork ../answers'

[ -f build-release/CMakeCache.txt ] || cmake -S . -B build-release -G Ninja -DCMAKE_BUILD_TYPE=Release -DLEGWORK_TESTS=OFF
cmake --build build-release -j "$(nproc)" --target legwork
rm -rf build-release/answers
sh tests/answers.sh build-release/legwork build-release/answers
if diff -r build-release/answers "$root/legwork/answers"; then
    echo "legwork: $release answers as this machine does: $(find build-release/answers -type f | wc -l) texts, JSON and pages are the same"
else
    echo "legwork: $release answers otherwise than this machine: build-release/answers and $root/legwork/answers" >&2
    exit 1
fi
