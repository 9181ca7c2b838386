// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "building/resolve.h"
#include "draw/draw.h"
#include "labels_fixture.h"
#include "labels_golden.h"
#include "sheet/labels.h"
#include "sheet/labels_list.h"
#include "source_folder.h"

#include "catch.h"

#include <algorithm>
#include <map>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {

// How often each end of each cable is labelled: "K1+K2 | Panel end: Main" -> 2.
std::map<std::string, int> labelled(std::vector<CableEnd> const& ends) {
    std::map<std::string, int> found;
    for (auto const& end : ends)
        for (auto const& l : end.labels) ++found[l.mark + " | " + l.end];
    return found;
}

std::vector<CableEnd> ends_of(Ask const& a) {
    auto const building = resolve(a.job);
    return cable_ends(building, cable_runs(building, *code_book(building.code)));
}

} // namespace

TEST_CASE("labels: every cable has two at each end, a spare none", "[sheet][labels]") {
    auto const a = ask("CE 2024");
    // Each end counted by hand from the fixture: a tip and one to keep.
    std::map<std::string, int> const expected{
        {"K1+K2 | Panel end: Main", 2},
        {"K1+K2 | Box end: B3", 2},
        {"K1 | Box end: B3", 2},
        {"K1 | Box end: Bench, left of window", 2},
        {"K2 | Box end: B3", 2},
        {"K2 | Box end: B4", 2},
        {"WH | Panel end: Main", 2},
        {"WH | Box end: Water heater, under stair", 2},
        {"L1 | Panel end: Main", 2},
        {"L1 | Box end: Ceiling lights", 4}, // two cables meet there
        {"L1 | Box end: Switch at the door", 2},
        {"SP | Panel end: Main", 2},
        {"SP | Panel end: Loft", 2},
        {"G1 | Panel end: Main", 2},
        {"G1 | Box end: Washroom, by the basin", 2},
        {"O1 | Panel end: Main", 2},
        {"O1 | Box end: Yard outlet, west post", 2},
        {"F1 | Panel end: Loft", 2},
        {"F1 | Box end: Desk outlets", 2},
        {"S1 | This end: Network shelf", 2},
        {"S1 | This end: West post", 2},
    };
    CHECK(labelled(ends_of(a)) == expected);

    EvenWidths const widths;
    auto const words = all_words(compose_labels(a.input(widths), labels_letter()));
    CHECK(words.find("X9") == words.npos);
    CHECK(words.find("No label for Q1") != words.npos);
}

TEST_CASE("labels: both ends of one cable stand next to each other, one to lose and one to keep", "[sheet][labels]") {
    auto const ends = ends_of(ask("NEC 2023"));
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2) {
        REQUIRE(ends[i].labels.front().mark == ends[i + 1].labels.front().mark);
        REQUIRE(ends[i].labels.front().end_name == ends[i + 1].labels.front().other_name);
        REQUIRE(ends[i].labels.size() == 2);
        REQUIRE(ends[i].labels.front().which == "tip");
        REQUIRE(ends[i].labels.back().which == "keep");
    }
    CHECK(ends.front().labels.front().cable == "12/3, 2P 20 A");
}

TEST_CASE("labels: a shared cable has a marker for its neutral and each hot, at both ends", "[sheet][labels]") {
    auto const ends = ends_of(ask("NEC 2023"));
    std::size_t all = 0;
    for (auto const& end : ends) all += end.markers.size();
    CHECK(all == 6);
    auto const& panel = ends[0].markers;
    auto const& box = ends[1].markers;
    REQUIRE(panel.size() == 3);
    REQUIRE(box.size() == 3);
    CHECK(panel[0].words == "N K1+K2");
    CHECK(panel[0].spaces == "8+10, rev B");
    CHECK(panel[1].words == "K1");
    CHECK(panel[1].note == "black");
    CHECK(panel[2].words == "K2");
    CHECK(panel[2].note == "red");
    CHECK(panel[2].spaces == "10, rev B");
    CHECK(box[0].words == "N K1+K2");
    CHECK(box[0].spaces.empty()); // spaces are looked for at the panel, and go out of date
}

