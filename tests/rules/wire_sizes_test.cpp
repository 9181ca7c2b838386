// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "wire_jobs.h"

using namespace legwork;
using namespace legwork::testing;

TEST_CASE("wire-breaker-size: the steps that breakers are made in", "[check][wire]") {
    // Source: NEC Table 240.6(A): 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200; CE Table 13 the same,
    // from memory.
    auto const edition = GENERATE(from_range(editions()));
    CAPTURE(edition);
    for (int const good : {15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 500})
        REQUIRE(verdict("wire-breaker-size", circuit("4/3", Amps{good * 1000}, 2), edition) == '-');
    for (int const odd : {12, 16, 55, 65, 75, 120, 399})
        REQUIRE(verdict("wire-breaker-size", circuit("4/3", Amps{odd * 1000}, 2), edition) == 'W');
    auto old = circuit("14/2", 16_A);
    old.existing = true;
    REQUIRE(verdict("wire-breaker-size", old, edition) == 'W');
    old.breaker.reset();
    REQUIRE(verdict("wire-breaker-size", old, edition) == '-');
}

TEST_CASE("wire-breaker-size: 10 A came with one edition", "[check][wire]") {
    // Source: NEC 2023 Table 240.6(A); before it 10 A was the size of a fuse only.
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        REQUIRE(verdict("wire-breaker-size", circuit("14/2", 10_A), edition) == (edition == "NEC 2023" ? '-' : 'W'));
    }
    auto const found = of("wire-breaker-size", job_of({circuit("14/2", 10_A)}), "NEC 2020");
    REQUIRE(found[0].message == "The breaker of K1 is given as 10 A, which is no standard size; the smallest is 15 A.");
    REQUIRE(found[0].reference.section == "240.6(A)");
}

TEST_CASE("wire-breaker-size: a pair's breaker once, a main, no fuses", "[check][wire]") {
    auto first = circuit("12/3", 18_A), second = circuit("12/3", 18_A);
    second.mark = "K2";
    first.multiwire = second.multiwire = "K";
    auto job = job_of({first, second});
    auto const found = of("wire-breaker-size", job, "NEC 2023");
    REQUIRE(found.size() == 1);
    REQUIRE(found[0].where.circuits == std::vector<std::string>{"K1", "K2"});
    REQUIRE_THAT(found[0].message, Contains("15 A and 20 A"));
    job.circuits[1].breaker = 20_A; // only one is odd
    REQUIRE(of("wire-breaker-size", job, "NEC 2023")[0].where.circuits == std::vector<std::string>{"K1"});
    auto main = job_of({});
    main.panels[0].main = 65_A;
    REQUIRE(verdict("wire-breaker-size", main, "CE 2021") == 'W');
    main.panels[0].main = 60_A;
    REQUIRE(verdict("wire-breaker-size", main, "CE 2021") == '-');
    REQUIRE(verdict("wire-breaker-size", job_of({circuit("14/2", 3_A)}, SupplyKind::dc_12), "NEC 2023") == '-');
}

TEST_CASE("wire-outlet-count: twelve outlets on 15 A where the load is not known, sixteen on 20 A", "[check][wire]") {
    // Source: CE 8-304(1)(a): 12; since 2021 8-304(1): 12 on 15 A, 16 on 20 A. NEC has no number for dwellings.
    auto const edition = GENERATE(from_range(editions()));
    CAPTURE(edition);
    char const many = edition.starts_with("CE") ? 'W' : '-';
    auto c = circuit("14/2", 15_A);
    c.outlet_count = 12;
    REQUIRE(verdict("wire-outlet-count", c, edition) == '-');
    c.outlet_count = 13;
    REQUIRE(verdict("wire-outlet-count", c, edition) == many);
    c.existing = true;
    REQUIRE(verdict("wire-outlet-count", c, edition) == many);
    c.load = 900_VA; // known
    REQUIRE(verdict("wire-outlet-count", c, edition) == '-');
    c.load.reset();
    c.measured = 5_A;
    REQUIRE(verdict("wire-outlet-count", c, edition) == '-');
    c.measured.reset();
    c.breaker = 20_A;
    c.outlet_count = edition == "CE 2018" ? 12 : 16;
    REQUIRE(verdict("wire-outlet-count", c, edition) == '-');
    ++*c.outlet_count;
    REQUIRE(verdict("wire-outlet-count", c, edition) == many);
    c.breaker = 30_A;
    REQUIRE(verdict("wire-outlet-count", c, edition) == '-');
    c.breaker = 15_A;
    c.outlet_count.reset();
    c.outlets.assign(12, "5-15R");
    REQUIRE(verdict("wire-outlet-count", c, edition) == '-');
    c.outlets.push_back("5-15R");
    REQUIRE(verdict("wire-outlet-count", c, edition) == many);
    c.poles = 2;
    REQUIRE(verdict("wire-outlet-count", c, edition) == '-');
}
