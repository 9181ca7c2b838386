// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a panel is marked for (its own label; NEC 408.54: a two-pole breaker counts as two devices) and how it hangs
// (NEC 240.81 from memory: a handle that moves up and down is on when up).
#include "job/job.h"
#include "made_job.h"
#include "panel/hang.h"

#include "catch.h"

using namespace made;

namespace {
typed::Job marked(int most, std::vector<typed::Circuit> circuits) {
    auto made = job(std::move(circuits));
    made.panels[0].circuits_max = most;
    return made;
}

typed::Job hung(Hang hang, std::vector<typed::Circuit> circuits) {
    auto made = job(std::move(circuits));
    made.panels[0].hang = hang;
    return made;
}
} // namespace

TEST_CASE("panel-circuits: poles, not breakers, within what the panel is marked for", "[check][panel]") {
    std::vector<typed::Circuit> const five{two_pole("WH", 1), one_pole("A").space(2, 'a'), one_pole("B").space(2, 'b'),
                                           one_pole("C", 4).use("spare")};
    auto const edition = GENERATE(from_range(editions()));
    CAPTURE(edition);
    REQUIRE(says("panel-circuits", marked(5, five), edition).empty());
    REQUIRE(says("panel-circuits", marked(4, five), edition) == "error Main");
    REQUIRE(says("panel-circuits", job(five), edition).empty()); // not known: silent
}

TEST_CASE("panel-circuits: quads, pairs, the main, old work", "[check][panel]") {
    // A quad: two two-pole breakers in two spaces.
    auto const quad = std::vector<typed::Circuit>{two_pole("Q").space(7, 'a'), two_pole("R").space(7, 'b')};
    REQUIRE(says("panel-circuits", marked(4, quad)).empty());
    REQUIRE_THAT(found("panel-circuits", marked(3, quad)).at(0).message, Contains("at most 3 poles") && Contains("4"));
    REQUIRE_THAT(found("panel-circuits", marked(3, quad)).at(0).fix, Contains("1 pole,"));
    auto const pair = std::vector<typed::Circuit>{one_pole("K1", 1).pair("K", Tie::two_pole_breaker),
                                                  one_pole("K2", 3).pair("K", Tie::two_pole_breaker)};
    REQUIRE(says("panel-circuits", marked(1, pair)) == "error Main");
    REQUIRE(says("panel-circuits", marked(2, pair)).empty());
    REQUIRE(says("panel-circuits", marked(1, {two_pole("MN", 1).use("main"), one_pole("A", 2)})).empty());
    REQUIRE(says("panel-circuits", marked(1, {one_pole("A", 1).old(), one_pole("B", 2).old()})) == "error Main");
    // Breakers without a space must go somewhere too.
    REQUIRE(says("panel-circuits", marked(1, {one_pole("A", 1), one_pole("B")})) == "error Main");
    // Each panel for itself.
    REQUIRE(says("panel-circuits", marked(1, {one_pole("A", 1), one_pole("B", 1).in("Shed")})).empty());
}

TEST_CASE("panel-hang: of a turned panel the upper row is on when down", "[check][panel]") {
    std::vector<typed::Circuit> const three{one_pole("L1", 1), one_pole("R2", 2), two_pole("R6", 6)};
    // Thought through by hand, numbered across from the top left: space 1 is upright in the left column, its handle on
    // when pushed right. A turn to the left (top to the left) brings right to up.
    auto const edition = GENERATE("NEC 2017", "NEC 2020", "NEC 2023");
    REQUIRE(says("panel-hang", hung(Hang::turned_left, three), edition) == "warning R2 R6");
    REQUIRE(says("panel-hang", hung(Hang::turned_right, three), edition) == "warning L1");
    REQUIRE(says("panel-hang", hung(Hang::upright, three), edition).empty());
    REQUIRE(says("panel-hang", hung(Hang::upside_down, three), edition).empty());
    REQUIRE(found("panel-hang", hung(Hang::turned_right, three), edition).at(0).reference.section == "240.81");
}

TEST_CASE("panel-hang: silent under CE, on a row left empty, on fuses", "[check][panel]") {
    for (auto const edition : {"CE 2018", "CE 2021", "CE 2024"})
        REQUIRE(says("panel-hang", hung(Hang::turned_left, {one_pole("R2", 2)}), edition).empty());
    REQUIRE(says("panel-hang", hung(Hang::turned_left, {one_pole("L1", 1), two_pole("L3", 3)})).empty());
    REQUIRE(says("panel-hang", hung(Hang::turned_left, {one_pole("N")})).empty()); // no space yet
    auto dc = hung(Hang::turned_left, {one_pole("R2", 2)});
    dc.panels[0].supply->kind = SupplyKind::dc_12;
    REQUIRE(says("panel-hang", dc).empty());
    REQUIRE(says("panel-hang", hung(Hang::turned_left, {one_pole("R2", 2).old()})) == "warning R2");
    REQUIRE(says("panel-hang", hung(Hang::turned_left, {one_pole("R2").space(2, 'a')})) == "warning R2");
}

TEST_CASE("panel-hang: numbering and the corner of space 1 decide which column lies above", "[check][panel]") {
    typed::Panel p;
    p.spaces = 6;
    p.hang = Hang::turned_left; // the right column lies above
    auto const [first, numbering, above, below] =
        GENERATE(table<Corner, Numbering, std::vector<int>, std::vector<int>>({
            {Corner::top_left, Numbering::across, {2, 4, 6}, {1, 3, 5}},
            {Corner::bottom_left, Numbering::across, {2, 4, 6}, {1, 3, 5}},
            {Corner::top_right, Numbering::across, {1, 3, 5}, {2, 4, 6}},
            {Corner::bottom_right, Numbering::down, {1, 2, 3}, {4, 5, 6}},
            {Corner::top_left, Numbering::down, {4, 5, 6}, {1, 2, 3}},
        }));
    p.first = first;
    p.numbering = numbering;
    for (int const s : above) REQUIRE(on_is(p, s) == OnIs::down);
    for (int const s : below) REQUIRE(on_is(p, s) == OnIs::up);
    p.hang = Hang::turned_right;
    for (int const s : above) REQUIRE(on_is(p, s) == OnIs::up);
    for (int const s : below) REQUIRE(on_is(p, s) == OnIs::down);
    p.hang = Hang::upside_down;
    for (int s = 1; s <= 6; ++s) REQUIRE(on_is(p, s) == OnIs::sideways);
}
