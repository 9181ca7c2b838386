// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Breakers, ties and what hangs on them. Sources stand beside each case.
#include "job/job.h"
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
typed::Job pair_of(std::string use, Tie tie) {
    auto job = pair_job({3}, {5}, tie);
    for (typed::Circuit& c : job.circuits) c.use = use;
    return job;
}
typed::Job split(typed::Job job) {
    job.circuits[0].split = true;
    return job;
}
typed::Job old(typed::Job job) {
    for (typed::Circuit& c : job.circuits) c.existing = true;
    return job;
}
std::string disconnect(typed::Job const& job, std::string_view edition) { return says("mw-disconnect", job, edition); }
} // namespace

TEST_CASE("mw-disconnect: NEC asks it of every pair, and a handle tie does", "[check][multiwire]") {
    // Source: NEC 210.4(B), 240.15(B)(1); existing work as it was.
    for (auto const edition : {"NEC 2017", "NEC 2020", "NEC 2023"})
        for (auto const use : {"lighting", "receptacles", "dishwasher", ""}) {
            REQUIRE(disconnect(pair_of(use, Tie::none), edition) == "error K1 K2");
            REQUIRE(disconnect(old(pair_of(use, Tie::none)), edition) == "warning K1 K2");
            REQUIRE(disconnect(pair_of(use, Tie::handle_tie), edition).empty());
            REQUIRE(disconnect(pair_of(use, Tie::two_pole_breaker), edition).empty());
        }
    REQUIRE_THAT(found("mw-disconnect", pair_of("lighting", Tie::none)).at(0).fix, Contains("handle tie"));
}

TEST_CASE("mw-disconnect: CE asks by what the pair feeds", "[check][multiwire]") {
    // Source: CE 14-010(b) (fixed lighting and unsplit receptacles let off), 14-302(b) (no ties fitted on site).
    for (auto const edition : {"CE 2018", "CE 2021", "CE 2024"}) {
        REQUIRE(disconnect(split(pair_of("kitchen counter", Tie::none)), edition) == "error K1 K2");
        REQUIRE(disconnect(old(split(pair_of("kitchen counter", Tie::none))), edition) == "warning K1 K2");
        REQUIRE(disconnect(split(pair_of("kitchen counter", Tie::handle_tie)), edition) == "warning K1 K2");
        REQUIRE(disconnect(split(pair_of("kitchen counter", Tie::two_pole_breaker)), edition).empty());
        REQUIRE(disconnect(pair_of("lighting", Tie::none), edition) == "note K1 K2");
        REQUIRE(disconnect(pair_of("receptacles", Tie::none), edition) == "note K1 K2");
        REQUIRE(disconnect(pair_of("refrigerator", Tie::none), edition) == "note K1 K2"); // plugged in
        REQUIRE(disconnect(pair_of("lighting", Tie::handle_tie), edition).empty());
        REQUIRE(disconnect(pair_of("dishwasher", Tie::none), edition) == "warning K1 K2");
        REQUIRE(disconnect(pair_of("", Tie::none), edition) == "warning K1 K2"); // not known what it feeds
    }
    auto with_240 = pair_of("receptacles", Tie::none);
    with_240.circuits[1].outlets = {"6-20R"};
    REQUIRE(disconnect(with_240, "CE 2021") == "error K1 K2");
    REQUIRE_THAT(found("mw-disconnect", split(pair_of("", Tie::none)), "CE 2021").at(0).fix, !Contains("tie"));
}

TEST_CASE("mw-disconnect: a lone two-pole circuit", "[check][multiwire]") {
    // Source: NEC 240.15(B)(2) lets tied singles serve 240 V; CE 14-302(b) does not.
    auto const with = [](Tie tie) { return job({two_pole("WH", 3).tied(tie)}); };
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        REQUIRE(disconnect(with(Tie::none), edition) == "error WH");
        REQUIRE(disconnect(old(with(Tie::none)), edition) == "warning WH");
        REQUIRE(disconnect(with(Tie::two_pole_breaker), edition).empty());
    }
    REQUIRE(disconnect(with(Tie::handle_tie), "NEC 2023").empty());
    REQUIRE(disconnect(with(Tie::handle_tie), "CE 2024") == "warning WH");
    REQUIRE(disconnect(job({one_pole("L1", 3).tied(Tie::none)}), "NEC 2023").empty());
}

TEST_CASE("mw-disconnect is its own fault: a fault of the place does not silence it", "[check][multiwire]") {
    REQUIRE(disconnect(pair_job({5}, {6}), "NEC 2023") == "error K1 K2");
    REQUIRE(disconnect(pair_job({8, 'a'}, {8, 'b'}), "NEC 2023") == "error K1 K2");
}

