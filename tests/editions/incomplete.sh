#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# incomplete.sh COMPILER SOURCE_FOLDER: every file of incomplete/ but complete.cpp must be refused by the compiler, in the
# words of its lines "// Says: ...". complete.cpp must not, but must be once a member is taken from its book.
compiler=$1 source=$2 failed=0
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
mkdir "$folder/editions"

builds() { # FILE [FOLDER of headers that come first]
    LC_ALL=C "$compiler" -std=c++20 -Wall -Wextra -Werror -fsyntax-only -I"${2:-$source/tests}" -I"$source/src" \
        -I"$source/tests" "$1" >"$folder/said" 2>&1
}
fail() {
    echo "$1"
    cat "$folder/said"
    failed=1
}

complete=$source/tests/editions/incomplete/complete.cpp
builds "$complete" || fail "complete.cpp does not build"
for member in gfci afci small_wires ampacities_source continuous_percent presumes_continuous; do
    grep -v "^ *\.$member = " "$source/tests/editions/made_up.h" >"$folder/editions/made_up.h"
    if builds "$complete" "$folder"; then
        fail "a book without .$member builds"
    else
        grep -q "CodeBook::$member" "$folder/said" || fail "a book without .$member is refused, but not for that"
    fi
done

for file in "$source"/tests/editions/incomplete/*.cpp; do
    name=$(basename "$file")
    [ "$name" != complete.cpp ] || continue
    if builds "$file"; then
        fail "$name builds"
        continue
    fi
    says=$(sed -n 's|^// Says: ||p' "$file")
    [ -n "$says" ] || fail "$name does not say what is expected"
    echo "$says" | while read -r line; do
        grep -qF -- "$line" "$folder/said" || exit 1
    done || fail "$name is refused, but not for: $says"
done
exit $failed
