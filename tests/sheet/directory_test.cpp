// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "building/resolve.h"
#include "directory_fixture.h"
#include "draw/draw.h"
#include "labels_golden.h"
#include "rules/check.h"
#include "source_folder.h"

#include "catch.h"

#include <set>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {
#ifdef LEGWORK_SANITIZED
constexpr unsigned kPanels = 10; // the sanitizers are slow
#else
constexpr unsigned kPanels = 60;
#endif

Text only(std::vector<Sheet> const& sheets, std::string_view words) {
    auto const found = said(sheets, words);
    CAPTURE(words);
    REQUIRE(found.size() == 1);
    return found.front();
}
} // namespace

TEST_CASE("directory: nothing cut, nothing over another, whatever stands on the panel", "[sheet][directory]") {
    Fonts const widths(in_sources("fonts"));
    for (unsigned seed = 1; seed <= kPanels; ++seed) {
        typed::Job const job = crowded(seed);
        Plan const plan = as_filed(resolve(job));
        for (Form const& form : {directory_letter(), directory_a4()}) {
            Findings findings(seed % 3, Finding{});
            auto const sheets = directory(job, plan, widths, form, findings);
            REQUIRE(sheets.size() == 1);
            for (std::size_t i = 0; i < sheets[0].pages.size(); ++i) {
                CAPTURE(seed, form.name, i);
                CHECK(overlapping(sheets[0].pages[i], widths) == "");
                CHECK(outside(sheets[0].pages[i], form, widths) == "");
            }
        }
    }
}

TEST_CASE("directory: every circuit's whole name and every space stand on it", "[sheet][directory]") {
    Fonts const widths(in_sources("fonts"));
    for (unsigned seed = 1; seed <= kPanels; ++seed) {
        CAPTURE(seed);
        typed::Job const job = crowded(seed);
        auto const sheets = directory(job, widths);
        std::string words;
        for (auto const& page : sheets[0].pages)
            for (auto const& t : texts(page)) words += t.words + " ";
        std::set<std::string> numbers;
        for (auto const& c : job.circuits) {
            CHECK_THAT(words, Contains(c.name)); // lines of a wrapped name follow one another
            for (Spot const s : slots(Layout(job.panels[0]), *c.space, c.poles)) numbers.insert(text(s));
        }
        for (std::string const& n : numbers) {
            CAPTURE(n);
            // Once beside the spine; on the map of a turned panel as well.
            CHECK(said(sheets, n).size() >= 1);
        }
    }
}

TEST_CASE("directory: lines read like the panel", "[sheet][directory]") {
    EvenWidths const widths;
    typed::Job job = boathouse();
    auto const at = [&](std::string_view number) { return only(directory(job, widths), number); };
    SECTION("upright: odd numbers left, going down") {
        CHECK(at("1").x < at("2").x);
        CHECK(at("1").baseline == Approx(at("2").baseline));
        CHECK(at("1").baseline < at("3").baseline);
    }
    SECTION("upside down: space 1 at the bottom right") {
        job.panels[0].hang = Hang::upside_down;
        CHECK(at("1").x > at("2").x);
        CHECK(at("1").baseline > at("3").baseline);
        CHECK(at("17a").baseline > at("17b").baseline);
    }
    SECTION("first space at the top right") {
        job.panels[0].first = Corner::top_right;
        CHECK(at("1").x > at("2").x);
        CHECK(at("1").baseline < at("3").baseline);
    }
    SECTION("first space at the bottom left") {
        job.panels[0].first = Corner::bottom_left;
        CHECK(at("1").x < at("2").x);
        CHECK(at("1").baseline > at("3").baseline);
    }
    SECTION("numbered down the columns: 13 faces 1") {
        job.panels[0].numbering = Numbering::down;
        CHECK(at("2").baseline > at("1").baseline);
        CHECK(at("13").baseline == Approx(at("1").baseline));
        CHECK(at("13").x > at("1").x);
    }
}

