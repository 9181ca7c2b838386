// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the codes ask of a panel. Sources: CE 8-108 as read in Quebec's print of the 2015 text,
// taken to stand in 2018; since 2021 four spare spaces, as three persons' notes tell it; NEC 705.12 as trade
// pages tell it; signs by edition: see sections.h of each.
#include "codebook/backfeed.h"
#include "codebook/cite.h"
#include "codebook/positions.h"
#include "codebook/signs.h"

#include "catch.h"

#include <set>
#include <string>

using namespace legwork;

TEST_CASE("positions of a dwelling: rising with the service, asked under CE 2018, later a number of spares",
          "[codebook]") {
    for (auto const& edition : editions()) {
        CodeBook const& book = *code_book(edition);
        PositionsTable const* table = dwelling_positions(book);
        REQUIRE((table != nullptr) == (book.family == Family::ce));
        if (!table) continue;
        if (edition != "CE 2018") {
            REQUIRE((table->rows.empty() && table->left_free == 4 && table->left_free_in_flat == 2));
            REQUIRE((table->room_for_two_pole && table->source == Source::seen));
            continue;
        }
        REQUIRE(table->source == Source::memory);
        REQUIRE(positions_row(*table, std::nullopt).positions == 16);
        REQUIRE(positions_row(*table, 60_A).positions == 16);
        REQUIRE(positions_row(*table, 61_A).positions == 24);
        REQUIRE(positions_row(*table, 125_A).with_central_heating == 24);
        REQUIRE(positions_row(*table, 400_A).with_central_heating == 30);
        REQUIRE(table->left_free == 2);
        int before = 0;
        for (PositionsRow const& r : table->rows) {
            REQUIRE(r.positions > before);
            REQUIRE(r.with_central_heating <= r.positions);
            before = r.positions;
        }
    }
}

TEST_CASE("what a bus takes beside its main", "[codebook]") {
    // Worked: a bus of 200 A with a main of 200 A leaves 40 A, an output of 32 A.
    BackfeedTable const& nec = backfeed(*code_book("NEC 2020"));
    REQUIRE(percent(200_A, nec.bus_percent.value) - 200_A == percent(32_A, nec.output_percent->value));
    REQUIRE(nec.bus_percent.source == Source::seen);
    BackfeedTable const& ce = backfeed(*code_book("CE 2021"));
    REQUIRE(ce.bus_percent.source == Source::memory);
    REQUIRE(backfeed(*code_book("CE 2024")).bus_percent.source == Source::seen); // three pages agree
    REQUIRE_FALSE(ce.output_percent);
    REQUIRE(ce.dwelling_bus_percent.value >= ce.bus_percent.value);
}

TEST_CASE("signs: one row an id, sections by edition", "[codebook]") {
    std::set<std::string_view> ids;
    for (Sign const& s : signs()) REQUIRE(ids.insert(s.id).second);
    auto const asks = [](std::string_view edition, std::string const& id) {
        return !cite(*code_book(edition), "panel-sign/" + id).section.empty();
    };
    REQUIRE_FALSE(asks("NEC 2017", "emergency-disconnect"));
    REQUIRE(asks("NEC 2020", "emergency-disconnect"));
    REQUIRE_FALSE(asks("CE 2021", "calculated-load"));
    REQUIRE(asks("CE 2024", "calculated-load"));
    REQUIRE_FALSE(asks("CE 2024", "fed-from"));
    REQUIRE_FALSE(asks("NEC 2023", "largest-main"));
}