TEST_CASE("mw-line-to-line: 240 V beside 120 V wants poles that trip together", "[check][multiwire]") {
    // Source: NEC 210.4(C) Exceptions 1 and 2.
    auto const two = [](std::vector<std::string> outlets, Tie tie) {
        return job({two_pole("T1", 1).cable("12/3").outlets(std::move(outlets)).tied(tie)});
    };
    for (auto const edition : {"NEC 2017", "NEC 2023", "CE 2018", "CE 2024"}) {
        REQUIRE(says("mw-line-to-line", two({"6-20R", "5-20R"}, Tie::handle_tie), edition) == "error T1");
        REQUIRE(says("mw-line-to-line", two({"14-30R", "5-20R"}, Tie::none), edition) == "error T1");
        REQUIRE(says("mw-line-to-line", two({"6-20R", "5-20R"}, Tie::two_pole_breaker), edition).empty());
        REQUIRE(says("mw-line-to-line", two({"14-30R"}, Tie::handle_tie), edition).empty()); // one appliance
        REQUIRE(says("mw-line-to-line", two({"6-20R"}, Tie::handle_tie), edition).empty());
    }
    auto pair = pair_of("receptacles", Tie::handle_tie);
    pair.circuits[0].outlets = {"5-20R", "6-20R"};
    REQUIRE(says("mw-line-to-line", pair) == "error K1 K2");
    pair.circuits[0].outlets = {"5-20R"};
    REQUIRE(says("mw-line-to-line", pair).empty());
}

TEST_CASE("mw-unequal: one rating for both", "[check][multiwire]") {
    // Source: common practice, no source.
    auto job = pair_job({3}, {5}, Tie::handle_tie);
    REQUIRE(says("mw-unequal", job).empty());
    job.circuits[0].breaker = 15_A;
    REQUIRE(says("mw-unequal", job) == "warning K1 K2");
    REQUIRE(says("mw-unequal", job, "CE 2024") == "warning K1 K2");
    REQUIRE_THAT(found("mw-unequal", job).at(0).message, Contains("15 A and 20 A"));
    job.circuits[0].breaker.reset();
    REQUIRE(says("mw-unequal", job).empty());
}

TEST_CASE("mw-one-pole-gfci: a shared neutral needs the two-pole unit", "[check][multiwire]") {
    // Source: how a GFCI works (it compares the two wires it sees): physics.
    auto const with = [](Protection first, Protection second, Tie tie) {
        auto made = pair_job({3}, {5}, tie);
        made.circuits[0].gfci = first;
        made.circuits[1].gfci = second;
        return made;
    };
    auto const breaker = Protection::breaker, no = Protection::unsaid, outlet = Protection::outlet;
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        REQUIRE(says("mw-one-pole-gfci", with(breaker, breaker, Tie::handle_tie), edition) == "error K1 K2");
        REQUIRE(says("mw-one-pole-gfci", with(no, breaker, Tie::none), edition) == "error K2");
        REQUIRE(says("mw-one-pole-gfci", with(breaker, breaker, Tie::two_pole_breaker), edition).empty());
        REQUIRE(says("mw-one-pole-gfci", with(outlet, outlet, Tie::handle_tie), edition).empty());
    }
    auto arc = with(no, no, Tie::handle_tie); // whether it senses ground faults is not known
    arc.circuits[0].afci = breaker;
    REQUIRE(says("mw-one-pole-gfci", arc) == "warning K1");
}

TEST_CASE("mw-keep-on: a refrigerator tied to the counter", "[check][multiwire]") {
    // Source: common practice, no source.
    auto job = pair_job({3}, {5}, Tie::two_pole_breaker);
    job.circuits[0].use = "refrigerator";
    job.circuits[1].use = "kitchen counter";
    for (auto const edition : {"NEC 2023", "CE 2024"}) REQUIRE(says("mw-keep-on", job, edition) == "warning K1");
    job.circuits[1].use = "freezer"; // two that stay on
    REQUIRE(says("mw-keep-on", job).empty());
    job.circuits[1].use = "";
    job.circuits[0].use = "";
    REQUIRE(says("mw-keep-on", job).empty());
    job.circuits[1].name = "Medical outlets, bed 2";
    REQUIRE(says("mw-keep-on", job) == "warning K2");
    for (typed::Circuit& c : job.circuits) c.tie = Tie::none;
    REQUIRE(says("mw-keep-on", job).empty());
}
