// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How the legs are loaded. Sources: Ohm's law and the sum of currents; the thresholds are ours (rules of this program).
#include "building/resolve.h"
#include "made_job.h"

#include "job/job.h"
#include "reckon/leg_amps.h"

#include "catch.h"

using namespace made;

namespace {
PanelPlan legs(typed::Job const& job, std::int64_t a, std::int64_t b, std::int64_t least) {
    auto plan = as_typed(job).panels[0];
    plan.situations = {{"connected", a, b, std::abs(a - b), 0}};
    plan.imbalance_va = std::abs(a - b);
    plan.least_imbalance_va = plan.lower_bound_va = least;
    return plan;
}
LegAmps amps_on(typed::Job job, typed::Situation const* s = nullptr) {
    if (s) job.situations = {*s};
    auto const plan = as_typed(job);
    auto const building = resolve(job);
    Case const c{building, plan, *code_book("NEC 2023")};
    Panel const& panel = building.panels[0];
    return leg_amps(c, panel, s ? &building.situations[0] : nullptr, panel.feeds.at(0));
}
typed::Situation evening(std::map<std::string, std::int64_t> by_mark, std::int64_t other = 1'000'000) {
    typed::Situation s;
    s.name = "Evening";
    s.other = other;
    s.by_mark = std::move(by_mark);
    return s;
}
} // namespace

TEST_CASE("panel-legs-uneven: by more than 600 VA over the least, and by more than a tenth of the heavier leg",
          "[check][panel]") {
    auto const made = job({one_pole("L1", 1)});
    auto const verdict = [&](std::int64_t a, std::int64_t b, std::int64_t least) {
        return says("panel-legs-uneven", made, Plan{{legs(made, a, b, least)}});
    };
    REQUIRE(verdict(3000, 2399, 0) == "warning Main"); // 601 VA, 20 %
    REQUIRE(verdict(3000, 2400, 0).empty());           // 600 VA
    REQUIRE(verdict(6010, 5409, 0).empty());           // exactly a tenth
    REQUIRE(verdict(6009, 5408, 0) == "warning Main");
    REQUIRE(verdict(20000, 18500, 0).empty()); // 1500 VA, 7.5 %
    REQUIRE(verdict(9000, 0, 8500).empty());   // no rebalance helps
    REQUIRE(verdict(9000, 0, 8000) == "warning Main");
    REQUIRE(says("panel-legs-uneven", made, Plan{{legs(made, 9000, 0, 0)}}, "CE 2024") == "warning Main");
    REQUIRE(says("panel-legs-uneven", made, as_typed(made)).empty()); // nothing to balance
}

TEST_CASE("panel-legs-uneven: says what a rebalance gives, and what is not proven", "[check][panel]") {
    auto const made = job({one_pole("L1", 1), two_pole("WH", 3).breaker(30_A)});
    auto plan = legs(made, 5200, 3100, 37);
    plan.tradeoff = {{0, 2100}, {1, 900}, {2, 37}};
    auto f = found("panel-legs-uneven", made, Plan{{plan}});
    REQUIRE_THAT(f.at(0).message,
                 Contains("differ by 2100 VA") && Contains("900 VA with 1 move and 37 VA with 2 moves"));
    REQUIRE_THAT(f.at(0).message, Contains("50 A on A and 30 A on B") && !Contains("proven"));
    plan.proven = false;
    f = found("panel-legs-uneven", made, Plan{{plan}});
    REQUIRE_THAT(f.at(0).message, Contains("not proven"));
}

TEST_CASE("panel-legs-uneven: the worst named situation decides, not everything on at once", "[check][panel]") {
    auto const made = job({one_pole("L1", 1)});
    auto plan = legs(made, 9000, 0, 0);
    plan.situations.push_back({"Evening", 2000, 1900, 100, 0});
    plan.imbalance_va = 100;
    REQUIRE(says("panel-legs-uneven", made, Plan{{plan}}).empty());
    plan.situations.push_back({"Morning", 2000, 1000, 1000, 0});
    plan.imbalance_va = 1000;
    REQUIRE_THAT(found("panel-legs-uneven", made, Plan{{plan}}).at(0).message, Contains("Morning"));
}

