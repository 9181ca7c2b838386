// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is missing and what was taken for granted. Sources: common practice, no source.
#include "job/job.h"
#include "made_job.h"

#include "catch.h"

using namespace made;

TEST_CASE("job-unknown: what to measure, thing by thing", "[check][job]") {
    REQUIRE(says("job-unknown", job({one_pole("L1", 1)})).empty());
    auto const gap = [](auto change) { return job({one_pole("L1", 1).with(change)}); };
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        REQUIRE(says("job-unknown", gap([](typed::Circuit& c) { c.load.reset(); }), edition) == "note L1");
        REQUIRE(says("job-unknown", gap([](typed::Circuit& c) { c.breaker.reset(); }), edition) == "warning L1");
        REQUIRE(says("job-unknown", gap([](typed::Circuit& c) { c.run.clear(); }), edition) == "warning L1");
        REQUIRE(says("job-unknown", gap([](typed::Circuit& c) { c.run[0].length.reset(); }), edition) == "note L1");
        REQUIRE(says("job-unknown", gap([](typed::Circuit& c) { c.asked = {"outlets"}; }), edition) == "note L1");
    }
    auto const f = found("job-unknown", gap([](typed::Circuit& c) { c.load.reset(), c.run[0].length.reset(); }));
    REQUIRE_THAT(f.at(0).message, Contains("the length of the cable and the load"));
    REQUIRE_THAT(f.at(0).fix, Contains("clamp") && Contains("tape"));
    REQUIRE(says("job-unknown", gap([](typed::Circuit& c) { c.load.reset(), c.measured = 4_A; })).empty());
    REQUIRE(says("job-unknown", gap([](typed::Circuit& c) { c.load = 0_VA; })).empty());
}

TEST_CASE("job-unknown: what stands where protection is asked and has no use is told as not judged", "[check][job]") {
    // Source: 210.8(A), (F), CE 26-704 ask by place; which rows: gfci_test.cpp.
    auto const says_use = [](std::string name, std::string room, std::string_view edition) {
        auto made = job({one_pole("L1", 1).called(std::move(name), std::move(room))});
        made.dwelling = typed::Dwelling{};
        for (Finding const& f : found("job-unknown", made, edition))
            if (f.message.find("what it feeds there") != f.message.npos) return true;
        return false;
    };
    for (auto const edition : {"NEC 2017", "NEC 2023", "CE 2024"}) {
        CAPTURE(edition);
        REQUIRE(says_use("Gazebo", "Garden", edition));
        REQUIRE(says_use("Yard", "", edition));
        REQUIRE(says_use("Old thing", "Bathroom", edition));
        REQUIRE_FALSE(says_use("Old thing", "Bedroom", edition));
        REQUIRE_FALSE(says_use("Old thing", "", edition));
    }
}

TEST_CASE("job-unknown: what has no wire or no load of its own is not asked for it", "[check][job]") {
    auto const bare = [](std::string use) {
        return job(
            {one_pole("X1", 1).use(std::move(use)).with([](typed::Circuit& c) { c.load.reset(), c.run.clear(); })});
    };
    REQUIRE(says("job-unknown", bare("spare")).empty());
    REQUIRE(says("job-unknown", bare("surge protector")).empty());
    REQUIRE(says("job-unknown", bare("solar")) == "warning X1"); // its cable
    auto pair = pair_job({3}, {5});
    pair.circuits[1].run.clear(); // said at the other member
    REQUIRE(says("job-unknown", pair).empty());
}

// Source: common practice, no source. A breaker that nobody has bought has no handle to read.
TEST_CASE("job-unknown: sizes of new work are chosen, those of work that is there are read", "[check][job]") {
    auto const bare = [](Make m) {
        return job({m.with([](typed::Circuit& c) { c.breaker.reset(), c.run.clear(), c.load.reset(); })});
    };
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        auto const planned = found("job-unknown", bare(one_pole("L1", 1)), edition);
        REQUIRE(in_short(planned) == "warning L1");
        REQUIRE(planned[0].lacks_sizes);
        REQUIRE_THAT(planned[0].message, Contains("still to be chosen: the breaker's rating and the cable") &&
                                             Contains("not known: the length of the cable and the load"));
        REQUIRE_THAT(planned[0].fix, Contains("`legwork check --propose`") && Contains("existing = true") &&
                                         !Contains("handle") && !Contains("jacket"));
        auto const there = found("job-unknown", bare(one_pole("L1", 1).old()), edition);
        REQUIRE(in_short(there) == "note L1");
        REQUIRE_FALSE(there[0].lacks_sizes);
        REQUIRE_THAT(there[0].fix, Contains("handle") && Contains("jacket") && !Contains("--propose"));
    }
    // Nothing is proposed of a source.
    auto const solar = found("job-unknown", bare(two_pole("PV", 1).use("solar")));
    REQUIRE_THAT(solar.at(0).fix, !Contains("--propose") && Contains("what it has to carry"));
    // Only a length or a load is missing: no size is.
    auto const length = found("job-unknown", job({one_pole("L1", 1).with([](auto& c) { c.run[0].length.reset(); })}));
    REQUIRE_FALSE(length.at(0).lacks_sizes);
}

