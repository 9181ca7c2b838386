// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/draw.h"
#include "job/job.h"
#include "labels_fixture.h"
#include "labels_golden.h"
#include "sheet/labels_list.h"
#include "sheet/tape_notes.h"
#include "sheet/tape_notes_cards.h"
#include "source_folder.h"

#include "catch.h"

#include <algorithm>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {

EvenWidths const kEven;

std::vector<BoxCard> cards_of(Ask const& a) { return tape_cards(a.input(kEven)); }

BoxCard const& card(std::vector<BoxCard> const& cards, std::string const& title) {
    auto const at = std::ranges::find(cards, title, &BoxCard::title);
    REQUIRE(at != cards.end());
    return *at;
}
CableNote const& cable(BoxCard const& c, std::string const& mark, std::size_t which = 0) {
    for (auto const& note : c.cables)
        if (note.mark == mark && which-- == 0) return note;
    FAIL("no cable " << mark << " on " << c.title);
    return c.cables.front();
}
WireNote const& wire(CableNote const& c, std::string const& color) {
    auto const at = std::ranges::find(c.wires, color, &WireNote::color);
    REQUIRE(at != c.wires.end());
    return *at;
}
// All that the printed sheet says, its lines run together.
std::string printed(Ask const& a, Form const& form = tape_letter()) {
    std::string words = all_words(compose_tape_notes(a.input(kEven), form));
    std::ranges::replace(words, '\n', ' ');
    return words;
}
bool has(std::string const& words, std::string_view said) { return words.find(said) != words.npos; }

} // namespace

TEST_CASE("tape notes: one card a panel and a box, with every cable that ends there", "[sheet][tape]") {
    auto const cards = cards_of(ask("CE 2024"));
    std::vector<std::string> titles;
    for (auto const& c : cards) titles.push_back(c.title);
    CHECK(titles == std::vector<std::string>{"Main", "Loft", "B3", "Bench, left of window", "B4",
                                             "Water heater, under stair", "Ceiling lights", "Switch at the door",
                                             "Washroom, by the basin", "Yard outlet, west post", "Desk outlets"});
    CHECK(card(cards, "Main").cables.size() == 6);
    CHECK(card(cards, "B3").cables.size() == 3); // the pair comes in, each of the two goes on
    CHECK(card(cards, "B3").under == "box end, Machine room");
    REQUIRE(card(cards, "Main").missing.size() == 1);
    CHECK(has(card(cards, "Main").missing.front(), "No cable in the job file for Q1"));
}

TEST_CASE("tape notes: boxes that go by their circuit's name are not mixed up", "[sheet][tape]") {
    auto a = ask("CE 2024");
    for (auto& c : a.job.circuits)
        if (c.mark == "G1" || c.mark == "O1") c.name = "Outlet";
    auto const cards = cards_of(a);
    CHECK(std::ranges::count(cards, "Outlet", &BoxCard::title) == 2);
}

TEST_CASE("tape notes: where each conductor lands", "[sheet][tape]") {
    auto const cards = cards_of(ask("NEC 2023"));
    auto const& main = card(cards, "Main");
    auto const& pair = cable(main, "K1+K2");
    CHECK(wire(pair, "black").job == "hot of K1");
    CHECK(wire(pair, "black").lands == "breaker 8");
    CHECK(wire(pair, "red").lands == "breaker 10");
    CHECK(wire(pair, "white").job == "shared neutral of K1+K2");
    CHECK(wire(pair, "white").lands == "neutral bar");
    CHECK(wire(pair, "bare").lands == "ground bar");
    CHECK(wire(cable(main, "WH"), "white").lands == "breaker 3+5, other pole");
    // A circuit without a space in the file is proposed, and says so where it is read.
    CHECK(wire(cable(main, "G1"), "black").lands == "breaker 14 (proposed)");
    CHECK(wire(cable(main, "G1"), "white").lands == "neutral terminal of the GFCI breaker, not the bar");
    // Leg A of a sub-panel is leg A of the panel above. Rows 7 and 8 hold 13 and 15: leg A, leg B.
    CHECK(wire(cable(main, "SP"), "black").lands == "breaker 13+15, pole at 13: leg A of Loft");
    CHECK(wire(cable(main, "SP"), "red").lands == "breaker 13+15, pole at 15: leg B of Loft");
    auto const& loft = card(cards, "Loft");
    CHECK(wire(cable(loft, "SP"), "black").lands == "main terminal of leg A");
    CHECK(wire(cable(loft, "F1"), "black").lands == "breaker 1");

    auto const& b3 = card(cards, "B3");
    CHECK(wire(cable(b3, "K1+K2"), "red").lands == "the black to B4, and devices here");
    CHECK(wire(cable(b3, "K1+K2"), "white").lands == "all neutrals here, tail to each device");
    CHECK(wire(cable(b3, "K2"), "black").lands == "the red of K1+K2");
    CHECK(wire(cable(card(cards, "B4"), "K2"), "black").lands == "the device here, or the cable that goes on");
}

