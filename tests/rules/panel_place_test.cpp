// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a panel can take. Sources: how buses and supplies are built (physics); which spaces take half-size breakers: the
// panel's own label, NEC 408.54, 110.3(B).
#include "job/job.h"
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
typed::Job with_second(typed::Job job, SupplyKind second, std::vector<std::string> off = {}) {
    job.panels[0].supply.reset();
    job.panels[0].supplies = {"Grid", "Cord inlet"};
    job.supplies = {{"Grid", SupplyKind::split_120_240, {}, Leg::a, {}},
                    {"Cord inlet", second, {}, Leg::a, std::move(off)}};
    return job;
}
} // namespace

TEST_CASE("panel-240-on-120: no 240 V load on one phase", "[check][panel]") {
    auto const load = std::vector<typed::Circuit>{two_pole("WH", 3).use("water heater")};
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        REQUIRE(says("panel-240-on-120", job(load, SupplyKind::bridged_120), edition) == "error WH");
        REQUIRE(says("panel-240-on-120", job(load), edition).empty());
        REQUIRE(says("panel-240-on-120", job(load, SupplyKind::wye_120_208), edition).empty());
        REQUIRE(says("panel-240-on-120", with_second(job(load), SupplyKind::bridged_120), edition) == "error WH");
        REQUIRE(says("panel-240-on-120", with_second(job(load), SupplyKind::one_leg_120), edition) == "error WH");
        REQUIRE(says("panel-240-on-120", with_second(job(load), SupplyKind::bridged_120, {"WH"}), edition) ==
                "warning WH");
    }
    REQUIRE(says("panel-240-on-120", job({one_pole("L1", 1)}, SupplyKind::bridged_120)).empty());
    REQUIRE(says("panel-240-on-120", job({two_pole("S", 1).use("spare")}, SupplyKind::bridged_120)).empty());
    REQUIRE(says("panel-240-on-120", job({two_pole("GI", 1).use("generator inlet")}, SupplyKind::bridged_120)).empty());
    REQUIRE(says("panel-240-on-120", job({two_pole("B", 1)}, SupplyKind::dc_48)).empty());
    REQUIRE_THAT(found("panel-240-on-120", with_second(job(load), SupplyKind::bridged_120)).at(0).message,
                 Contains("Cord inlet"));
}

TEST_CASE("panel-240-on-120: a feeder may be on one phase, the loads behind it may not", "[check][panel]") {
    auto made = job({two_pole("SP", 1).cable("6/3"), two_pole("WH", 3).in("Shed")}, SupplyKind::bridged_120);
    auto shed = made.panels[0];
    shed.name = "Shed";
    shed.supply.reset();
    shed.feeder = typed::FeederName{"Main", "SP"};
    made.panels.push_back(shed);
    REQUIRE(says("panel-240-on-120", made) == "error WH");
    made.panels[0].supply->kind = SupplyKind::split_120_240;
    REQUIRE(says("panel-240-on-120", made).empty());
    made.panels[1].supply = typed::Supply{"", SupplyKind::bridged_120, {}, Leg::a, {}}; // a 120 V feeder
    REQUIRE(says("panel-240-on-120", made) == "error WH");
}

TEST_CASE("panel-dead-space: a leg that no source feeds, a space that no bus reaches", "[check][panel]") {
    auto const three = std::vector<typed::Circuit>{one_pole("C1", 1), one_pole("C2", 2), one_pole("C3", 3)};
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        REQUIRE(says("panel-dead-space", job(three, SupplyKind::one_leg_120), edition) == "error C3");
        REQUIRE(says("panel-dead-space", job(three), edition).empty());
    }
    auto other_leg = job(three, SupplyKind::one_leg_120);
    other_leg.panels[0].supply->leg = Leg::b;
    REQUIRE(says("panel-dead-space", other_leg) == "error C1; error C2");
    REQUIRE(
        says("panel-dead-space", with_second(job(three), SupplyKind::one_leg_120)).empty()); // the grid reaches both
    auto dead = job(three);
    dead.panels[0].dead = {2};
    REQUIRE(says("panel-dead-space", dead) == "error C2");
    auto two = job({two_pole("WH", 1)}, SupplyKind::one_leg_120);
    REQUIRE(says("panel-dead-space", two) == "error WH");
    REQUIRE(says("panel-240-on-120", two).empty()); // one fault, told once
    REQUIRE(says("panel-dead-space", job({one_pole("S", 3).use("spare")}, SupplyKind::one_leg_120)).empty());
}

TEST_CASE("panel-two-legs: an odd bus", "[check][panel]") {
    auto made = job({two_pole("WH", 3)});
    made.panels[0].bus_legs = BusLegs::listed;
    made.panels[0].row_legs = {Leg::a, Leg::b, Leg::a};
    REQUIRE(says("panel-two-legs", made).empty());
    made.panels[0].row_legs = {Leg::a, Leg::b, Leg::b};
    for (auto const edition : {"NEC 2023", "CE 2024"}) REQUIRE(says("panel-two-legs", made, edition) == "error WH");
    made.panels[0].bus_legs = BusLegs::by_column;
    REQUIRE(says("panel-two-legs", made) == "error WH");
    REQUIRE(says("panel-two-legs", job({two_pole("WH", 1)}, SupplyKind::bridged_120)).empty());
}

TEST_CASE("panel-no-tandem: halves only where the panel takes them", "[check][panel]") {
    auto made = job({one_pole("A").space(8, 'a'), one_pole("B").space(8, 'b'), one_pole("C", 3)});
    REQUIRE(says("panel-no-tandem", made) == "error A B");
    REQUIRE(says("panel-no-tandem", made, "CE 2024") == "error A B");
    made.panels[0].tandem = {7, 8};
    REQUIRE(says("panel-no-tandem", made).empty());
    made.panels[0].tandem = {7, 9};
    auto const f = found("panel-no-tandem", made);
    REQUIRE_THAT(f.at(0).message, Contains("space 8") && Contains("only in spaces 7 and 9"));
    // A quad: its outer two poles and what stands between them are one fault.
    auto quad = job({two_pole("Q").space(7, 'a'), one_pole("R").space(7, 'b'), one_pole("S").space(9, 'a')});
    REQUIRE(says("panel-no-tandem", quad) == "error Q R S");
}

TEST_CASE("panel-no-room: what is short, and how many moves make room", "[check][panel]") {
    auto const made = job({one_pole("L1", 1), two_pole("WH")});
    auto plan = as_typed(made);
    REQUIRE(says("panel-no-room", made, plan).empty());
    plan.panels[0].why =
        "a two-pole breaker needs two free neighbouring spaces in one column; only single gaps are left: 5, 9";
    for (auto const edition : {"NEC 2023", "CE 2024"})
        REQUIRE(says("panel-no-room", made, plan, edition) == "error WH");
    REQUIRE_THAT(found("panel-no-room", made, plan).at(0).message, Contains("single gaps"));
    plan.panels[0].moves_for_room = 1;
    REQUIRE_THAT(found("panel-no-room", made, plan).at(0).fix, Contains("1 move "));
}
