#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Accepts what the last run of the tests left as NAME.new beside a golden file NAME. Look at the printed pages first:
# `sh tests/accept.sh` says what it takes.
set -eu
cd "$(dirname "$0")"
find . -name '*.new' -path '*/golden/*' | sort | while read -r new; do
    echo "tests/${new#./} -> ${new%.new}"
    mv -- "$new" "${new%.new}"
done
