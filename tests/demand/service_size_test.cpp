// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// From VA to amperes, to a standard size and its wire. Standard sizes: NEC 240.6(A), CE Table 13. Wires: NEC Table
// 310.16 (2017: 310.15(B)(16)) and Table 310.12; CE Tables 2, 4 and 39.
#include "building/resolve.h"
#include "demand/service_size.h"
#include "in_english.h"
#include "load_job.h"
#include "words/say.h"

#include "catch.h"

using namespace made;

namespace {
// A service of so many VA, said and not reckoned.
struct Said {
    Building building;
    ServiceFacts facts{240_V};
    LoadCalculation load{};

    Said(std::string const& code, std::int64_t va, std::string const& area = "100 m²")
        : building(resolve(home(code, "[dwelling]\narea = \"" + area + "\"\n"))) {
        load.total_va = va;
    }
    LoadQuestion question() const { return {building, *code_book(building.code), building.panels.front(), facts}; }
    ServiceSize size() const { return service_size(question(), load); }
};

ServiceSize of_part(std::string const& code, std::int64_t va) { return Said(code, va).size(); }

ServiceSize of_dwelling(std::string const& code, std::int64_t va, std::string const& area = "100 m²") {
    Said s(code, va, area);
    s.load.whole_dwelling = true;
    return s.size();
}
} // namespace

TEST_CASE("the smallest standard size at or above the load", "[demand][size]") {
    // 240.6(A): 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400.
    for (auto const& [amps, size] : {std::pair{1, 15},
                                     {15, 15},
                                     {16, 20},
                                     {31, 35},
                                     {50, 50},
                                     {51, 60},
                                     {100, 100},
                                     {101, 110},
                                     {126, 150},
                                     {176, 200},
                                     {201, 225},
                                     {351, 400}}) {
        CAPTURE(amps);
        CHECK(of_part("NEC 2023", amps * 240).service == Amps{size * 1000});
    }
    CHECK(of_part("NEC 2023", 0).service == 15_A); // none is smaller
    CHECK(of_part("CE 2024", 101 * 240).service == 110_A);
}