TEST_CASE("directory: a turned panel has a map as it hangs above upright lines", "[sheet][directory]") {
    EvenWidths const widths;
    typed::Job job = boathouse();
    // Turned left: the top points left, the left column becomes the lower row. Turned right: the upper row, right to
    // left.
    auto const [hang, odd_below, rightwards] =
        GENERATE(table<Hang, bool, bool>({{Hang::turned_left, true, true}, {Hang::turned_right, false, false}}));
    job.panels[0].hang = hang;
    auto const sheets = directory(job, widths);
    auto const map = [&](std::string_view number) {
        auto found = said(sheets, number);
        REQUIRE(found.size() == 2);
        return found[0].baseline < found[1].baseline ? found[0] : found[1];
    };
    CHECK((map("1").baseline > map("2").baseline) == odd_below);
    CHECK((map("1").x < map("3").x) == rightwards);
    for (auto const& t : texts(sheets[0].pages[0]))
        if (t.words == "Range") CHECK(t.turn == 0);
}

TEST_CASE("directory: the leg letter of each row stands between the columns", "[sheet][directory]") {
    EvenWidths const widths;
    auto const sheets = directory(boathouse(), widths);
    std::string legs;
    auto all = texts(sheets[0].pages[0]);
    std::ranges::sort(all, {}, &Text::baseline);
    for (auto const& t : all)
        if (t.words == "A" || t.words == "B") legs += t.words;
    CHECK(legs == "ABABABABABAB"); // Source: common practice, no source: legs alternate from row to row.
    for (auto const& t : all)
        if (t.words == "A") CHECK(t.x == Approx(215.9 / 2));
    typed::Job dc = boathouse();
    dc.panels[0].supplies.clear();
    dc.panels[0].supply = typed::Supply{"", SupplyKind::dc_12, {}, Leg::a, {}};
    CHECK(said(directory(dc, widths), "B").empty());
}

TEST_CASE("directory: what a hand at the breaker must know", "[sheet][directory]") {
    Fonts const widths(in_sources("fonts"));
    typed::Job job = boathouse();
    auto const words = [&] { return all_words(directory(job, widths)); };
    SECTION("pairs, two-pole breakers, protection, smaller wire") {
        CHECK_THAT(words(), Contains("off together with 3") && Contains("off together with 1"));
        CHECK_THAT(words(), Contains("shares neutral with 12: turn both off") &&
                                Contains("shares neutral with 6: turn both off"));
        CHECK_THAT(words(),
                   Contains("2P 40 A") && Contains("GFCI at outlet") && Contains("max 15 A: 14 AWG downstream"));
    }
    SECTION("a tie that cannot be: the members stand apart") {
        job.circuits[1].space = Spot{7, 0};
        job.circuits[9].space = Spot{19, 0}; // the water heater makes room
        CHECK_THAT(words(), Contains("shares neutral with 7: turn both off") && !Contains("off together"));
    }
    SECTION("a pair in two panels") {
        typed::Panel sub;
        sub.name = "Barn";
        sub.spaces = 8;
        sub.feeder = typed::FeederName{"Main", "RNG"};
        job.panels.push_back(sub);
        job.circuits[1].panel = "Barn";
        job.circuits[1].space = Spot{1, 0};
        CHECK_THAT(words(), Contains("shares neutral with K2 in panel Barn") && Contains("feeds panel Barn"));
    }
    SECTION("two poles whose handles are not tied") {
        job.circuits[10].tie = Tie::none;
        CHECK_THAT(words(), Contains("9 and 11 not tied: turn both off"));
    }
    SECTION("what is no circuit does not look like one") {
        CHECK_THAT(words(),
                   Contains("SPARE") && Contains("SPACE") && Contains("BLOCKED") && Contains("FUTURE: Boat lift"));
        for (auto const& t : texts(directory(job, widths)[0].pages[0]))
            for (auto const* word : {"SPARE", "SPACE", "BLOCKED", "FUTURE: Boat lift"})
                if (t.words == word) CHECK(t.weight == Weight::regular);
    }
    SECTION("no source reaches half of the spaces") {
        job.panels[0].supplies.clear();
        job.panels[0].supply = typed::Supply{"", SupplyKind::one_leg_120, 30_A, Leg::a, {}};
        CHECK_THAT(words(), Contains("NOT FED") && Contains("120 V on leg A only") &&
                                Contains("on leg B and 240 V circuits are dead on it."));
    }
    SECTION("a circuit without a space") {
        job.circuits[11].space.reset();
        Plan plan = as_filed(resolve(job));
        for (auto& p : plan.panels[0].placements)
            if (p.circuit == "RF") p.slots.clear();
        CHECK_THAT(all_words(directory(job, plan, widths, directory_letter())),
                   Contains("NOT PLACED") && Contains("Refrigerator, Kitchen, 15 A"));
    }
    SECTION("a circuit nobody has named") {
        job.circuits[11].name.clear();
        CHECK_THAT(words(), Contains("(no name)"));
    }
}

