// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cite.h"
#include "codebook/code_book.h"
#include "codebook/sections.h"

#include "catch.h"

#include <set>

using namespace legwork;

TEST_CASE("every edition of the job file's list has a book", "[codebook]") {
    REQUIRE(editions() ==
            std::vector<std::string>{"CE 2018", "CE 2021", "CE 2024", "NEC 2017", "NEC 2020", "NEC 2023"});
    for (auto const& edition : editions()) {
        CodeBook const* book = code_book(edition);
        REQUIRE(book);
        REQUIRE(book->edition == edition);
        REQUIRE((book->family == Family::nec) == edition.starts_with("NEC"));
        REQUIRE_FALSE(book->ampacities.empty());
        REQUIRE_FALSE(book->small_wires.empty());
        REQUIRE_FALSE(book->receptacles.empty());
        REQUIRE(book->dwelling_feeders.empty() == section_of(*book, "wire-breaker-fits/dwelling-feeder").is_silent());
    }
    REQUIRE(code_book("NEC 2014") == nullptr);
    REQUIRE(code_book("") == nullptr);
}

TEST_CASE("ampacity grows with size and temperature, and aluminium carries less", "[codebook]") {
    for (auto const& edition : editions()) {
        CodeBook const& book = *code_book(edition);
        AmpacityRow before{};
        for (AmpacityRow const& r : book.ampacities) {
            CAPTURE(edition, name(r.gauge));
            REQUIRE(r.copper_60 < r.copper_75);
            REQUIRE(r.copper_75 < r.copper_90);
            REQUIRE(r.copper_60 > before.copper_60);
            REQUIRE(r.copper_75 > before.copper_75);
            REQUIRE(r.copper_90 > before.copper_90);
            REQUIRE(r.aluminium_60 < r.copper_60);
            REQUIRE(r.aluminium_90 < r.copper_90);
            before = r;
        }
        // A small wire's breaker is never above what the wire carries.
        for (SmallWireRow const& s : book.small_wires) {
            REQUIRE(s.breaker <= *ampacity(book, s.gauge, s.metal, 60));
            REQUIRE(standard_breaker_at_or_above(book, s.breaker) == s.breaker);
        }
    }
}

TEST_CASE("ampacities as published", "[codebook]") {
    // Source: NEC Table 310.16 (2020, 2023), CE Table 2: 2/0 copper 175 A and 4/0 aluminium 180 A at 75 °C, 3/0 copper
    // 200 A at 75 °C, 14 AWG copper 15/20/25 A.
    for (auto const& edition : editions()) {
        CodeBook const& book = *code_book(edition);
        REQUIRE(ampacity(book, Gauge::awg2_0, Metal::copper, 75) == 175_A);
        REQUIRE(ampacity(book, Gauge::awg4_0, Metal::aluminium, 75) == 180_A);
        REQUIRE(ampacity(book, Gauge::awg3_0, Metal::copper, 75) == 200_A);
        REQUIRE(ampacity(book, Gauge::awg14, Metal::copper, 60) == 15_A);
        REQUIRE(ampacity(book, Gauge::awg14, Metal::copper, 90) == 25_A);
        REQUIRE_FALSE(ampacity(book, Gauge::awg14, Metal::aluminium, 60));
        REQUIRE_FALSE(ampacity(book, Gauge::awg18, Metal::copper, 60));
    }
}

TEST_CASE("standard breakers", "[codebook]") {
    // Source: NEC 240.6(A); 10 A is in its table from 2023.
    CodeBook const& book = *code_book("NEC 2020");
    REQUIRE(standard_breaker_at_or_above(book, 55_A) == 60_A);
    REQUIRE(standard_breaker_at_or_above(book, 60_A) == 60_A);
    REQUIRE(standard_breaker_at_or_above(book, 10_A) == 15_A);
    REQUIRE(standard_breaker_at_or_above(*code_book("NEC 2023"), 10_A) == 10_A);
    REQUIRE(standard_breaker_at_or_below(book, 59_A) == 50_A);
    REQUIRE_FALSE(standard_breaker_at_or_below(book, 14_A));
    REQUIRE_FALSE(standard_breaker_at_or_above(book, 401_A));
    for (auto const& edition : editions()) {
        int before = 0;
        for (int const size : code_book(edition)->standard_breakers) {
            REQUIRE(size > before);
            before = size;
        }
    }
}