TEST_CASE("labels: a space that the file does not have is on no label", "[sheet][labels]") {
    auto a = ask("NEC 2023");
    for (auto& c : a.job.circuits) c.space.reset();
    a.plan = filed(a.job); // the plan proposes spaces; labels must not show them
    for (auto const& end : ends_of(a))
        for (auto const& m : end.markers) CHECK(m.spaces.empty());

    auto undated = ask("NEC 2023");
    undated.job.revision.clear();
    CHECK(ends_of(undated).front().markers.front().spaces == "8+10, 2026-05-02");
    undated.job.date.reset();
    CHECK(ends_of(undated).front().markers.front().spaces.empty());
}

TEST_CASE("labels: no marker calls a conductor neutral that must not be one", "[sheet][labels]") {
    // NEC 2017 200.6(E): in a cable never where others than qualified persons service it. NEC 2023 there, CE 2024
    // 4-024: readings differ.
    for (auto const& [code, n] : {std::pair{"NEC 2017", 0}, {"NEC 2023", 2}, {"CE 2024", 2}}) {
        auto a = ask(code);
        a.job.circuits[0].colors = {"black", "red", "blue"};
        auto const ends = ends_of(a);
        auto const all = std::ranges::count_if(ends, [](CableEnd const& e) {
            return std::ranges::any_of(e.markers, [](Marker const& m) { return m.words == "N K1+K2"; });
        });
        CAPTURE(code);
        CHECK(all == n);
    }
}

TEST_CASE("labels: text keeps 1.5 mm from the die cut, within the printer's reach, off other text", "[sheet][labels]") {
    EvenWidths const even;
    Fonts const fonts(in_sources("fonts"));
    auto a = ask(GENERATE("CE 2024", "NEC 2023"));
    Finding error;
    error.rule = "mw-opposite-legs";
    a.findings = {error, error};
    for (TextWidth const* widths : {static_cast<TextWidth const*>(&even), static_cast<TextWidth const*>(&fonts)})
        for (auto const& form : {labels_letter(), labels_edge_to_edge()}) {
            auto const sheets = compose_labels(a.input(*widths), form);
            REQUIRE(sheets.size() == 1);
            for (auto const& page : sheets.front().pages) {
                CHECK(too_near(page, form, *widths) == "");
                CHECK(overlapping(page, *widths) == "");
                for (auto const& t : texts(page)) CHECK(t.x_height >= 1.6); // the floor of the typographic scale
            }
        }
}

TEST_CASE("labels: every page says what job it is of", "[sheet][labels]") {
    Fonts const fonts(in_sources("fonts"));
    auto a = ask("CE 2024");
    a.findings = {Finding{}};
    for (auto const& form : {labels_letter(), labels_edge_to_edge()}) {
        auto const sheets = compose_labels(a.input(fonts), form);
        auto const& pages = sheets.front().pages;
        REQUIRE(pages.size() > 1);
        for (std::size_t i = 0; i < pages.size(); ++i) {
            std::string words;
            for (auto const& t : texts(pages[i])) words += t.words + " ";
            std::vector<std::string> const must{"Mill Creek workshop",
                                                "rev. B",
                                                "2026-05-02",
                                                "CE 2024",
                                                "DRAFT: 1 error",
                                                "prove dead on both legs",
                                                fmt::format("page {} of {}", i + 1, pages.size())};
            for (auto const& said : must) {
                CAPTURE(form.label_width, i, said);
                CHECK(words.find(said) != words.npos);
            }
        }
    }
}

TEST_CASE("labels: pages as they were looked at", "[sheet][labels][golden]") {
    EvenWidths const widths;
    auto const a = ask("NEC 2023");
    CHECK(matches_golden("labels-workshop-letter.txt", dumped(compose_labels(a.input(widths), labels_letter()))));
    CHECK(matches_golden("labels-workshop-edge.txt", dumped(compose_labels(a.input(widths), labels_edge_to_edge()))));
}

TEST_CASE("labels: nothing to label gives no sheet", "[sheet][labels]") {
    EvenWidths const widths;
    auto a = ask("NEC 2023");
    a.job.circuits.clear();
    a.job.cables.clear();
    CHECK(compose_labels(a.input(widths), labels_letter()).empty());
    CHECK(compose_labels(ask("NEC 2023").input(widths), tape_letter()).empty()); // a form without labels
}
