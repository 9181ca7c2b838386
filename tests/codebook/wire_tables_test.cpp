// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the codes ask of runs, outlets and supplies. Sources: NEC informational notes of 210.19 and 215.2 and CE 8-102
// as trade pages and an inspection authority's bulletin tell them; CE 8-304(1)(a) as a trade quiz tells it, 20 A since
// 2021 as a page on what changed and two persons' notes do; NEC 225.30.
#include "codebook/drop_limits.h"
#include "codebook/outbuilding.h"
#include "codebook/outlet_count.h"

#include "catch.h"

using namespace legwork;

TEST_CASE("voltage drop: 3 % and 5 %, advised by one family and demanded by the other", "[codebook]") {
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        CodeBook const& book = *code_book(edition);
        DropLimits const& limits = drop_limits(book);
        bool const ce = book.family == Family::ce;
        REQUIRE(limits.part_percent.value == 3);
        REQUIRE(limits.total_percent.value == 5);
        REQUIRE(limits.unknown_percent.value == 80);
        REQUIRE(limits.demanded == ce);
        REQUIRE(limits.dwelling_lengths.empty() != ce);
        REQUIRE((outlet_count(book, 15_A) != nullptr) == ce);
        REQUIRE_FALSE(outlet_count(book, 30_A));
        REQUIRE(outbuilding_supplies(book).one_only != ce);
    }
    for (auto const edition : {"CE 2018", "CE 2021", "CE 2024"}) {
        REQUIRE(outlet_count(*code_book(edition), 15_A)->most == 12);
        REQUIRE(outlet_count(*code_book(edition), 20_A)->most == (edition == std::string_view("CE 2018") ? 12 : 16));
    }
}

TEST_CASE("supplies of an outbuilding: an exception is seen of the edition it was seen of", "[codebook]") {
    // Source: texts of NEC 225.30: (D) of 2017, (B) and (E) of 2020, (E) of 2023; (B) of 2023 was not seen.
    for (auto const edition : {"NEC 2017", "NEC 2020", "NEC 2023"}) {
        auto const& supplies = outbuilding_supplies(*code_book(edition));
        bool const seen = edition != std::string_view("NEC 2023");
        REQUIRE(supplies.feeders_from_one_panel.source == (seen ? Source::seen : Source::memory));
        REQUIRE(supplies.other_volts.source == Source::seen);
    }
}
