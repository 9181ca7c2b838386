// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Source: the manual pages of the system calls, section ERRORS; the promises are those of output/replace.h,
// output/files.h and the README's exit statuses.

#include "walk.h"

#include "catch.h"

#include <iostream>

using namespace faults;

namespace {

void check(Walk const& walk) {
    std::cout << walk.report() << '\n'; // not by INFO, which breaks lines
    CHECK(walk.complaints().empty());
}

void fail_everywhere(Scene const& scene) {
    Walk walk(scene);
    walk_refusals(walk);
    walk_short(walk);
    check(walk);
}

} // namespace

TEST_CASE("balance --write: whatever call fails, the job is old or new, and the cause told", "[faults][fail]") {
    fail_everywhere(balance_write());
}

TEST_CASE("check --propose --write: whatever call fails, the job is old or new, and the cause told", "[faults][fail]") {
    fail_everywhere(propose_write());
}

TEST_CASE("print over an older print: whatever call fails, each sheet is old or new, and the cause told",
          "[faults][fail]") {
    fail_everywhere(print_over_older());
}

TEST_CASE("print into new folders: whatever call fails, each sheet is whole or absent, and the cause told",
          "[faults][fail]") {
    fail_everywhere(print_anew());
}

TEST_CASE("new: whatever call fails, the job is whole or absent, and the cause told", "[faults][fail]") {
    fail_everywhere(new_job());
}

TEST_CASE("print: a typeface or form that cannot be read is told, and no other taken in its place", "[faults][fail]") {
    Walk walk(print_anew());
    walk_reading(walk);
    check(walk);
}
