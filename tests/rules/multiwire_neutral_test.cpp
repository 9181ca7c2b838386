// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The neutral of a pair: wires, currents, and what an open one does.
#include "building/resolve.h"
#include "made_job.h"

#include "job/job.h"
#include "panel/feeds.h"
#include "rules/multiwire/open_neutral.h"
#include "rules/multiwire/pair_cable.h"

#include "catch.h"

#include <complex>
#include <numbers>

using namespace made;

namespace {
typed::Situation situation(std::string name, std::map<std::string, std::int64_t> by_mark) {
    typed::Situation s;
    s.name = std::move(name);
    s.by_mark = std::move(by_mark);
    return s;
}

// K1 and K2 draw these at 120 V on 14/3, breakers of 15 A.
typed::Job drawing(VoltAmperes first, VoltAmperes second, SupplyKind kind = SupplyKind::split_120_240) {
    auto job = pair_job({3}, {5}, Tie::two_pole_breaker);
    job.panels[0].supply->kind = kind;
    job.circuits[0].load = first;
    job.circuits[1].load = second;
    for (typed::Circuit& c : job.circuits) c.breaker = 15_A, c.run[0].kind = "14/3";
    return job;
}
} // namespace

TEST_CASE("mw-conductors: a wire for each hot and one for the neutral", "[check][multiwire]") {
    // Source: what the cable kinds are (G/N has N insulated wires): common practice, no source.
    auto job = pair_job({3}, {5}, Tie::two_pole_breaker);
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        for (typed::Circuit& c : job.circuits) c.run[0].kind = "12/3";
        REQUIRE(says("mw-conductors", job, edition).empty());
        for (typed::Circuit& c : job.circuits) c.run[0].kind = "12/2";
        REQUIRE(says("mw-conductors", job, edition) == "error K1 K2");
    }
    job.circuits[0].colors = {"black", "red", "white"};
    REQUIRE(says("mw-conductors", job).empty());
    job.circuits[0].colors.clear();
    for (typed::Circuit& c : job.circuits) c.run.clear();
    REQUIRE(says("mw-conductors", job).empty()); // job-unknown asks for the cable
    job.circuits[1].run = {{"14/2", {}, ""}};    // said at one member only
    REQUIRE(says("mw-conductors", job) == "error K1 K2");
}

TEST_CASE("mw-neutral-current: the formula against phasors", "[check][multiwire]") {
    // Source: the sum of two phasors, by std::complex; published worked examples: 16 A and 10 A give 6 A on opposite
    // legs and 26 A on one; 5 A and 8 A give 3 A, and 7 A on two phases of a wye; 20 A and 10 A give 10 A.
    auto const [a, b, degrees, amperes] = GENERATE(table<double, double, int, double>({{16, 10, 180, 6},
                                                                                       {16, 10, 0, 26},
                                                                                       {5, 8, 180, 3},
                                                                                       {5, 8, 120, 7},
                                                                                       {10, 5, 180, 5},
                                                                                       {16, 8, 180, 8},
                                                                                       {12, 12, 180, 0},
                                                                                       {20, 10, 180, 10},
                                                                                       {10, 10, 120, 10}}));
    auto const second = std::polar(b, degrees * std::numbers::pi / 180);
    REQUIRE(std::abs(a + second) == Approx(amperes).margin(1e-9));
    REQUIRE(neutral_amps(a, b, degrees) == Approx(amperes).margin(1e-6));
}

TEST_CASE("mw-neutral-current: within the wire, in every situation", "[check][multiwire]") {
    // Source: 14 AWG copper 15 A (NEC Table 310.16 and 240.4(D), CE Table 2 and 14-104(2)).
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        REQUIRE(says("mw-neutral-current", drawing(1800_VA, 0_VA), edition).empty()); // 15 A
        REQUIRE(says("mw-neutral-current", drawing(1812_VA, 0_VA), edition) == "error K1 K2");
        REQUIRE(says("mw-neutral-current", drawing(2400_VA, 1200_VA), edition).empty()); // they cancel to 10 A
    }
    auto job = drawing(2400_VA, 1200_VA);
    job.situations = {situation("Morning", {{"K2", 0}})};
    auto const f = found("mw-neutral-current", job);
    REQUIRE(in_short(f) == "error K1 K2");
    REQUIRE_THAT(f[0].message, Contains("20 A") && Contains("Morning") && Contains("15 A"));
}