TEST_CASE("tape notes: a switch loop's hot passes by the light", "[sheet][tape]") {
    auto const cards = cards_of(ask("CE 2024"));
    auto const& light = card(cards, "Ceiling lights");
    CHECK(wire(cable(light, "L1"), "black").lands == "the white with red tape to Switch at the door, never the light");
    CHECK(wire(cable(light, "L1"), "white").lands == "the light");
    CHECK(wire(cable(light, "L1", 1), "black").job == "switched wire of L1");
    CHECK(wire(cable(light, "L1", 1), "black").lands == "the light");
    CHECK(wire(cable(light, "L1", 1), "white").lands == "the black of L1");
    CHECK(wire(cable(card(cards, "Switch at the door"), "L1"), "white").lands == "the switch");
}

TEST_CASE("tape notes: a white used as hot is taped, with why and the code", "[sheet][tape]") {
    // Source: NEC 2023 200.7(C)(1): in a cable, re-marked at every end and every place seen and reachable.
    auto const cards = cards_of(ask("NEC 2023"));
    for (auto const& title : {"Main", "Water heater, under stair"}) {
        auto const& white = wire(cable(card(cards, title), "WH"), "white");
        CHECK(white.remark == Remark::tape);
        CHECK(white.tape == "red");
        CHECK(has(white.why, "Allowed: NEC 2023 200.7(C)(1)"));
    }
    auto const words = printed(ask("NEC 2023"));
    CHECK(has(words, "red tape"));
    CHECK(has(words, "as made"));
}

TEST_CASE("tape notes: no sheet of NEC 2017 ever tapes a small neutral white", "[sheet][tape]") {
    // Source: NEC 2017 200.6(E): in a cable only where qualified persons alone service it.
    for (auto const code : {"NEC 2017"}) {
        CAPTURE(code);
        auto const a = ask(code);
        auto const words = printed(a);
        CHECK_FALSE(has(words, "white tape"));
        CHECK_FALSE(has(words, "tape it white"));
        CHECK_FALSE(has(words, "ask first"));
        CHECK(has(words, "must not be the neutral of O1"));
        CHECK(has(words, "no tape"));
        CHECK(has(words, "use a cable with a white wire"));
        CHECK(has(words, "200.6(E)"));
        // Nothing says where a wire lands that must not.
        for (auto const& c : cards_of(a))
            for (auto const& note : c.cables)
                for (auto const& w : note.wires)
                    if (w.remark == Remark::forbidden) CHECK(w.lands.empty());
    }
}

TEST_CASE("tape notes: under the CE Code and the NEC from 2020 on the same cable is taped, after asking",
          "[sheet][tape]") {
    // Source: CE Code 4-024 (4-028(4) in 2009), NEC 200.6(E) Exception No. 1 of 2020 and 2023: readings differ, so the
    // inspector is asked first.
    for (auto const code : {"NEC 2020", "NEC 2023", "CE 2018", "CE 2021", "CE 2024"}) {
        CAPTURE(code);
        auto const a = ask(code);
        auto const words = printed(a);
        CHECK(has(words, "white tape"));
        CHECK(has(words, "ask first"));
        CHECK(has(words, "Ask the inspector first"));
        auto const cards = cards_of(a);
        for (auto const& title : {"Main", "Yard outlet, west post"})
            CHECK(wire(cable(card(cards, title), "O1"), "red").remark == Remark::ask_first);
    }
}