TEST_CASE("branch demand of one range", "[codebook]") {
    // Sources: NEC Table 220.55: 12 kW 8 kW; 14 kW 8.8 kW (published answer); a 3 kW oven 2.4 kW and an 8 kW range
    // 6.4 kW by columns A and B (published answer; Annex D example D4(b)); 16 kW 9.6 kW by note 1. CE 8-300: 8 kW and
    // 40 % of what is above 12 kW.
    CodeBook const &nec = *code_book("NEC 2017"), &ce = *code_book("CE 2018");
    REQUIRE(range_demand(nec, 12000_VA) == 8000_VA);
    REQUIRE(range_demand(nec, 14000_VA) == 8800_VA);
    REQUIRE(range_demand(nec, 16000_VA) == 9600_VA);
    REQUIRE(range_demand(nec, 12400_VA) == 8000_VA);
    REQUIRE(range_demand(nec, 12600_VA) == 8400_VA);
    REQUIRE(range_demand(nec, 3000_VA) == 2400_VA);
    REQUIRE(range_demand(nec, 8000_VA) == 6400_VA);
    REQUIRE(range_demand(nec, 9000_VA) == 8000_VA);
    REQUIRE(range_demand(ce, 12000_VA) == 8000_VA);
    REQUIRE(range_demand(ce, 14000_VA) == 8800_VA);
    REQUIRE(range_demand(ce, 15000_VA) == 9200_VA);
    REQUIRE(range_demand(ce, 7000_VA) == 7000_VA);
}

TEST_CASE("citations: one row a topic, a rule's row before its aspects", "[codebook]") {
    std::set<std::string_view> names;
    for (Topic const& t : topics()) {
        CAPTURE(t.name);
        REQUIRE(names.insert(t.name).second);
        REQUIRE(names.count(t.name.substr(0, t.name.find('/'))) == 1);
        // An edition may be the first of its family to speak; none falls silent again, unless a page shows that it did.
        for (auto const family : {Family::nec, Family::ce}) {
            bool spoke = false;
            for (CodeBook const* book : books_of(family)) {
                auto const& says = section_of(*book, t.name);
                bool const gone = says.source == Source::seen || says.source == Source::noted;
                REQUIRE((says.speaks() || says.is_unread() || !spoke || gone));
                REQUIRE((t.basis != Topic::Basis::custom || says.is_silent()));
                spoke |= says.speaks();
            }
        }
    }
}

TEST_CASE("sections by edition", "[codebook]") {
    // Sources: pages about each edition; NEC 2020 renumbered Table 310.15(B)(16) to 310.16, NEC 2023 moved
    // 210.19(A)(3) to 210.19(C).
    auto const section = [](std::string_view edition, std::string_view topic) {
        auto const r = cite(*code_book(edition), topic);
        REQUIRE(r.edition == edition);
        return r.section;
    };
    REQUIRE(section("NEC 2017", "mw-disconnect") == "210.4(B)");
    REQUIRE(section("NEC 2017", "wire-breaker-fits/large") == "240.4, Table 310.15(B)(16)");
    REQUIRE(section("NEC 2023", "wire-breaker-fits/large") == "240.4, Table 310.16");
    REQUIRE(section("NEC 2023", "wire-load-fits/large-range") == "210.19(C)");
    REQUIRE(section("CE 2024", "mw-disconnect") == "14-010(b)");
    REQUIRE(section("CE 2021", "mw-grouping").empty());
    REQUIRE(text(cite(*code_book("NEC 2020"), "dir-vague")) == "NEC 2020 408.4(A)");
    REQUIRE(text(cite(*code_book("CE 2024"), "mw-unequal")) == "common practice");
    REQUIRE(cite(*code_book("CE 2018"), "tape-white-as-hot").source == Source::memory);
    REQUIRE(cite(*code_book("CE 2024"), "tape-white-as-hot").source == Source::noted);
    REQUIRE(cite(*code_book("NEC 2023"), "tape-white-as-hot").source == Source::seen);
}

TEST_CASE("re-marking by family", "[codebook]") {
    // Sources: NEC 200.6, 200.7, 250.119; CE 4-024 to 4-032.
    for (auto const& edition : editions()) {
        auto const& table = code_book(edition)->remarking;
        bool const nec = edition.starts_with("NEC");
        REQUIRE(table.white_as_hot_in_cable.as == Remarking::allowed);
        REQUIRE(table.white_as_hot_in_conduit.as == Remarking::never);
        REQUIRE(table.green.as == Remarking::never);
        REQUIRE(table.small_as_neutral_in_cable.as ==
                (edition == std::string_view("NEC 2017") ? Remarking::never : Remarking::disputed));
        REQUIRE(table.large_from == (nec ? Gauge::awg4 : Gauge::awg1));
        for (auto const& row :
             {table.white_as_hot_in_cable, table.white_as_hot_in_conduit, table.white_in_switch_loop,
              table.small_as_neutral_in_cable, table.small_as_neutral_in_conduit, table.large_as_neutral, table.green})
            REQUIRE(has_citation(row.topic));
    }
}
