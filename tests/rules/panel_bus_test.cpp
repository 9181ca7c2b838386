// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Source: NEC 408.36; CE 14-606(1), read for 2021 on two pages, else from memory.
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
typed::Job with_main(std::optional<Amps> main, std::optional<Amps> bus) {
    auto made = job({one_pole("L1", 1)});
    made.panels[0].main = main;
    made.panels[0].bus = bus;
    return made;
}

// A panel "Sub" below "Main", fed by this breaker.
typed::Job with_sub(Amps feeder, std::optional<Amps> main, Amps bus) {
    auto made = job({two_pole("SP", 1).breaker(feeder).cable("4/3")});
    made.panels[0].main = 200_A;
    made.panels[0].bus = 200_A;
    typed::Panel sub;
    sub.name = "Sub";
    sub.spaces = 12;
    sub.feeder = typed::FeederName{"Main", "SP"};
    sub.main = main;
    sub.bus = bus;
    made.panels.push_back(sub);
    return made;
}
} // namespace

TEST_CASE("panel-bus: a main larger than its bus", "[check][panel]") {
    CHECK(says("panel-bus", with_main(200_A, 125_A), "NEC 2020") == "error Main");
    CHECK(says("panel-bus", with_main(125_A, 125_A), "NEC 2020").empty());
    CHECK(says("panel-bus", with_main(100_A, 125_A), "NEC 2017").empty());
    CHECK(says("panel-bus", with_main(200_A, {}), "NEC 2020").empty());
    CHECK(says("panel-bus", with_main({}, 125_A), "NEC 2020").empty());
    CHECK(says("panel-bus", with_main(200_A, 125_A), "CE 2021") == "error Main");
}

TEST_CASE("panel-bus: an old panel, and a number from memory, are warned of", "[check][panel]") {
    auto old = with_main(200_A, 125_A);
    old.panels[0].existing = true;
    CHECK(says("panel-bus", old, "NEC 2020") == "warning Main"); // old split-bus service panels are let off
    CHECK(says("panel-bus", with_main(200_A, 125_A), "CE 2018") == "warning Main");
    CHECK(says("panel-bus", with_main(200_A, 125_A), "CE 2024") == "warning Main");
}

TEST_CASE("panel-bus: without a main the breaker of the feeder counts, and the smallest ahead", "[check][panel]") {
    CHECK(says("panel-bus", with_sub(100_A, {}, 100_A), "NEC 2023").empty());
    CHECK(says("panel-bus", with_sub(125_A, {}, 100_A), "NEC 2023") == "error SP");
    CHECK(says("panel-bus", with_sub(125_A, 100_A, 100_A), "NEC 2023").empty()); // its own main is within
    CHECK(says("panel-bus", with_sub(100_A, 125_A, 100_A), "NEC 2023").empty()); // and so is what feeds it
    CHECK(says("panel-bus", with_sub(125_A, 150_A, 100_A), "NEC 2023") == "error SP");
}

TEST_CASE("panel-bus: a generator's breaker is the one before the bus while it runs", "[check][panel]") {
    auto made = job({two_pole("GI", 1).use("generator inlet").breaker(150_A)});
    made.panels[0].bus = 125_A;
    CHECK(says("panel-bus", made, "NEC 2023") == "error GI");
    made.circuits[0].breaker = 100_A;
    CHECK(says("panel-bus", made, "NEC 2023").empty());
}