TEST_CASE("tape notes: a pair's block tells what goes off together, the first split and the meter check",
          "[sheet][tape]") {
    // Source: two legs 180 degrees apart read 240 V between them, two phases of a wye 120 times the root of 3 = 208 V;
    // two points of one leg 0 V.
    auto a = ask("NEC 2023");
    CHECK(has(printed(a), "K1 and K2 go off together: two-pole breaker 8+10."));
    CHECK(has(printed(a), "First split: box B3."));
    CHECK(has(printed(a), "about 240 V between the two hots = right; 0 V = both on one leg: stop"));
    a.job.panels.front().supply->kind = SupplyKind::wye_120_208;
    CHECK(has(printed(a), "about 208 V between the two hots"));
    a.job.panels.front().supply->kind = SupplyKind::bridged_120;
    CHECK_FALSE(has(printed(a), "Meter check"));
    for (auto& c : a.job.circuits) c.tie = Tie::none;
    CHECK(has(printed(a), "K1 and K2 are not tied: turn both off before touching either (breaker 8+10)."));
}

TEST_CASE("tape notes: what is not known or missing is said", "[sheet][tape]") {
    auto a = ask("NEC 2023");
    for (auto& c : a.job.circuits) {
        if (c.mark == "K1" || c.mark == "K2") c.run.front().kind = "12/2";
        if (c.mark == "G1") c.run.front().kind.clear();
        if (c.mark == "WH") c.space.reset();
    }
    a.plan.panels.front().placements[2].slots.clear();
    auto const words = printed(a);
    CHECK(has(words, "The cable has no wire for 1 hot of K1+K2"));
    CHECK(has(words, "The job does not say what cable this is"));
    CHECK(has(words, "breaker of WH (no space yet)"));
}

TEST_CASE("tape notes: an error that stands says stop before the wires, at every end", "[sheet][tape]") {
    auto a = ask("NEC 2023");
    Finding f;
    f.rule = "mw-opposite-legs";
    f.where = {"Main", {"K1", "K2"}, ""};
    f.message = "K1 and K2 are both on leg A";
    a.findings = {f};
    auto const stop = std::string("Stop (mw-opposite-legs): K1 and K2 are both on leg A.");
    auto const cards = cards_of(a);
    for (auto const* title : {"Main", "B3"}) CHECK(cable(card(cards, title), "K1+K2").stops == std::vector{stop});
    CHECK(cable(card(cards, "Main"), "WH").stops.empty());
    CHECK(has(printed(a), stop));
    a.findings.front().accepted = true;
    CHECK_FALSE(has(printed(a), "Stop"));
}

TEST_CASE("tape notes: a breaker in another panel is said to be there", "[sheet][tape]") {
    auto a = ask("NEC 2023");
    a.job.circuits[1].panel = "Loft"; // an error (mw-one-panel): the card must not send K2 to a breaker of Main
    a.job.circuits[1].space = Spot{4, 0};
    a.plan = filed(a.job);
    auto const cards = cards_of(a);
    CHECK(wire(cable(card(cards, "Main"), "K1+K2"), "red").lands == "breaker 4 in panel Loft");
}

TEST_CASE("tape notes: a cable between boxes that carries a circuit is live, and said to be left out",
          "[sheet][tape]") {
    auto a = ask("CE 2024");
    a.job.cables.front().carries = {"K1"};
    Fonts const fonts(in_sources("fonts"));
    auto const words = all_words(compose_tape_notes(a.input(fonts), tape_letter()));
    CHECK(has(words, "Live, and not in these notes: S1 (of K1)."));
    CHECK_FALSE(has(words, "No circuit is on S1"));
}

TEST_CASE("tape notes: direct current has a positive and a negative, and no code's tape", "[sheet][tape]") {
    auto a = ask("CE 2024");
    a.job.panels.front().supply->kind = SupplyKind::dc_12;
    typed::Circuit lamp = circuit("D1", "Lamp", "Berth", "14/2", 2);
    a.job.circuits = {lamp};
    a.job.panels.pop_back();
    a.plan = filed(a.job);
    auto const cards = cards_of(a);
    auto const& note = cards.front().cables.front();
    CHECK(std::ranges::count(note.wires, "positive of D1", &WireNote::job) == 1);
    CHECK(std::ranges::count(note.wires, "negative of D1", &WireNote::job) == 1);
    for (auto const& w : note.wires) CHECK(w.why.empty());
    CHECK(has(printed(a), "fuse 2"));
}

