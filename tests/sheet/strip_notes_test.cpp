// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Direct current on sheets that a person lands wires from. Common practice, no source: a strip of several colours has
// a common plus and a channel a colour; no colour of a wire tells 12 V from 24 V.
#include "labels_fixture.h"
#include "sheet/labels_list.h"
#include "sheet/tape_notes.h"
#include "sheet/tape_notes_cards.h"

#include "catch.h"

#include <algorithm>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {
EvenWidths const kEven;

// A strip behind its controller, which a two-wire cable feeds.
Ask strip() {
    auto a = ask("CE 2024");
    a.job.panels.resize(1);
    a.job.panels.front().supply->kind = SupplyKind::dc_12;
    typed::Circuit c = circuit("S1", "Strip", "Loft", "18/2 lighting strip", 1);
    c.run.front().to = "Controller";
    c.run.push_back({"18/5 lighting strip", from_mm(3000), "Shelf"});
    a.job.circuits = {c};
    a.job.cables.clear();
    a.plan = filed(a.job);
    return a;
}

// "black: common plus of S1 -> plus of the strip"
std::vector<std::string> told(Ask const& a, std::string const& title, std::size_t which = 0) {
    auto const cards = tape_cards(a.input(kEven));
    auto const at = std::ranges::find(cards, title, &BoxCard::title);
    REQUIRE(at != cards.end());
    REQUIRE(at->cables.size() > which);
    std::vector<std::string> lines;
    for (WireNote const& w : at->cables[which].wires) lines.push_back(w.color + ": " + w.job + " -> " + w.lands);
    return lines;
}
using Lines = std::vector<std::string>;
} // namespace

TEST_CASE("tape notes: a strip's cable has a plus and channels, none of it ground, neutral or capped",
          "[sheet][tape]") {
    auto const a = strip();
    CHECK(told(a, "Main") == Lines{"red: positive of S1 -> fuse 1", "black: negative of S1 -> negative bar"});
    CHECK(told(a, "Controller") == Lines{"red: positive of S1 -> plus in of the strip's controller",
                                         "black: negative of S1 -> minus in of the strip's controller"});
    CHECK(told(a, "Controller", 1) ==
          Lines{"black: common plus of S1 -> plus out (V+) of the strip's controller",
                "red: red channel of S1 -> red out of the strip's controller, never a bar",
                "green: green channel of S1 -> green out of the strip's controller, never a bar",
                "blue: blue channel of S1 -> blue out of the strip's controller, never a bar",
                "white: white channel of S1 -> white out of the strip's controller, never a bar"});
    CHECK(told(a, "Shelf") ==
          Lines{"black: common plus of S1 -> plus of the strip", "red: red channel of S1 -> red of the strip",
                "green: green channel of S1 -> green of the strip", "blue: blue channel of S1 -> blue of the strip",
                "white: white channel of S1 -> white of the strip"});
}

TEST_CASE("tape notes: a strip's cable that is longer goes on by colour", "[sheet][tape]") {
    auto a = strip();
    a.job.circuits[0].run.push_back({"18/5 lighting strip", from_mm(3000), "Sill"});
    a.plan = filed(a.job);
    auto const shelf = told(a, "Shelf");
    CHECK(shelf[0] == "black: common plus of S1 -> the black of S1");
    CHECK(shelf[2] == "green: green channel of S1 -> the green of S1");
    CHECK(told(a, "Sill")[2] == "green: green channel of S1 -> green of the strip");
}

TEST_CASE("tape notes: a card of direct current speaks of the battery, others beside it of both legs",
          "[sheet][tape]") {
    // Common practice, no source: direct current has no legs, and a battery is live up to its first fuse.
    auto a = strip();
    typed::Panel house = a.job.panels.front();
    house.name = "House", house.supply->kind = SupplyKind::split_120_240;
    a.job.panels.push_back(house);
    auto lamp = circuit("L1", "Lamp", "Porch", "14/2", 1);
    lamp.panel = "House", lamp.run.front().to = "Porch box";
    a.job.circuits.push_back(lamp);
    a.plan = filed(a.job);
    auto const cards = tape_cards(a.input(kEven));
    for (auto const& [title, dc] :
         {std::pair("Main", true), {"Controller", true}, {"House", false}, {"Porch box", false}}) {
        CAPTURE(title);
        auto const at = std::ranges::find(cards, title, &BoxCard::title);
        REQUIRE(at != cards.end());
        CHECK(at->dc_only == dc);
    }
    auto const all = all_words(compose_tape_notes(a.input(kEven), tape_letter()));
    CHECK_THAT(all, Contains("Disconnect battery and supply") && Contains("prove dead on both legs before touching."));
}

TEST_CASE("labels: each label of direct current says its volts", "[sheet][labels]") {
    auto a = strip();
    for (auto const& [kind, volts] : {std::pair{SupplyKind::dc_12, "DC 12 V"}, std::pair{SupplyKind::dc_24, "DC 24 V"},
                                      std::pair{SupplyKind::dc_48, "DC 48 V"}}) {
        a.job.panels.front().supply->kind = kind;
        auto const b = resolve(a.job);
        auto const ends = cable_ends(b, cable_runs(b, *code_book("CE 2024")));
        REQUIRE(ends.size() == 4);
        for (auto const& end : ends)
            for (auto const& label : end.labels) CHECK(label.which.starts_with(volts));
    }
    auto const ac = resolve(workshop("CE 2024"));
    for (auto const& end : cable_ends(ac, cable_runs(ac, *code_book("CE 2024"))))
        for (auto const& label : end.labels) CHECK(label.which.find("DC") == std::string::npos);
}
