// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "walk.h"

#include "catch.h"

#include <iostream>

using namespace faults;

namespace {

void kill_everywhere(Scene const& scene) {
    Walk walk(scene);
    walk_kills(walk);
    std::cout << walk.report() << '\n'; // not by INFO, which breaks lines
    CHECK(walk.complaints().empty());
}

} // namespace

TEST_CASE("balance --write killed at any call: old or new, nothing lost, no strays after the next run",
          "[faults][kill]") {
    kill_everywhere(balance_write());
}

TEST_CASE("check --propose --write killed at any call: old or new, nothing lost, no strays after the next run",
          "[faults][kill]") {
    kill_everywhere(propose_write());
}

TEST_CASE("print over an older print, killed at any call: each sheet old or new, no strays after the next run",
          "[faults][kill]") {
    kill_everywhere(print_over_older());
}

TEST_CASE("print into new folders, killed at any call: each sheet whole or absent, no strays after the next run",
          "[faults][kill]") {
    kill_everywhere(print_anew());
}

TEST_CASE("new killed at any call: the job whole or absent, no strays after the next run", "[faults][kill]") {
    kill_everywhere(new_job());
}