TEST_CASE("job-unknown: panels and other cables too", "[check][job]") {
    auto made = job({one_pole("L1", 1)});
    made.panels[0].asked = {"main"};
    made.cables = {
        {.mark = "S1", .name = "", .kind = "cat6", .from = "Shelf", .to = "Dock", .length = {}, .asked = {}}};
    auto const f = found("job-unknown", made);
    REQUIRE(in_short(f) == "note Main; note S1");
    REQUIRE_THAT(f[0].fix, Contains("the main's handle"));
    made.panels[0].asked.clear();
    made.cables[0].length = from_mm(5000);
    REQUIRE(says("job-unknown", made).empty());
}

TEST_CASE("job-no-effect: one note for all keys that do nothing yet", "[check][job]") {
    auto made = job({one_pole("L1", 1), one_pole("K1", 3)});
    REQUIRE(says("job-no-effect", made).empty());
    made.languages = {"en"}; // what sheets speak
    REQUIRE(says("job-no-effect", made).empty());
    made.languages = {"en", "fr"};
    made.tails = from_mm(1200);
    made.circuits[1].name_fr = "Cuisine";
    made.circuits[0].runs_with = {"K1"};
    auto const f = found("job-no-effect", made);
    REQUIRE(in_short(f) == "note K1 L1");
    for (auto const* key : {"language (", "tails (", "name_fr of K1 (", "runs_with of L1 ("})
        REQUIRE_THAT(f[0].message, Contains(key));
    REQUIRE(says("job-no-effect", made, "CE 2021") == "note K1 L1");
    typed::Box box;
    box.name = "Counter box";
    box.size = "2-gang";
    made.boxes = {box};
    REQUIRE_THAT(found("job-no-effect", made)[0].message, Contains("size of Counter box (nothing is judged by it)"));
}

TEST_CASE("job-assumed: whom a name seems to mean is listed as taken", "[check][job]") {
    auto made = job({one_pole("B1", 1).called("Outlets, kid 1", "Loft").use("receptacles"),
                     one_pole("B2", 3).called("Outlets", "Rosa's room").use("receptacles"),
                     one_pole("B3", 5).called("Outlets", "Guest room").use("receptacles")});
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        auto const f = found("job-assumed", made, edition);
        REQUIRE(in_short(f) == "note B1; note"); // what is sure is no guess
        REQUIRE_THAT(f[0].message, Contains("\"kid 1\" (B1)") && Contains("somebody"));
    }
    // The guess is at most a warning, what is sure an error under the NEC.
    REQUIRE(says("dir-person", made, "NEC 2023") == "warning B1; error B2");
    made.circuits[0].name = "Outlets, east wall";
    REQUIRE(says("job-assumed", made) == "note");
}

TEST_CASE("job-assumed: one note for the guessed uses, one for no dwelling", "[check][job]") {
    auto made = job({one_pole("L1", 1).use("lighting"), one_pole("K1", 3).use("kitchen counter"), one_pole("R1", 5)});
    made.circuits[0].use_guessed = made.circuits[1].use_guessed = true;
    auto const f = found("job-assumed", made);
    REQUIRE(in_short(f) == "note L1 K1; note");
    REQUIRE_THAT(f[0].message, Contains("L1 as lighting; K1 as kitchen counter"));
    REQUIRE(says("job-assumed", made, "CE 2021") == "note L1 K1; note");
    made.dwelling = typed::Dwelling{};
    REQUIRE(says("job-assumed", made) == "note L1 K1");
    for (typed::Circuit& c : made.circuits) c.use_guessed = false;
    REQUIRE(says("job-assumed", made).empty());
}
