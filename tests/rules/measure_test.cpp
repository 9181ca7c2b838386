// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a person has to go and find out. Sources: common practice, no source.
#include "building/resolve.h"
#include "job/job.h"
#include "made_job.h"
#include "rules/job/measure.h"

#include "catch.h"

#include <set>

using namespace made;

namespace {
// "circuit L1 load at panel; ..."
std::string list_in_short(std::vector<ToMeasure> const& list) {
    std::string all;
    for (ToMeasure const& m : list) {
        if (!all.empty()) all += "; ";
        all += (m.id.empty() ? "" : m.id + " ") + m.key + " at " + std::string(name(m.how.at)) + (m.noted ? "" : " *");
    }
    return all;
}
std::string wanted(typed::Job const& made, std::string_view edition = "NEC 2023") {
    auto const plan = as_typed(made);
    return list_in_short(to_measure({resolve(made), plan, *code_book(edition)}));
}
typed::Job with(Make circuit) { return job({std::move(circuit)}); }
} // namespace

TEST_CASE("measure: nothing of a job that says all", "[check][job][measure]") {
    REQUIRE(wanted(with(one_pole("L1", 1))).empty());
    REQUIRE(wanted(pair_job({3}, {5})).empty());
}

TEST_CASE("measure: each missing figure and each question mark, where the person stands", "[check][job][measure]") {
    auto const gap = [](auto change) { return wanted(with(one_pole("L1", 1).with(change))); };
    auto const old_gap = [](auto change) { return wanted(with(one_pole("L1", 1).old().with(change))); };
    REQUIRE(old_gap([](typed::Circuit& c) { c.breaker.reset(); }) == "L1 breaker at panel");
    REQUIRE(old_gap([](typed::Circuit& c) { c.run.clear(); }) == "L1 cable at panel; L1 length at run");
    REQUIRE(gap([](typed::Circuit& c) { c.breaker.reset(); }) == "L1 breaker at desk"); // new: chosen, not read
    REQUIRE(gap([](typed::Circuit& c) { c.run.clear(); }) == "L1 cable at desk; L1 length at run");
    REQUIRE(gap([](typed::Circuit& c) { c.run[0].length.reset(); }) == "L1 length at run");
    REQUIRE(gap([](typed::Circuit& c) { c.asked = {"outlet_count"}; }) == "L1 outlet_count at outlet");
    REQUIRE(gap([](typed::Circuit& c) { c.asked = {"mop", "mca"}; }) == "L1 mca at appliance; L1 mop at appliance");
}

TEST_CASE("measure: one thing's load stands on its nameplate, plugged things are clamped", "[check][job][measure]") {
    auto const load = [](Make c) { return wanted(with(c.with([](typed::Circuit& one) { one.load.reset(); }))); };
    REQUIRE(load(one_pole("X1", 1).use("receptacles")) == "X1 load at panel");
    REQUIRE(load(one_pole("X1", 1).use("lighting")) == "X1 load at panel");
    REQUIRE(load(one_pole("X1", 1)) == "X1 load at panel");
    REQUIRE(load(two_pole("X1", 1).use("water heater")) == "X1 load at appliance");
    REQUIRE(load(two_pole("X1", 1)) == "X1 load at appliance");
    REQUIRE(load(one_pole("X1", 1).use("spare")).empty());
}

TEST_CASE("measure: a panel without a main, a home without its area", "[check][job][measure]") {
    auto made = with(one_pole("L1", 1));
    made.panels[0].main.reset();
    REQUIRE(wanted(made) == "Main main at panel *"); // no note tells of it
    REQUIRE(says("job-unknown", made).empty());
    made.panels[0].asked = {"main"};
    REQUIRE(wanted(made) == "Main main at panel");
    made.panels[0].main = 100_A;
    made.panels[0].asked.clear();
    made.dwelling = typed::Dwelling{};
    REQUIRE(wanted(made) == "area at building *");
    made.dwelling->asked = {"area"};
    REQUIRE(wanted(made) == "area at building");
    REQUIRE(in_short(found("job-unknown", made)) == "note");
}

TEST_CASE("measure: what solar on the bus hangs on", "[check][job][measure]") {
    auto made = with(two_pole("PV", 1).use("solar").with([](typed::Circuit& c) { c.load.reset(); }));
    REQUIRE(wanted(made, "NEC 2023") == "Main bus at panel *; Main output at appliance *");
    made.panels[0].bus = 100_A;
    REQUIRE(wanted(made, "NEC 2023") == "Main main_at at panel *"); // it may stay, at the far end
    made.panels[0].main_at = PanelEnd::top;
    REQUIRE(wanted(made, "NEC 2023").empty());
    made.circuits[0].breaker = 40_A;
    REQUIRE(wanted(made, "NEC 2023") == "Main output at appliance *");
}

TEST_CASE("measure: old work may be protected already", "[check][job][measure]") {
    auto const bath = [] {
        return one_pole("B1", 1).called("Receptacle by the mirror", "Bathroom").use("receptacles");
    };
    REQUIRE(wanted(with(bath().old())) == "B1 gfci at outlet *");
    REQUIRE(wanted(with(bath())).empty()); // new work is fitted, not measured
    REQUIRE(wanted(with(bath().old().gfci(Protection::breaker))).empty());
}

TEST_CASE("measure: sources and other cables, a note for each thing", "[check][job][measure]") {
    auto made = with(one_pole("L1", 1));
    made.supplies = {{.name = "Grid", .amps = {}, .off = {}, .asked = {"amps"}}};
    made.panels[0].supply.reset();
    made.panels[0].supplies = {"Grid"};
    made.cables = {{.mark = "S1", .name = "", .kind = "cat6", .from = "", .to = "", .length = {}, .asked = {}}};
    REQUIRE(wanted(made) == "Grid amps at appliance; S1 length at run");
    REQUIRE(in_short(found("job-unknown", made)) == "note Main; note S1");
}

TEST_CASE("measure: every row says what, how, with what and what it decides", "[check][job][measure]") {
    for (auto const thing : {Subject::circuit, Subject::cable, Subject::panel, Subject::supply, Subject::dwelling}) {
        std::set<std::string_view> keys;
        for (HowToMeasure const& row : how_to_measure(thing)) {
            CAPTURE(row.key);
            REQUIRE(keys.insert(row.key).second);
            for (auto const text : {row.what, row.how, row.with, row.blank, row.decides}) REQUIRE_FALSE(text.empty());
            if (row.blank.find('/') == std::string_view::npos)
                REQUIRE(row.blank.find("____") != std::string_view::npos);
        }
    }
}