TEST_CASE("leg amperes: lines add up, 240 V loads draw on both", "[check][panel]") {
    auto const made =
        job({one_pole("L1", 1).load(1200_VA), one_pole("L2", 3).load(600_VA), two_pole("WH", 5).load(2400_VA)});
    REQUIRE(amps_on(made).a == Approx(20));
    REQUIRE(amps_on(made).b == Approx(15));
    auto wye = made; // a line-to-line load at 208 V draws VA/208; heat made for 240 V gives (208/240)^2 of its power
    wye.panels[0].supply->kind = SupplyKind::wye_120_208;
    REQUIRE(amps_on(wye).a == Approx(10 + 2400 / 208.0));
    wye.circuits[2].use = "baseboard";
    REQUIRE(amps_on(wye).a == Approx(10 + 2400 * (208.0 * 208.0) / (240.0 * 240.0) / 208.0));
    wye.circuits[2].load.reset();
    wye.circuits[2].load_amps = 12_A; // what it draws there
    REQUIRE(amps_on(wye).a == Approx(10 + 12));
    auto bridged = made;
    bridged.panels[0].supply->kind = SupplyKind::bridged_120;
    REQUIRE(amps_on(bridged).a == Approx(10));
    auto read = made;
    read.circuits[0].measured = 7_A;
    REQUIRE(amps_on(read).a == Approx(17));
    auto const half = evening({{"L1", 500'000}});
    REQUIRE(amps_on(made, &half).a == Approx(15));
}

TEST_CASE("panel-main-overloaded: a warning in a named situation, a note with everything on", "[check][panel]") {
    auto made = job({one_pole("L1", 1).load(6000_VA), one_pole("L2", 2).load(6000_VA)}); // 100 A on leg A
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        made.situations.clear();
        made.circuits[0].load = 6000_VA;
        REQUIRE(says("panel-main-overloaded", made, edition).empty()); // exactly the main
        made.circuits[0].load = 6012_VA;
        REQUIRE(says("panel-main-overloaded", made, edition) == "note Main");
        made.situations = {evening({{"L2", 0}})};
        REQUIRE(says("panel-main-overloaded", made, edition) == "note Main");
        made.situations.push_back(evening({{"L2", 999'000}}));
        made.situations.back().name = "Feast";
        REQUIRE(says("panel-main-overloaded", made, edition) == "warning Main");
    }
    REQUIRE_THAT(found("panel-main-overloaded", made).at(0).message,
                 Contains("Leg A of panel \"Main\" draws 100.1 A in \"Feast\""));
    made.panels[0].main.reset();
    REQUIRE(says("panel-main-overloaded", made).empty());
}

TEST_CASE("panel-main-overloaded: every source has its own limit, and what is off on it draws nothing",
          "[check][panel]") {
    auto made = job({one_pole("L1", 1).load(2400_VA), two_pole("WH", 3).load(4800_VA)});
    made.panels[0].supply.reset();
    made.panels[0].supplies = {"Grid", "Generator"};
    made.supplies = {{"Grid", SupplyKind::split_120_240, 60_A, Leg::a, {}},
                     {"Generator", SupplyKind::split_120_240, 30_A, Leg::a, {}}};
    made.situations = {evening({})};
    // It names no source, so it is the first's; of the other only everything at once is told.
    REQUIRE(says("panel-main-overloaded", made) == "note Main");
    REQUIRE_THAT(found("panel-main-overloaded", made).at(0).fix, Contains("supply = \"Generator\""));
    made.situations[0].supply = "Generator";
    auto const f = found("panel-main-overloaded", made);
    REQUIRE(in_short(f) == "warning Main");
    REQUIRE_THAT(f[0].fix, Contains("move load to the other leg") && Contains("have the source reckoned"));
    REQUIRE_THAT(f[0].message, Contains("40 A") && Contains("Generator") && Contains("30 A"));
    made.supplies[1].off = {"WH"};
    REQUIRE(says("panel-main-overloaded", made).empty());
    made.supplies[1].kind = SupplyKind::bridged_120; // one hot feeds both legs: the sum counts
    made.circuits.push_back(one_pole("L2", 7).load(2400_VA));
    REQUIRE_THAT(found("panel-main-overloaded", made).at(0).message,
                 Contains("Both legs of panel \"Main\" together draw 40 A"));
    // Nothing moves to another leg of one hot.
    REQUIRE_THAT(found("panel-main-overloaded", made).at(0).fix, !Contains("other leg"));
}

TEST_CASE("panel-main-overloaded: a sub-panel loads its feeder and the panel above", "[check][panel]") {
    auto made = job({two_pole("SP", 1).breaker(30_A).load(0_VA), one_pole("W1", 3).in("Shed").load(4800_VA)});
    made.panels[0].main = 35_A;
    auto shed = made.panels[0];
    shed.name = "Shed";
    shed.supply.reset();
    shed.main.reset();
    shed.feeder = typed::FeederName{"Main", "SP"};
    made.panels.push_back(shed);
    auto const f = found("panel-main-overloaded", made);
    REQUIRE(in_short(f) == "note Main; note Shed");
    REQUIRE_THAT(f[0].message, Contains("Leg B of panel \"Main\" draws 40 A") && Contains("the main carries, 35 A"));
    REQUIRE_THAT(f[1].message, Contains("the feeder carries, 30 A"));
    made.circuits.pop_back(); // an empty sub-panel: the feeder's own load counts, half on each leg
    made.circuits[0].load = 9600_VA;
    REQUIRE(says("panel-main-overloaded", made) == "note Main");
}

TEST_CASE("panel-main-overloaded: a load that no situation has is judged by itself", "[check][panel]") {
    auto made = job({one_pole("L1", 1).load(1200_VA), two_pole("EV", 3).load(14'400_VA)}); // 60 A on each leg
    made.panels[0].main = 50_A;
    made.situations = {evening({{"EV", 0}})};
    REQUIRE(says("panel-main-overloaded", made) == "warning Main");
    REQUIRE_THAT(found("panel-main-overloaded", made).at(0).message,
                 Contains("with EV alone, which is in no situation"));
    made.panels[0].main = 60_A;
    REQUIRE(says("panel-main-overloaded", made) == "note Main"); // alone just the main; with the lights more
    // Through a feeder it is the same load.
    made.panels[0].main = 50_A;
    made.circuits.push_back(two_pole("SP", 5).use("feeder").breaker(60_A));
    typed::Panel shed;
    shed.name = "Shed";
    shed.spaces = 12;
    shed.feeder = typed::FeederName{"Main", "SP"};
    made.panels.push_back(shed);
    made.circuits[1].panel = "Shed";
    REQUIRE_THAT(found("panel-main-overloaded", made).at(0).message,
                 Contains("with EV alone, which is in no situation"));
    made.situations.push_back(evening({{"EV", 500'000}, {"L1", 0}}));
    made.situations.back().name = "Night";
    REQUIRE(says("panel-main-overloaded", made) == "note Main");
}