TEST_CASE("NEC 220.5(B): under half an ampere is left out, CE leaves nothing out", "[demand][size]") {
    // 24119 / 240 = 100.496 A; 24120 / 240 = 100.5 A.
    CHECK(of_part("NEC 2023", 24'119).service == 100_A);
    CHECK(of_part("NEC 2023", 24'119).to_carry == 100_A);
    CHECK(of_part("NEC 2023", 24'120).service == 110_A);
    CHECK(of_part("NEC 2023", 24'120).to_carry == 100'500_mA);
    CHECK(of_part("CE 2024", 24'001).service == 110_A);
    CHECK(of_part("CE 2024", 24'000).service == 100_A);
    // Carried by a present 100 A, with nothing left.
    Said s("NEC 2023", 24'119);
    s.facts.rating = 100_A;
    CHECK(s.size().fits);
    CHECK(s.size().left_va == 0);
    CHECK_FALSE(s.size().largest_circuit);
    CHECK(carries(s.question(), 24'119, 100_A));
    CHECK_FALSE(carries(s.question(), 24'120, 100_A));
    Said c("CE 2024", 24'001);
    c.facts.rating = 100_A;
    CHECK_FALSE(c.size().fits);
    CHECK(c.size().left_va == -1);
}

TEST_CASE("least sizes of a dwelling's service", "[demand][size][floor]") {
    // NEC 230.79(C): the disconnect of a one-family dwelling 100 A, whatever the floor area.
    for (auto const* code : {"NEC 2017", "NEC 2020", "NEC 2023"})
        for (auto const* area : {"20 m²", "200 m²"}) {
            CHECK(of_dwelling(code, 5000, area).floor == 100_A);
            CHECK(of_dwelling(code, 5000, area).service == 100_A);
            CHECK_FALSE(of_dwelling(code, 5000, area).floor_is_load);
            CHECK(of_dwelling(code, 5000, area).floor_reference.section == "230.79(C)");
        }
    // CE 8-200(1)(b): 100 A from 80 m2 on without the basement, 60 A below.
    for (auto const* code : {"CE 2018", "CE 2021", "CE 2024"}) {
        CHECK(of_dwelling(code, 5000, "80 m²").floor == 100_A);
        CHECK(of_dwelling(code, 5000, "79.99 m²").floor == 60_A);
        CHECK(of_dwelling(code, 5000, "79.99 m²").service == 60_A);
        CHECK(of_dwelling(code, 15'000, "79.99 m²").service == 70_A); // 62.5 A
        CHECK(of_dwelling(code, 5000, "861.1 ft²").floor == 60_A);    // 79.9988 m2
        CHECK(of_dwelling(code, 5000, "861.2 ft²").floor == 100_A);   // 80.008 m2
        CHECK(of_dwelling(code, 5000, "80 m²").floor_is_load);
        CHECK(of_dwelling(code, 5000, "80 m²").floor_reference.section == "8-200(1)(b)");
    }
    // A basement counts for the load, not for this.
    auto const job = home("CE 2024", "[dwelling]\narea = \"70 m²\"\nbasement = \"70 m²\"\n");
    CHECK(service_load(job).load->total_va == 6000); // 70 + 52.5 m2: one block more
    CHECK(service_load(job).size.floor == 60_A);
    CHECK_FALSE(of_part("CE 2024", 5000).floor);
}

TEST_CASE("the neutral: what is above 200 A at 70 %, none of it on a wye", "[demand][size][neutral]") {
    // NEC 220.61(B)(2). 60000 / 240 = 250 A: 200 + 50 x 70 % = 235 A.
    Said s("NEC 2023", 80'000);
    s.load.neutral_va = 60'000;
    CHECK(s.size().neutral_amps == 235_A);
    CHECK(in_english(s.size().neutral_words) == "60000 VA ÷ 240 V = 250 A; 200 A + (250 A − 200 A) × 70 % = 235 A");
    s.load.neutral_va = 48'000;
    CHECK(s.size().neutral_amps == 200_A);
    CHECK(in_english(s.size().neutral_words) == "48000 VA ÷ 240 V = 200 A");
    // Two phases of a wye: as much as a hot carries, so 60000 / 2 / 120, and no part less.
    s.facts = {208_V, true, true};
    s.load.neutral_va = 60'000;
    CHECK(s.size().neutral_amps == 250_A);
    // One hot: all of it at 120 V.
    s.facts = {120_V, false, false};
    CHECK(s.size().neutral_amps == 500_A);
    // None where the method gives none.
    s.load.neutral_va.reset();
    CHECK_FALSE(s.size().neutral_amps);
}

TEST_CASE("a wye's neutral takes all of range and dryer", "[demand][size][neutral]") {
    // 8000 and 5000 at 70 % on 120/240 V: 4680 + 5600 + 3500; in full on 120/208 V, NEC 220.61(C)(1), of 2023 by one
    // page.
    auto const rest =
        "[dwelling]\narea = \"100 m²\"\n" + circuit("RG", "range", "12 kW", 2) + circuit("DR", "dryer", "5 kW", 2);
    CHECK(service_load(home("NEC 2023", rest)).load->neutral_va == 13'780);
    auto const wye = service_load(home("NEC 2023", rest, "supply = \"120/208\""));
    CHECK(wye.load->neutral_va == 17'680);
    CHECK(wye.facts.volts == 208_V);
    CHECK(step(wye.load->neutral, "Cooking").reference.source == Source::noted);
}

TEST_CASE("wires of a service", "[demand][size][wire]") {
    auto const wire = [](ServiceSize const& s, std::size_t i = 0) {
        REQUIRE(s.wires.size() > i);
        return s.wires[i];
    };
    // A whole dwelling: Table 310.12, 200 A on 2/0 copper or 4/0 aluminium, 100 A on 4 or 2.
    for (auto const* code : {"NEC 2017", "NEC 2020", "NEC 2023"}) {
        auto const w = wire(of_dwelling(code, 190 * 240));
        CHECK(w.copper == Gauge::awg2_0);
        CHECK(w.aluminium == Gauge::awg4_0);
        CHECK(w.celsius == 0);
        CHECK(w.reference.section == (std::string(code) == "NEC 2017" ? "310.15(B)(7)" : "310.12"));
        CHECK(of_dwelling(code, 190 * 240).wires.size() == 1);
        CHECK(wire(of_dwelling(code, 1000)).copper == Gauge::awg4);
    }
    CHECK(wire(of_dwelling("CE 2018", 190 * 240)).copper == Gauge::awg2_0);
    CHECK(wire(of_dwelling("CE 2018", 190 * 240)).aluminium == Gauge::awg4_0);
    // CE 2021 and 2024 have no Table 39: Table 2, 75 °C, 200 A on 3/0 copper; 4/0 aluminium carries 180 A.
    for (auto const* code : {"CE 2021", "CE 2024"}) {
        auto const w = wire(of_dwelling(code, 190 * 240));
        CHECK(w.copper == Gauge::awg3_0);
        CHECK_FALSE(w.aluminium);
        CHECK(w.reference.section == "Tables 2 and 4");
    }
    // Any other: by the terminals, 60 °C usual up to 100 A and 75 °C where marked. 100 A: 1 copper (110) or 1/0
    // aluminium (100) at 60 °C, 3 copper (100) or 1 aluminium (100) at 75 °C.
    auto const hundred = of_part("NEC 2023", 100 * 240);
    CHECK(hundred.wires.size() == 2);
    CHECK(wire(hundred, 0).celsius == 60);
    CHECK(wire(hundred, 0).copper == Gauge::awg1);
    CHECK(wire(hundred, 0).aluminium == Gauge::awg1_0);
    CHECK(wire(hundred, 1).celsius == 75);
    CHECK(wire(hundred, 1).copper == Gauge::awg3);
    CHECK(wire(hundred, 1).aluminium == Gauge::awg1);
    // Above: 75 °C alone. 110 A: 2 copper (115), 1/0 aluminium (120).
    auto const more = of_part("NEC 2023", 110 * 240);
    CHECK(more.wires.size() == 1);
    CHECK(wire(more).celsius == 75);
    CHECK(wire(more).copper == Gauge::awg2);
    CHECK(wire(more).aluminium == Gauge::awg1_0);
    // Small wires have their own limits: 15 A on 14 AWG, 20 A on 12 AWG whatever the column says.
    CHECK(wire(of_part("NEC 2023", 15 * 240)).copper == Gauge::awg14);
    CHECK(wire(of_part("NEC 2023", 20 * 240), 1).copper == Gauge::awg12);
    // Larger than our tables: 400 A is above 4/0 of either metal (230 and 180 A at 75 °C).
    auto const large = of_dwelling("NEC 2023", 400 * 240);
    CHECK_FALSE(wire(large).copper);
    CHECK_FALSE(wire(large).aluminium);
    CHECK(wire(large).celsius == 75);
    // 230 A of copper at the most: 225 A on 4/0, aluminium larger.
    CHECK(wire(of_part("NEC 2023", 225 * 240)).copper == Gauge::awg4_0);
    CHECK_FALSE(wire(of_part("NEC 2023", 225 * 240)).aluminium);
}

TEST_CASE("no size where something is unknown, or none is large enough", "[demand][size]") {
    Said s("NEC 2023", 10'000);
    s.facts.rating = 100_A;
    s.load.unknown = {say("load/load-of", std::string("EV"))};
    auto const size = s.size();
    CHECK_FALSE(size.service);
    CHECK(size.wires.empty());
    CHECK_FALSE(size.left_va);
    CHECK_FALSE(size.largest_circuit);
    CHECK(size.fits);
    s.load.total_va = 30'000; // too much already
    CHECK_FALSE(s.size().fits);
    auto const huge = of_part("NEC 2023", std::int64_t{100'000} * 240);
    CHECK_FALSE(huge.service);
    CHECK(huge.wires.empty());
}

TEST_CASE("what is left, and the largest circuit that still fits", "[demand][size][left]") {
    Said s("NEC 2020", 14'400);
    s.facts.rating = 100_A;
    // 24000 - 14400 = 9600 VA, 40 A for hours: a 50 A breaker.
    CHECK(s.size().left_va == 9600);
    CHECK(s.size().largest_circuit == 50_A);
    s.load.total_va = 14'401; // 39.99 A: 80 % of 45 A
    CHECK(s.size().largest_circuit == 45_A);
    s.load.total_va = 21'121; // 2879 VA, 11.99 A: less than 80 % of the smallest of 2020, 15 A
    CHECK_FALSE(s.size().largest_circuit);
    s.load.total_va = 21'120; // 2880 VA, 12 A
    CHECK(s.size().largest_circuit == 15_A);
    s.load.total_va = 25'000;
    CHECK(s.size().left_va == -1000);
    CHECK_FALSE(s.size().fits);
    CHECK_FALSE(s.size().largest_circuit);
}

TEST_CASE("the heavier leg decides where one-pole loads stand unevenly", "[demand][size][lines]") {
    // 12000 VA of which 2400 stand on A and 1200 on B: (4200 + 2400) / 120 = 55 A, (4200 + 1200) / 120 = 45 A.
    Said s("NEC 2023", 12'000);
    s.facts.legs = {{"K1", Leg::a}, {"K2", Leg::b}};
    s.facts.rating = 60_A;
    s.load.one_line = {{"K1", 2400}, {"K2", 1200}};
    auto const size = s.size();
    REQUIRE(size.lines);
    CHECK(size.lines->a == 55_A);
    CHECK(size.lines->b == 45_A);
    CHECK(size.amps == 50_A);
    CHECK(size.to_carry == 55_A);
    CHECK(size.service == 60_A);
    // Of 60 A that leg has 5 left: 1200 VA on both hots.
    CHECK(size.left_va == 1200);
    CHECK(in_english(size.lines->arithmetic) ==
          "half of what both carry and what this leg carries alone: (4200 + 2400) VA ÷ 120 V = 55 A");
    // Even, without a place, or on one hot only: shared.
    s.load.one_line = {{"K1", 2400}, {"K2", 2400}};
    CHECK_FALSE(s.size().lines);
    s.load.one_line = {{"K7", 2400}};
    CHECK_FALSE(s.size().lines);
    s.facts.three_wire = false;
    s.load.one_line = {{"K1", 2400}};
    CHECK_FALSE(s.size().lines);
}

TEST_CASE("the heavier leg of a wye: at 208 V what is shared, at 120 V what stands alone", "[demand][size][lines]") {
    // 4160 / 208 + 4800 / 120 = 60 A, where the total of 8960 VA at 208 V is 43.08 A.
    Said s("NEC 2023", 8960);
    s.facts = {208_V, true, true, 60_A, say("load/the-main"), {{"K1", Leg::b}}};
    s.load.one_line = {{"K1", 4800}};
    auto const size = s.size();
    REQUIRE(size.lines);
    CHECK(size.lines->b == 60_A);
    CHECK(size.lines->a == 20_A);
    CHECK(size.to_carry == 60_A);
    CHECK(size.left_va == 0);
    CHECK(in_english(size.lines->arithmetic) ==
          "what both carry and what this leg carries alone: 4160 VA ÷ 208 V + 4800 VA ÷ 120 V = 60 A");
    // Even ones are less than their sum at 208 V: that stands.
    s.facts.legs = {{"K1", Leg::a}, {"K2", Leg::b}};
    s.load.one_line = {{"K1", 2400}, {"K2", 2400}};
    CHECK_FALSE(s.size().lines);
}

TEST_CASE("a leg may be heavier while the other of heating and cooling runs", "[demand][size][lines]") {
    // 990 + 4500 = 5490: 3000 + 2490 x 35 % = 3872. Heat 5000 of both hots; two coolers of 1440 on leg A, left out, the
    // largest motor 360. Winter: (3872 + 5000) / 2 + 360 = 4796, 39.97 A. Summer: 3872 / 2 + 2880 + 360 = 5176, 43.13
    // A.
    auto const p = service_load(home("NEC 2023", "[dwelling]\narea = \"30 m²\"\n" +
                                                     circuit("HT", "heating", "5 kW", 2, "space = 9\n") +
                                                     circuit("C1", "air conditioner", "1440 VA", 1, "space = 1\n") +
                                                     circuit("C2", "air conditioner", "1440 VA", 1, "space = 2\n")),
                                LoadMethod::standard);
    CHECK(p.load->total_va == 3872 + 5000 + 360);
    REQUIRE(p.load->other_season);
    CHECK(p.load->other_season->total_va == 3872 + 2880 + 360);
    REQUIRE(p.size.lines);
    CHECK(p.size.lines->other_season);
    CHECK(p.size.lines->a == 43'133_mA);
    CHECK(p.size.to_carry == 43_A);
    // The neutral takes what the coolers return, though the heat counts for the hots.
    CHECK(p.load->neutral_va == 3872 + 2880 + 360);
}
