// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where a pair's two hots land. Sources: NEC 210.4(A), (B) and the meaning of a multiwire circuit; which spaces are on
// which leg: common practice, no source.
#include "job/job.h"
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
constexpr std::string_view kPlace[] = {"mw-one-panel", "mw-same-space", "mw-in-phase-supply", "mw-opposite-legs",
                                       "mw-not-adjacent"};

// The rules of a pair's place that speak, and what they say: one at most.
std::string place_says(typed::Job const& job, std::string_view edition = "NEC 2023") {
    std::string all;
    for (auto const rule : kPlace)
        if (auto const words = says(rule, job, edition); !words.empty())
            all += (all.empty() ? "" : "; ") + std::string(rule) + " " + words;
    return all;
}

typed::Job two_supplies(typed::Job job, SupplyKind second) {
    job.panels[0].supply.reset();
    job.panels[0].supplies = {"Grid", "Inlet"};
    job.supplies = {typed::Supply{"Grid", SupplyKind::split_120_240, 60_A, Leg::a, {}},
                    typed::Supply{"Inlet", second, 30_A, Leg::a, {}}};
    return job;
}
} // namespace

TEST_CASE("a pair on neighbouring spaces of one column stands well", "[check][multiwire]") {
    for (auto const edition : {"NEC 2023", "CE 2024"})
        for (auto const tie : {Tie::none, Tie::handle_tie, Tie::two_pole_breaker}) {
            REQUIRE(place_says(pair_job({3}, {5}, tie), edition).empty());
            REQUIRE(place_says(pair_job({7, 'b'}, {9, 'a'}, tie), edition).empty()); // inner halves of a quad
            REQUIRE(place_says(pair_job({7, 'a'}, {9, 'b'}, tie), edition).empty()); // outer
        }
}

TEST_CASE("mw-one-panel: both hots start in one panel", "[check][multiwire]") {
    auto job = pair_job({3}, {5}, Tie::none);
    REQUIRE(says("mw-one-panel", job).empty());
    auto shop = job.panels[0];
    shop.name = "Shop";
    job.panels.push_back(shop);
    job.circuits[1].panel = "Shop";
    job.circuits[1].space = Spot{3};
    REQUIRE(place_says(job) == "mw-one-panel error K1 K2");
    REQUIRE(place_says(job, "CE 2021") == "mw-one-panel error K1 K2");
    for (typed::Circuit& c : job.circuits) c.existing = true;
    REQUIRE(place_says(job) == "mw-one-panel error K1 K2");
    REQUIRE(says("mw-neutral-current", job).empty());
}

TEST_CASE("mw-same-space: halves of one space are on one leg, and a tie is no cure", "[check][multiwire]") {
    for (auto const tie : {Tie::none, Tie::handle_tie})
        REQUIRE(place_says(pair_job({8, 'a'}, {8, 'b'}, tie)) == "mw-same-space error K1 K2");
    auto const f = found("mw-same-space", pair_job({8, 'a'}, {8, 'b'}), "CE 2018");
    REQUIRE_THAT(f.at(0).message, Contains("space 8a") && Contains("40 A before a breaker trips"));
    REQUIRE(place_says(pair_job({8, 'a'}, {10, 'b'})).empty());
}

TEST_CASE("mw-in-phase-supply: judged under every source, switching off by hand is no cure", "[check][multiwire]") {
    auto bridged = pair_job({3}, {5}, Tie::handle_tie);
    bridged.panels[0].supply->kind = SupplyKind::bridged_120;
    REQUIRE(place_says(bridged) == "mw-in-phase-supply error K1 K2");
    REQUIRE(place_says(bridged, "CE 2024") == "mw-in-phase-supply error K1 K2");

    auto const pair = pair_job({3}, {5}, Tie::two_pole_breaker);
    REQUIRE(place_says(two_supplies(pair, SupplyKind::bridged_120)) == "mw-in-phase-supply error K1 K2");
    auto off = two_supplies(pair, SupplyKind::bridged_120);
    off.supplies[1].off = {"K1"};
    REQUIRE(place_says(off) == "mw-in-phase-supply error K1 K2");
    REQUIRE_THAT(found("mw-in-phase-supply", off).at(0).message, Contains("Inlet"));
    REQUIRE(place_says(two_supplies(pair, SupplyKind::wye_120_208)).empty());
    REQUIRE(place_says(two_supplies(pair, SupplyKind::one_leg_120)).empty()); // one hot at a time on the neutral
}

TEST_CASE("mw-in-phase-supply: a sub-panel is fed by what feeds the panel above", "[check][multiwire]") {
    auto job = pair_job({3}, {5}, Tie::handle_tie);
    auto above = job.panels[0];
    above.name = "House";
    above.supply->kind = SupplyKind::bridged_120;
    job.panels[0].supply.reset();
    job.panels[0].feeder = typed::FeederName{"House", "SP"};
    job.panels.push_back(above);
    job.circuits.push_back(two_pole("SP", 1).in("House").cable("6/3").breaker(50_A));
    REQUIRE(place_says(job) == "mw-in-phase-supply error K1 K2");
}