TEST_CASE("tape notes: no text covers another, no card crosses a page or another card", "[sheet][tape]") {
    Fonts const fonts(in_sources("fonts"));
    auto a = ask(GENERATE("CE 2024", "NEC 2023"));
    a.findings = {Finding{}};
    // A panel too long for one column goes on as a second card.
    for (int i = 0; i < 12; ++i) {
        a.job.circuits.push_back(circuit("R" + std::to_string(i), "Row " + std::to_string(i), "Shed", "12/2", 0));
    }
    a.plan = filed(a.job);
    for (auto const& sheet : compose_tape_notes(a.input(fonts), tape_letter()))
        for (auto const& page : sheet.pages) {
            CHECK(overlapping(page, fonts) == "");
            std::vector<Box> cards;
            for (auto const& mark : page.marks)
                if (auto const* b = std::get_if<Box>(&mark); b && b->dashed && b->width > 80) cards.push_back(*b);
            REQUIRE_FALSE(cards.empty());
            for (auto const& c : cards) {
                CHECK(c.x >= 10);
                CHECK(c.x + c.width <= page.width - 10 + 1e-6);
                CHECK(c.y + c.height <= page.height - 20);
                for (auto const& d : cards)
                    CHECK((&c == &d || c.x + c.width < d.x || d.x + d.width < c.x || c.y + c.height < d.y ||
                           d.y + d.height < c.y));
            }
        }
    CHECK(has(all_words(compose_tape_notes(a.input(fonts), tape_letter())), "DRAFT: 1 error"));
}

namespace {
// The first page's first card and the first one of this name: of a panel and of a box where a pair splits. A card's
// frame is its last mark.
std::string two_cards(std::vector<Sheet> const& sheets, std::string_view name) {
    std::string text;
    Page card;
    bool wanted = true; // the first
    int held = 0;
    for (auto const& page : sheets.at(0).pages)
        for (auto const& mark : page.marks) {
            card.marks.push_back(mark);
            auto const* said = std::get_if<Text>(&mark);
            wanted = wanted || (held == 1 && said && said->words == name && said->x_height > 2.5);
            auto const* frame = std::get_if<Box>(&mark);
            if (!frame || !frame->dashed || frame->width < 50) continue;
            if (wanted && held < 2) text += fmt::format("card {}\n{}", ++held, dump(card));
            wanted = false;
            card.marks.clear();
        }
    return text;
}
} // namespace

TEST_CASE("tape notes: a colour may have any name", "[sheet][tape]") {
    for (auto const* color : {"striped", "two", "with", "red with", "/", "red/"}) {
        CAPTURE(color);
        auto a = ask("CE 2024");
        for (auto& c : a.job.circuits)
            if (c.mark == "O1") c.colors = {color, "black"};
        CHECK(has(printed(a), color));
    }
}

TEST_CASE("tape notes: a panel's card and a box's as they were looked at", "[sheet][tape][golden]") {
    for (auto const& [golden, code] :
         {std::pair("tape-notes-workshop-nec.txt", "NEC 2023"), {"tape-notes-workshop-ce.txt", "CE 2024"}})
        CHECK(matches_golden(golden, two_cards(compose_tape_notes(ask(code).input(kEven), tape_letter()), "B3")));
}

TEST_CASE("tape notes and labels: the tie of a pair may be said at its second member alone", "[sheet][tape][labels]") {
    auto a = ask("CE 2024");
    a.job.circuits[0].tie = Tie::none;
    REQUIRE(a.job.circuits[1].tie == Tie::two_pole_breaker);
    CHECK(has(printed(a), "K1 and K2 go off together: two-pole breaker 8+10."));
    auto const building = resolve(a.job);
    auto const ends = cable_ends(building, cable_runs(building, *code_book(building.code)));
    auto const pair =
        std::ranges::find_if(ends, [](CableEnd const& end) { return end.labels.front().mark == "K1+K2"; });
    REQUIRE(pair != ends.end());
    CHECK(pair->labels.front().cable == "12/3, 2P 20 A");
}
