#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Puts what a program says of each example and case into a folder, to be held against what another build of it says:
#     sh tests/answers.sh PROGRAM FOLDER
# Exit statuses, texts, JSON and pages; from the top of the sources, so that the names in them are the same everywhere.
set -eu
program=$(realpath "$1")
mkdir -p "$2"
into=$(realpath "$2")
cd "$(dirname "$0")/.."

# answer NAME COMMAND...
answer() {
    name=$1
    shift
    status=0
    "$program" "$@" >"$to/$name" 2>&1 || status=$?
    echo "exit status $status" >>"$to/$name"
}

for job in examples/*.toml tests/cases/*.toml tests/cases/load/*.toml; do
    to=$into/$(echo "${job%.toml}" | tr / -)
    rm -rf "$to"
    mkdir "$to"
    for command in check load balance; do
        answer "$command.txt" "$command" "$job"
        answer "$command.json" "$command" "$job" --json
    done
    case $job in # from beside it, since pages say how they are printed anew
    examples/*) (cp "$job" "$to" && cd "$to" && answer print.txt print "$(basename "$job")" --format svg --out pages) ;;
    esac
done