TEST_CASE("directory: every source is named with what kills it", "[sheet][directory]") {
    EvenWidths const widths;
    typed::Job job = boathouse();
    auto const words = [&] {
        std::string all;
        for (auto const& t : texts(directory(job, widths)[0].pages[0])) all += t.words + " ";
        return all;
    };
    CHECK_THAT(words(), Contains("Grid") && Contains("Off: main 60 A in this panel; the wires up to it stay live."));
    CHECK_THAT(words(), Contains("Off: at the source itself, stopped or unplugged.") &&
                            Contains("240 V circuits do not run on it."));
    CHECK_THAT(words(), Contains("Switch off by hand before Cord inlet, north wall is used") &&
                            Contains("5+7 Water heater, under stair (WH)"));
    CHECK_THAT(words(), Contains("This panel is dead only when all of these are off."));
    SECTION("an inlet on a breaker of the same name") {
        auto inlet = line("CI", "Cord inlet, north wall", "", 30, 19, 2);
        inlet.use = "generator inlet";
        job.circuits.push_back(inlet);
        CHECK_THAT(words(), Contains("Off: its breaker CI, space 19+21."));
    }
    SECTION("no main in the panel") {
        job.panels[0].main.reset();
        CHECK_THAT(words(),
                   Contains("Off: no main here, so switch off where it comes from.") && !Contains("Off: main"));
    }
    SECTION("a sub-panel") {
        typed::Panel sub;
        sub.name = "Barn";
        sub.spaces = 8;
        sub.feeder = typed::FeederName{"Main", "RNG"};
        job.panels.push_back(sub);
        auto const barn = all_words({directory(job, widths)[1]});
        CHECK_THAT(barn, Contains("Circuit RNG, 40 A, on space 9+11 there. Off: that breaker."));
    }
}

TEST_CASE("directory: bands tell what the sheet must not hide", "[sheet][directory]") {
    EvenWidths const widths;
    typed::Job job = boathouse();
    Findings findings(2, Finding{});
    auto const with = all_words(directory(job, widths, directory_letter(), findings));
    CHECK_THAT(with, Contains("DRAFT: 2 errors\n") && !Contains("sizes missing") && !Contains("PROPOSED"));
    findings = {Finding{}};
    findings[0].severity = Severity::warning;
    findings[0].lacks_sizes = true;
    CHECK_THAT(all_words(directory(job, widths, directory_letter(), findings)),
               Contains("DRAFT: sizes missing\n") && !Contains("error"));
    findings[0].accepted = true;
    CHECK_THAT(all_words(directory(job, widths, directory_letter(), findings)), !Contains("DRAFT"));
    job.circuits[11].space.reset();
    auto const proposed = all_words(directory(job, widths));
    CHECK_THAT(proposed, Contains("PROPOSED: spaces not saved\n") && !Contains("DRAFT"));
}

TEST_CASE("directory: an acceptance is a footnote with reason and name, and no band", "[sheet][directory]") {
    EvenWidths const widths;
    typed::Job job = boathouse();
    auto const& mark = job.circuits[0].mark;
    job.accepts = {
        {.rule = "gfci-needed", .why = "the dock goes next year", .by = "R. Moss", .circuit = mark, .panel = ""},
        {.rule = "dir-vague", .why = "never found", .by = "R. Moss", .circuit = "", .panel = "Main"}};
    Findings findings(1);
    findings[0].rule = "gfci-needed";
    findings[0].where.circuits = {mark};
    findings[0].accepted = true;
    auto const words = all_words(directory(job, widths, directory_letter(), findings));
    CHECK_THAT(words, Contains("Accepted by R. Moss: gfci-needed of " + mark + ": the dock goes next year"));
    CHECK_THAT(words, !Contains("DRAFT") && !Contains("ACCEPTED") && !Contains("never found")); // it covers nothing
    // Not on the sheets of a panel that it does not concern.
    typed::Panel sub;
    sub.name = "Barn";
    sub.spaces = 8;
    sub.supply = typed::Supply{"", SupplyKind::split_120_240, {}, Leg::a, {}};
    job.panels.push_back(sub);
    auto const sheets = directory(job, widths, directory_letter(), findings);
    CHECK_THAT(all_words({sheets.at(0)}), Contains("Accepted by"));
    CHECK_THAT(all_words({sheets.at(1)}), !Contains("Accepted by"));
}

