// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The tables of the code book as text.
#include "codebook/tables/tables.h"

#include "catch.h"

#include <map>
#include <set>

using namespace legwork;

namespace {
using Cells = std::vector<std::string>;

// The rows that hold for this edition.
std::vector<TableRow> rows(std::string_view table, std::string const& edition) {
    for (TablePart const& part : code_table(table)->parts())
        if (part.editions.empty() || std::ranges::count(part.editions, edition) > 0) return part.rows;
    return {};
}
TableRow row(std::string_view table, std::string const& edition, std::string const& first) {
    for (auto const& r : rows(table, edition))
        if (r.cells.front() == first) return r;
    return {};
}
} // namespace

TEST_CASE("tables: each is whole, and holds for every edition once", "[codebook][tables]") {
    std::set<std::string_view> names;
    for (CodeTable const& table : code_tables()) {
        CAPTURE(table.name);
        REQUIRE(names.insert(table.name).second);
        REQUIRE(code_table(table.name) == &table);
        REQUIRE(table.title.size() > 10);
        std::map<std::string, int> times;
        auto const parts = table.parts();
        REQUIRE_FALSE(parts.empty());
        for (TablePart const& part : parts) {
            REQUIRE_FALSE(part.rows.empty());
            for (TableRow const& r : part.rows) {
                CAPTURE(r.cells);
                REQUIRE(r.cells.size() == part.heads.size());
                REQUIRE_FALSE(r.cells.front().empty());
            }
            for (auto const& edition : part.editions) ++times[edition];
        }
        if (parts.size() == 1 && parts[0].editions.empty()) continue; // whatever the edition
        for (auto const& edition : editions()) REQUIRE(times[edition] == 1);
    }
    REQUIRE(code_table("no-such-table") == nullptr);
}

TEST_CASE("tables: as published", "[codebook][tables]") {
    // Source: NEC Table 310.16 (2020, 2023), CE Tables 2 and 4: 12 AWG copper 20/25/30, aluminium 15/20/25; 2/0 copper
    // 175 A and 4/0 aluminium 180 A at 75 °C.
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        REQUIRE(row("ampacity", edition, "12").cells == Cells{"12", "20", "25", "30", "15", "20", "25"});
        REQUIRE(row("ampacity", edition, "2/0").cells.at(2) == "175");
        REQUIRE(row("ampacity", edition, "4/0").cells.at(5) == "180");
    }
    // Source: NEC 240.6(A); 10 A stands in the table of 2023 only.
    REQUIRE(rows("breakers", "NEC 2020")[0].cells[0].starts_with("15, 20, 25, 30, 35, 40, 45, 50, 60"));
    REQUIRE(rows("breakers", "NEC 2023")[0].cells[0].starts_with("10, 15, "));
    // Source: NEC Chapter 9 Table 8, 12 AWG solid 1.93 ohm per 1000 ft; ASTM B258, 12 AWG 0.0808 in, 6530 circular
    // mils.
    REQUIRE(row("resistance", "NEC 2023", "12").cells.at(5) == "1.93");
    REQUIRE(row("wire", "NEC 2023", "12").cells == Cells{"12", "0.0808", "2.053", "3.31", "6530"});
    // Source: NEC Table 220.55, column C, and 220.54; CE 8-200(1)(a)(iv).
    REQUIRE(row("cooking-load", "NEC 2020", "3").cells == Cells{"3", "70 %", "55 %", "14000 VA"});
    REQUIRE(row("dryer-load", "NEC 2023", "10").cells.at(1) == "50 %");
    REQUIRE(row("cooking-load", "CE 2021", "no such table").cells.size() == 4);
    REQUIRE(row("service-load", "CE 2018", "standard: one range, what is above").cells.at(1) == "40 %");
    REQUIRE(row("service-load", "NEC 2017", "optional: electric heat").cells.at(1) == "65 %");
    // Source: NEMA WD 6.
    REQUIRE(row("receptacles", "CE 2024", "14-30R").cells ==
            Cells{"14-30R", "250 V", "30 A", "2", "yes", "yes", "-", "yes"});
}

TEST_CASE("tables: a row from memory says so", "[codebook][tables]") {
    REQUIRE(rows("breakers", "CE 2018")[0].source == Source::memory);
    REQUIRE(rows("breakers", "CE 2024")[0].source == Source::noted);
    REQUIRE(rows("breakers", "NEC 2020")[0].source == Source::seen);
    REQUIRE(row("receptacle-ratings", "NEC 2023", "20 A").source == Source::seen);
    REQUIRE(row("dryer-load", "NEC 2020", "5").source == Source::memory);
    REQUIRE(row("dryer-load", "NEC 2023", "5").source == Source::seen);
    REQUIRE(row("dwelling-feeders", "CE 2018", "200 A").source == Source::memory);
    REQUIRE(row("dwelling-feeders", "CE 2024", "any").source == Source::seen); // that there are none
}

TEST_CASE("tables: sources tell by edition how each rule was come by", "[codebook][tables]") {
    auto const parts = code_table("sources")->parts();
    REQUIRE(parts.size() == 2);
    REQUIRE(parts[0].heads ==
            Cells{"rule, or one of its aspects", "NEC 2017", "NEC 2020", "NEC 2023", "CE 2018", "CE 2021", "CE 2024"});
    auto const cells = [&](std::string_view topic) {
        auto const at = std::ranges::find(parts[0].rows, topic, [](TableRow const& r) { return r.cells.at(0); });
        REQUIRE(at != parts[0].rows.end());
        return at->cells;
    };
    // What was seen of one edition is seen of that one.
    auto const motor = cells("wire-breaker-fits/motor");
    REQUIRE(Cells(motor.begin() + 1, motor.begin() + 4) == Cells{"seen", "seen", "noted"});
    REQUIRE(cells("wire-outlet/no-ground").at(1) == "memory; section memory");
    REQUIRE(cells("panel-backfeed").at(1) == "seen");
    REQUIRE(cells("gfci-needed/garage").at(4) == "silent");
    REQUIRE(cells("mw-unequal").at(2) == "practice");
    // The sums are of all topics, once each.
    for (std::size_t column = 1; column < 7; ++column) {
        std::size_t sum = 0;
        for (std::size_t row = 0; row < 6; ++row) sum += std::stoul(parts[1].rows.at(row).cells.at(column));
        REQUIRE(sum == parts[0].rows.size());
    }
}

TEST_CASE("tables: editions that say the same stand together", "[codebook][tables]") {
    REQUIRE(code_table("ampacity")->parts().size() == 1);
    auto const parts = code_table("breakers")->parts();
    REQUIRE(parts.size() == 4); // of CE 2018 from memory
    REQUIRE(parts[0].editions == Cells{"NEC 2017", "NEC 2020"});
    REQUIRE(short_editions(parts[0].editions) == "NEC 2017, 2020");
    REQUIRE(short_editions({"NEC 2023", "CE 2018", "CE 2024"}) == "NEC 2023, CE 2018, 2024");
    REQUIRE(code_table("dwelling-feeders")->parts()[0].sections == "NEC 2017: 310.15(B)(7); NEC 2020, 2023: 310.12");
}