TEST_CASE("mw-neutral-current: under every source, a clamp reading before the load", "[check][multiwire]") {
    auto job = drawing(2400_VA, 1200_VA);
    job.panels[0].supply.reset();
    job.panels[0].supplies = {"Grid", "Inlet"};
    job.supplies = {{"Grid", SupplyKind::split_120_240, {}, Leg::a, {}},
                    {"Inlet", SupplyKind::split_120_240, {}, Leg::a, {"K2"}}};
    REQUIRE_THAT(found("mw-neutral-current", job).at(0).message, Contains("Inlet"));
    auto read = drawing(600_VA, 0_VA);
    read.circuits[0].measured = 16_A;
    REQUIRE(says("mw-neutral-current", read) == "error K1 K2");
    // Two phases of a wye: 15 A and 15 A leave 15 A, 16 A and 16 A leave 16 A.
    REQUIRE(says("mw-neutral-current", drawing(1800_VA, 1800_VA, SupplyKind::wye_120_208)).empty());
    REQUIRE(says("mw-neutral-current", drawing(1920_VA, 1920_VA, SupplyKind::wye_120_208)) == "error K1 K2");
}

TEST_CASE("mw-neutral-current: aluminium and warmer terminals have their own figure", "[check][multiwire]") {
    // Source: NEC Table 310.16: 10 AWG copper 35 A at 75 degrees, held to 30 A by 240.4(D); 8 AWG 40 A at 60, 50 A
    // at 75.
    auto job = drawing(100_VA, 100_VA);
    auto const limit = [&](std::string kind, int terminals, Metal metal, std::string_view edition) {
        for (typed::Circuit& c : job.circuits) c.run[0].kind = kind, c.terminals = terminals, c.metal = metal;
        auto const plan = as_typed(job);
        auto const building = resolve(job);
        return neutral_ampacity({building, plan, *code_book(edition)}, building.pairs.at(0));
    };
    REQUIRE(limit("10/3", 75, Metal::copper, "NEC 2023") == 30_A);
    REQUIRE(limit("10/3", 60, Metal::aluminium, "NEC 2023") == 25_A);
    REQUIRE(limit("8/3", 75, Metal::copper, "NEC 2023") == 40_A); // sheathed cable: 334.80
    REQUIRE(limit("8/3", 75, Metal::copper, "CE 2024") == 50_A);
    REQUIRE_FALSE(limit("cat6", 60, Metal::copper, "NEC 2023"));
}

TEST_CASE("mw-open-neutral: two loads in series share the voltage", "[check][multiwire]") {
    // Source: a published exercise (100 W and 200 W at 120 V, neutral open: 144 and 72 ohm, 1.111 A; 160 V and 80 V), a
    // second one (10 A and 5 A: 80 V and 160 V), and the same law with 55 and 110 ohm between 380 V: 126.5 V and 253 V.
    auto const first = open_neutral(100, 200, 240);
    REQUIRE(first.first == Approx(160));
    REQUIRE(first.second == Approx(80));
    auto const second = open_neutral(1200, 600, 240);
    REQUIRE(second.first == Approx(80));
    REQUIRE(second.second == Approx(160));
    auto const other = open_neutral(1 / 55.0, 1 / 110.0, 380);
    REQUIRE(other.first == Approx(126.5).epsilon(0.002));
    REQUIRE(other.second == Approx(253).epsilon(0.002));
}