TEST_CASE("directory: head and foot", "[sheet][directory]") {
    EvenWidths const widths;
    auto const words = all_words(directory(boathouse(), widths));
    for (auto const* needed :
         {"Ferry Landing boathouse", "rev. B", "2026-05-02", "page 1 of 1", "checked against CE 2024",
          "Reprint: legwork print boathouse.toml", "A planning aid", "GFCI", "Loads in VA: connected A"})
        CHECK_THAT(words, Contains(needed));
}

TEST_CASE("directory: 84 spaces take two pages, and no breaker is cut in two", "[sheet][directory]") {
    EvenWidths const widths;
    typed::Job job = boathouse();
    job.panels[0].spaces = 84;
    job.panels[0].blocked.clear();
    job.panels[0].supplies = {"Grid"};
    job.circuits.push_back(line("X", "Across the middle", "Yard", 30, 41, 2));
    auto const sheets = directory(job, widths);
    REQUIRE(sheets[0].pages.size() >= 2);
    auto const page_of = [&](std::string_view words) {
        for (std::size_t i = 0; i < 2; ++i)
            for (auto const& t : texts(sheets[0].pages[i]))
                if (t.words == words) return i;
        return std::size_t{9};
    };
    CHECK(page_of("41") == page_of("43"));
    CHECK(page_of("1") == 0);
    CHECK(page_of("84") == 1);
}

TEST_CASE("dir-name-too-long and dir-no-letter", "[sheet][directory]") {
    Fonts const widths(in_sources("fonts"));
    typed::Job job = boathouse();
    Form const form = directory_letter();
    auto const found_in = [&](typed::Job const& j) {
        auto const building = resolve(j);
        auto const plan = as_filed(building);
        auto const& book = *code_book(j.code);
        std::vector<SheetOrder> const sheets{{sheet_kind("directory"), form}};
        auto found =
            check(building, plan, book, printed_words({building, plan, {}, book, widths, ""}, sheets)).findings;
        std::erase_if(found,
                      [](Finding const& f) { return f.rule != "dir-name-too-long" && f.rule != "dir-no-letter"; });
        return found;
    };
    CHECK(found_in(job).empty());
    job.circuits[0].name = "Donaudampfschifffahrtsgesellschaftskapitänsmützenständerlampe"; // no place to part it
    job.circuits[1].room = "Kitchen \xcd\xb8";                                              // U+0378 is no letter
    auto const found = found_in(job);
    REQUIRE(found.size() == 2);
    CHECK(found[0].rule == "dir-name-too-long");
    CHECK(found[0].where.circuits == std::vector<std::string>{"K1"});
    CHECK(found[1].rule == "dir-no-letter");
    CHECK(found[1].where.circuits == std::vector<std::string>{"K2"});
    CHECK_THAT(found[1].message, Contains("\xcd\xb8"));
    for (auto const& f : found) CHECK(f.severity == Severity::warning);
}

TEST_CASE("directory: pages as they were looked at", "[sheet][directory][golden]") {
    EvenWidths const widths;
    typed::Job job = boathouse();
    CHECK(matches_golden("directory-boathouse.txt", dumped(directory(job, widths))));
    job.panels[0].hang = Hang::turned_left;
    CHECK(matches_golden("directory-turned.txt", dumped(directory(job, widths, directory_a4()))));
    job.panels[0].hang = Hang::upright;
    job.panels[0].supplies.clear();
    job.panels[0].supply = typed::Supply{"", SupplyKind::one_leg_120, 30_A, Leg::a, {}};
    CHECK(matches_golden("directory-one-leg.txt", dumped(directory(job, widths))));
}
