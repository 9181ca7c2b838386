#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Whether all C++ stands as .clang-format says:  sh tests/format.sh        sets it right:  sh tests/format.sh -i
# By clang-format 14, since each version breaks lines otherwise; without it, it is said that nobody looked.
set -eu
cd "$(dirname "$0")/.."
for tool in clang-format-14 clang-format; do
    "$tool" --version 2>/dev/null | grep -q 'version 14\.' || continue
    [ "${1:-}" = -i ] && mode=-i || mode="--dry-run -Werror"
    # shellcheck disable=SC2086 # a list of options
    find src tests \( -name '*.cpp' -o -name '*.h' \) -print0 | xargs -0 "$tool" $mode || {
        echo "legwork: this is not how the C++ here is set: sh tests/format.sh -i" >&2
        exit 1
    }
    echo "legwork: all C++ stands as .clang-format says"
    exit 0
done
echo "legwork: LEFT OUT: whether the C++ stands as .clang-format says, since there is no clang-format 14 here" >&2
