// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "panel/layout.h"

#include "job/job.h"
#include "panel/feeds.h"

#include "catch.h"

using namespace legwork;

TEST_CASE("layout: a row is on one leg and legs alternate down a column", "[panel]") {
    // Source: common practice, no source (panels of 42 spaces have 21 rows, 22 spaces on leg A).
    typed::Panel p;
    p.spaces = 42;
    Layout const across(p);
    REQUIRE(across.leg(1) == Leg::a);
    REQUIRE(across.leg(2) == Leg::a);
    REQUIRE(across.leg(3) == Leg::b);
    REQUIRE(across.next_in_column(5) == 7);
    REQUIRE(across.neighbours(5, 7));
    REQUIRE_FALSE(across.neighbours(5, 6));
    REQUIRE_FALSE(across.next_in_column(41));
    int on_a = 0;
    for (int s = 1; s <= 42; ++s) on_a += across.leg(s) == Leg::a;
    REQUIRE(on_a == 22);
}

TEST_CASE("layout: numbered down the columns", "[panel]") {
    typed::Panel p;
    p.spaces = 24;
    p.numbering = Numbering::down;
    Layout const down(p);
    REQUIRE(down.leg(5) == down.leg(17)); // they face each other
    REQUIRE(down.neighbours(1, 2));
    REQUIRE_FALSE(down.neighbours(12, 13));
    REQUIRE_FALSE(down.next_in_column(12));
}

TEST_CASE("neutral current is one formula for every phase angle", "[panel]") {
    // Source: published worked examples (16 A and 10 A: 6 A on opposite legs, 26 A on one) and N2 (5 and 8 A on two
    // phases of a wye: 7 A).
    REQUIRE(neutral_amps(16, 10, 180) == Approx(6));
    REQUIRE(neutral_amps(16, 10, 0) == Approx(26));
    REQUIRE(neutral_amps(5, 8, 120) == Approx(7));
}