TEST_CASE("mw-open-neutral: one note a pair, with both voltages", "[check][multiwire]") {
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        auto const f = found("mw-open-neutral", drawing(100_VA, 200_VA), edition);
        REQUIRE(in_short(f) == "note K1 K2");
        REQUIRE_THAT(f[0].message, Contains("K1 sees 160 V and K2 sees 80 V"));
    }
    auto const wye = found("mw-open-neutral", drawing(100_VA, 100_VA, SupplyKind::wye_120_208));
    REQUIRE_THAT(wye.at(0).message, Contains("each sees 104 V") && Contains("up to 208 V"));
    REQUIRE_THAT(found("mw-open-neutral", drawing(100_VA, 100_VA)).at(0).message, Contains("each sees 120 V"));
    REQUIRE_THAT(found("mw-open-neutral", drawing(100_VA, 0_VA)).at(0).message, Contains("up to 240 V"));
    REQUIRE(says("mw-open-neutral", drawing(100_VA, 200_VA, SupplyKind::bridged_120)).empty());
    REQUIRE(says("mw-open-neutral", pair_job({5}, {6})).empty()); // on one leg: worse, and told elsewhere
}

TEST_CASE("mw-pigtail, mw-grouping: one note a panel for the pairs that stand well", "[check][multiwire]") {
    // Source: NEC 300.13(B), 200.4(B), 210.4(D); CE 4-030(4) for the pigtail, nothing known on grouping.
    auto job = pair_job({3}, {5}, Tie::two_pole_breaker);
    for (auto const& c : pair_job({9}, {11}, Tie::two_pole_breaker).circuits) job.circuits.push_back(c);
    job.circuits[2].mark = "B1", job.circuits[3].mark = "B2";
    job.circuits[2].multiwire = job.circuits[3].multiwire = "B";
    REQUIRE(says("mw-pigtail", job) == "note K1 K2 B1 B2");
    REQUIRE(says("mw-pigtail", job, "CE 2021") == "note K1 K2 B1 B2");
    REQUIRE(says("mw-grouping", job) == "note K1 K2 B1 B2");
    REQUIRE(says("mw-grouping", job, "CE 2021").empty());
    REQUIRE_THAT(found("mw-grouping", job).at(0).message, Contains("K1+K2 and B1+B2"));
    job.circuits[3].space = Spot{12}; // B2 on B1's leg: its error speaks
    REQUIRE(says("mw-pigtail", job) == "note K1 K2");
    REQUIRE(says("mw-pigtail", made::job({one_pole("L1", 1)})).empty());
}

TEST_CASE("mw-unpaired: what does the third wire do?", "[check][multiwire]") {
    // Source: common practice, no source.
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        REQUIRE(says("mw-unpaired", job({one_pole("L1", 1).cable("14/3")}), edition) == "warning L1");
        REQUIRE(says("mw-unpaired", job({one_pole("L1", 1).cable("14/2")}), edition).empty());
        REQUIRE(says("mw-unpaired", job({two_pole("H1", 1).cable("12/3").use("baseboard")}), edition) == "warning H1");
        REQUIRE(says("mw-unpaired", job({two_pole("H1", 1).cable("12/2").use("baseboard")}), edition).empty());
    }
    auto const third = [](typed::Circuit& c) { c.third = "switched"; };
    auto const loop = [](typed::Circuit& c) { c.switch_loop = true; };
    REQUIRE(says("mw-unpaired", job({one_pole("L1", 1).cable("14/3").with(third)})).empty());
    REQUIRE(says("mw-unpaired", job({one_pole("L1", 1).cable("14/3").with(loop)})).empty());
    REQUIRE(says("mw-unpaired", job({two_pole("R1", 1).cable("6/3").use("range")})).empty());
    REQUIRE(says("mw-unpaired", job({two_pole("T1", 1).cable("12/3").outlets({"6-20R", "5-20R"})})).empty());
    REQUIRE(says("mw-unpaired", job({two_pole("T1", 1).cable("12/3").outlets({"6-20R"})})) == "warning T1");
    REQUIRE(says("mw-unpaired", job({two_pole("G1", 1).cable("10/3").use("generator inlet")})).empty());
    REQUIRE(says("mw-unpaired", pair_job({3}, {5})).empty());
    auto beyond = one_pole("L1", 1).cable("14/2");
    beyond.c.run.push_back({"14/3", {}, ""}); // three-way switches further on
    REQUIRE(says("mw-unpaired", job({beyond})).empty());
}