TEST_CASE("mw-opposite-legs: says what the neutral can carry, in numbers", "[check][multiwire]") {
    // Source: two 15 A breakers on one leg can put 30 A on the neutral; 900 VA + 1000 VA at 120 V are 15.8 A; 14 AWG
    // copper is good for 15 A (NEC Table 310.16, 60 degrees).
    auto job = pair_job({24}, {20});
    for (typed::Circuit& c : job.circuits) c.breaker = 15_A, c.run[0].kind = "14/3";
    job.circuits[0].load = 900_VA;
    job.circuits[1].load = 1000_VA;
    auto const f = found("mw-opposite-legs", job);
    REQUIRE(in_short(f) == "error K1 K2");
    REQUIRE_THAT(f[0].message, Contains("can carry 30 A before a breaker trips, 15.8 A at the loads given, on 14 AWG "
                                        "good for 15 A"));
    REQUIRE_THAT(f[0].message, Contains("leg B"));
    REQUIRE(place_says(job, "CE 2024") == "mw-opposite-legs error K1 K2");
    REQUIRE(says("mw-neutral-current", job).empty());
}

TEST_CASE("mw-opposite-legs: the spaces of one row are on one leg, whatever the numbering", "[check][multiwire]") {
    REQUIRE(place_says(pair_job({5}, {6})) == "mw-opposite-legs error K1 K2");
    auto down = pair_job({5}, {17});
    down.panels[0].numbering = Numbering::down;
    REQUIRE(place_says(down) == "mw-opposite-legs error K1 K2");
    auto next = pair_job({1}, {2}, Tie::handle_tie);
    next.panels[0].numbering = Numbering::down;
    REQUIRE(place_says(next).empty());
    auto wye = pair_job({3}, {5});
    wye.panels[0].supply->kind = SupplyKind::wye_120_208;
    REQUIRE(place_says(wye).empty());
}

TEST_CASE("mw-opposite-legs: an odd bus has its own letters", "[check][multiwire]") {
    auto job = pair_job({3}, {5});
    job.panels[0].bus_legs = BusLegs::listed;
    job.panels[0].row_legs = {Leg::a, Leg::b, Leg::b};
    REQUIRE(place_says(job) == "mw-opposite-legs error K1 K2");
}

TEST_CASE("a hot on a dead space is for panel-dead-space to tell", "[check][multiwire]") {
    auto one_leg = pair_job({3}, {5});
    one_leg.panels[0].supply->kind = SupplyKind::one_leg_120;
    REQUIRE(place_says(one_leg).empty());
    REQUIRE(says("panel-dead-space", one_leg) == "error K1");
    auto both_live = pair_job({1}, {2}); // both on the live leg: a real fault of their own
    both_live.panels[0].supply->kind = SupplyKind::one_leg_120;
    REQUIRE(place_says(both_live) == "mw-opposite-legs error K1 K2");
}

TEST_CASE("mw-not-adjacent: a tie reaches the next space of the column only", "[check][multiwire]") {
    for (auto const tie : {Tie::handle_tie, Tie::two_pole_breaker}) {
        REQUIRE(place_says(pair_job({1}, {7}, tie)) == "mw-not-adjacent error K1 K2");
        REQUIRE(place_says(pair_job({3}, {6}, tie), "CE 2024") == "mw-not-adjacent error K1 K2"); // the other column
        REQUIRE(place_says(pair_job({3}, {5}, tie)).empty());
    }
    REQUIRE(place_says(pair_job({1}, {7}, Tie::none)).empty()); // nothing to tie
    REQUIRE(place_says(pair_job({7, 'a'}, {9, 'a'}, Tie::handle_tie)) == "mw-not-adjacent error K1 K2");
    auto old = pair_job({1}, {7}, Tie::handle_tie);
    old.circuits[0].existing = true; // half of it is new work
    REQUIRE(place_says(old) == "mw-not-adjacent error K1 K2");
    old.circuits[1].existing = true;
    REQUIRE(place_says(old) == "mw-not-adjacent warning K1 K2");
    REQUIRE(place_says(old, "CE 2024") == "mw-not-adjacent warning K1 K2");
}

TEST_CASE("a pair without a place yet is judged by its supply only", "[check][multiwire]") {
    auto job = pair_job({3}, {5});
    for (typed::Circuit& c : job.circuits) c.space.reset();
    REQUIRE(place_says(job).empty());
    job.panels[0].supply->kind = SupplyKind::bridged_120;
    REQUIRE(place_says(job) == "mw-in-phase-supply error K1 K2");
}
