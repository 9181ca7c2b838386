// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Source: NEC 210.21(A), 210.23, Table 210.24 (up.codes, branch circuit requirements); 2023 210.18 (two trade pages);
// CE 30-104(a) (two public pages), 2018 and 2024 from memory.
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
typed::Job at_home(typed::Circuit c) {
    auto made = job({std::move(c)});
    made.dwelling = typed::Dwelling{};
    made.dwelling->area = Area{90'000'000};
    return made;
}
Make lights(Amps breaker) {
    return one_pole("L1", 1).use("lighting").called("Lights", "Living room").breaker(breaker).cable("10/2");
}
Make receptacles(Amps breaker) {
    return one_pole("R1", 1).use("receptacles").called("Receptacles", "Bedroom").breaker(breaker).cable("10/2");
}
} // namespace

TEST_CASE("wire-branch: lights of a dwelling on a circuit that is too large", "[check][wire]") {
    CHECK(says("wire-branch", at_home(lights(30_A)), "NEC 2020") == "error L1");
    CHECK(says("wire-branch", at_home(lights(20_A)), "NEC 2020").empty());
    CHECK(says("wire-branch", at_home(lights(20_A)), "CE 2021") == "error L1");
    CHECK(says("wire-branch", at_home(lights(15_A)), "CE 2021").empty());
    CHECK(says("wire-branch", at_home(lights(20_A)), "CE 2018") == "warning L1");
    CHECK(says("wire-branch", at_home(lights(20_A)), "CE 2024") == "warning L1");
    CHECK(says("wire-branch", at_home(lights(30_A).old()), "NEC 2020") == "warning L1");
}

TEST_CASE("wire-branch: lights that only a name tells, or that stand outside, are asked about", "[check][wire]") {
    auto const named = receptacles(20_A).called("Receptacles and lights", "Bedroom");
    CHECK(says("wire-branch", at_home(named), "CE 2021") == "warning R1");
    CHECK(says("wire-branch", at_home(receptacles(20_A)), "CE 2021").empty());
    auto const outside = lights(20_A).called("Lights", "Outside");
    CHECK(says("wire-branch", at_home(outside), "CE 2021") == "warning L1");
    auto shed = lights(20_A).called("Lights", "Tools").with([](typed::Circuit& c) { c.building = "Shed"; });
    CHECK(says("wire-branch", at_home(shed), "CE 2021").empty()); // no dwelling unit
}

TEST_CASE("wire-branch: elsewhere large lights are a question of their lampholders", "[check][wire]") {
    CHECK(says("wire-branch", job({lights(30_A)}), "NEC 2023") == "note L1");
    CHECK(says("wire-branch", job({lights(20_A)}), "NEC 2023").empty());
    CHECK(says("wire-branch", job({lights(20_A)}), "CE 2021").empty());
}

TEST_CASE("wire-branch: receptacles of a dwelling's rooms", "[check][wire]") {
    CHECK(says("wire-branch", at_home(receptacles(30_A)), "NEC 2023") == "error R1");
    CHECK(says("wire-branch", at_home(receptacles(20_A)), "NEC 2023").empty());
    // One receptacle for one thing, and a listed type, are wire-outlet's.
    CHECK(says("wire-branch", at_home(receptacles(30_A).outlets({"TT-30R"})), "NEC 2023").empty());
    auto one = receptacles(30_A).with([](typed::Circuit& c) { c.outlet_count = 1; });
    CHECK(says("wire-branch", at_home(one), "NEC 2023").empty());
    auto const outside = receptacles(30_A).use("outdoor").called("Trailer", "Outside");
    CHECK(says("wire-branch", at_home(outside), "NEC 2023") == "warning R1");
    CHECK(says("wire-branch", job({receptacles(30_A)}), "NEC 2023").empty()); // no dwelling
}

TEST_CASE("wire-branch: a circuit of 10 A is for lights and little else", "[check][wire]") {
    CHECK(says("wire-branch", at_home(receptacles(10_A)), "NEC 2023") == "error R1");
    CHECK(says("wire-branch", at_home(lights(10_A)), "NEC 2023").empty());
    CHECK(says("wire-branch", at_home(one_pole("F1", 1).use("bath fan").breaker(10_A)), "NEC 2023").empty());
    CHECK(says("wire-branch", at_home(one_pole("D1", 1).use("dishwasher").breaker(10_A)), "NEC 2023") == "error D1");
    CHECK(says("wire-branch", at_home(receptacles(15_A)), "NEC 2023").empty());
    CHECK(says("wire-branch", at_home(receptacles(10_A)), "NEC 2020").empty()); // no such breaker: wire-breaker-size
}
