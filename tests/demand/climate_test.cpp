// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Heating and cooling by every method. Figures worked out from the rules, not published, unless said.
#include "in_english.h"
#include "job/job.h"
#include "load_job.h"

#include "catch.h"

using namespace made;
using enum LoadMethod;

namespace {
std::string const kHome = "[dwelling]\narea = \"100 m²\"\n";

// The whole total and that part of it that is not floor, kitchen and laundry.
std::int64_t total(typed::Job const& job, LoadMethod method) {
    auto const p = service_load(job, method);
    INFO(counted(p));
    REQUIRE(p.load);
    return p.load->total_va;
}
// 100 m2 x 33 VA + 3 x 1500 VA = 7800 VA: 3000 + 4800 x 35 % by the standard method, all of it by the optional.
constexpr std::int64_t kStandard = 4680, kOptional = 7800;
constexpr std::int64_t kBasic = 6000; // CE: 5000 W and one block more
} // namespace

TEST_CASE("heating and cooling never run together unless it is said", "[demand][climate]") {
    auto const loads = circuit("HT", "heating", "6 kW", 2) + circuit("AC", "air conditioner", "3 kW", 2);
    auto const said = kHome + "together = [[\"heating\", \"air conditioner\"]]\n";
    // The air conditioner is left out and is the largest motor all the same: 3000 x 25 % = 750.
    CHECK(total(home("NEC 2023", kHome + loads), standard) == kStandard + 6000 + 750);
    CHECK(total(home("NEC 2023", said + loads), standard) == kStandard + 9000 + 750);
    // 6000 x 65 % = 3900, more than 3000; together both.
    CHECK(total(home("NEC 2023", kHome + loads), optional) == kOptional + 3900);
    CHECK(total(home("NEC 2023", said + loads), optional) == kOptional + 6900);
    CHECK(total(home("CE 2024", kHome + loads), standard) == kBasic + 6000);
    CHECK(total(home("CE 2024", said + loads), standard) == kBasic + 9000);
    // By their marks just as well.
    CHECK(total(home("CE 2024", kHome + "together = [[\"AC\", \"HT\"]]\n" + loads), standard) == kBasic + 9000);
    // What is not named stays apart: the floor heating of a bath runs in summer, the other heat does not. The cooling
    // is then added to all of the heat, so that nothing can be missed: 6000 + 500 + 3000.
    auto const bath = loads + circuit("FH", "floor heating", "500 VA");
    auto const floor = kHome + "together = [[\"floor heating\", \"air conditioner\"]]\n";
    CHECK(total(home("CE 2024", floor + bath), standard) == kBasic + 9500);
}

TEST_CASE("the larger of heating and cooling is told with both figures", "[demand][climate]") {
    auto const p = service_load(home("CE 2024", kHome + circuit("HT", "heating", "5 kW", 2) +
                                                    circuit("A1", "air conditioner", "4 kW", 2) +
                                                    circuit("A2", "air conditioner", "2 kW", 2)));
    auto const s = step(p.load->steps, "The larger of heating and cooling");
    CHECK(s.va == 6000);
    CHECK(in_english(s.arithmetic) == "5000 VA or 6000 VA: 6000 VA");
    CHECK(s.circuits == std::vector<std::string>{"A1", "A2"});
    CHECK(text(s.reference) == "CE 2024 8-106(2), (3)");
    // Of a furnace the blower runs with cooling as well: at most 1800 VA (common practice, no source).
    auto const furnace = service_load(home("CE 2024", kHome + circuit("HT", "furnace", "5 kW", 2) +
                                                          circuit("A1", "air conditioner", "4 kW", 2) +
                                                          circuit("A2", "air conditioner", "2 kW", 2)));
    auto const with_blower = step(furnace.load->steps, "The larger of heating and cooling");
    CHECK(in_english(with_blower.arithmetic) == "5000 VA or 7800 VA: 7800 VA");
    CHECK(with_blower.circuits == std::vector<std::string>{"A1", "A2", "HT"});
    CHECK(with_blower.guessed_va == 1'800);
}

TEST_CASE("a motor that heat leaves out is still the largest motor of all", "[demand][climate][motor]") {
    // NEC 220.60, its text seen and its reading argued: 25 % of the left-out air conditioner, not of the smaller pump
    // that runs.
    auto const loads = circuit("HT", "heating", "6 kW", 2) + circuit("AC", "air conditioner", "3 kW", 2) +
                       circuit("WP", "well pump", "1 kW", 2);
    auto const p = service_load(home("NEC 2020", kHome + loads), standard);
    auto const motor = step(p.load->steps, "Largest motor");
    CHECK(in_english(motor.item) == "Largest motor, more: AC, though left out");
    CHECK(motor.va == 750);
    CHECK(in_english(motor.arithmetic) == "3000 VA × 25 % = 750 VA");
    CHECK(motor.argued);
    CHECK(p.load->total_va == kStandard + 1000 + 6000 + 750);
    CHECK_THAT(notes(p), Contains("AC never runs with what is larger") && Contains("NEC 2020 220.60"));
    // A larger motor that runs: its 25 % alone, and nothing that is argued.
    auto const q = service_load(home("NEC 2020", kHome + loads + circuit("W2", "well pump", "4 kW", 2)), standard);
    CHECK(step(q.load->steps, "Largest motor").va == 1000);
    CHECK(step(q.load->steps, "Largest motor").reference.source == Source::seen);
    // CE 8-200 has no such line.
    CHECK(total(home("CE 2024", kHome + loads), standard) == kBasic + 6000);
}

TEST_CASE("220.82(C): heat in several ways is added, each at its share", "[demand][climate][optional]") {
    auto const pump = circuit("HP", "heat pump", "5 kW", 2) + circuit("BH", "backup heat", "10 kW", 2);
    auto const rooms = circuit("B1", "baseboard", "2.5 kW", 2) + circuit("B2", "baseboard", "1.5 kW", 2);
    // One way: 5000 + 10000 x 65 % = 11500, and no word about it.
    auto const one = service_load(home("NEC 2023", kHome + pump), optional);
    CHECK(step(one.load->steps, "Heating").va == 11'500);
    CHECK_THAT(notes(one), !Contains("ways at once"));
    // Two: and 4000 x 65 % = 2600.
    auto const two = service_load(home("NEC 2023", kHome + pump + rooms), optional);
    CHECK(two.load->total_va == kOptional + 11'500 + 2600);
    CHECK_THAT(notes(two), Contains("heats in 2 ways at once") && Contains("14100 VA") &&
                               Contains("NEC 2023 220.82(C)") && Contains("alone would be 11500 VA"));
    // Of four rooms and more 40 %: 1600.
    auto const many = kHome + "thermostats = 4\n";
    CHECK(total(home("NEC 2023", many + pump + rooms), optional) == kOptional + 11'500 + 1600);
    // Three thermostats are fewer than four.
    CHECK(total(home("NEC 2023", kHome + "thermostats = 3\n" + rooms), optional) == kOptional + 2600);
    CHECK(total(home("NEC 2023", many + rooms), optional) == kOptional + 1600);
}

TEST_CASE("220.82(C): a furnace or boiler never takes the 40 % of rooms", "[demand][climate][optional]") {
    auto const many = kHome + "thermostats = 5\n";
    auto const furnace = circuit("FU", "furnace", "10 kW", 2);
    auto const p = service_load(home("NEC 2017", many + furnace), optional);
    CHECK(p.load->total_va == kOptional + 6500);
    CHECK_THAT(notes(p), Contains("A furnace or boiler serves the whole dwelling: it counts at 65 %"));
    // Beside baseboards: 10000 x 65 % + 4000 x 40 % = 8100, never less than the furnace alone.
    auto const q = service_load(home("NEC 2017", many + furnace + circuit("BB", "baseboard", "4 kW", 2)), optional);
    CHECK(q.load->total_va == kOptional + 8100);
    CHECK_THAT(notes(q), Contains("Heat of 5 rooms controlled by themselves counts at 40 %") &&
                             Contains("alone would be 6500 VA"));
}

TEST_CASE("interlocked backup heat takes the place of its heat pump", "[demand][climate][interlock]") {
    auto const pump = circuit("HP", "heat pump", "5 kW", 2);
    auto const backup = [](std::string const& load) {
        return circuit("BH", "backup heat", load, 2, "interlocked = true\n");
    };
    // The larger of 5000 and 10000; the pump left out is the largest motor: 1250.
    auto const p = service_load(home("NEC 2023", kHome + pump + backup("10 kW")), standard);
    CHECK(p.load->total_va == kStandard + 10'000 + 1250);
    CHECK(step(p.load->steps, "HP, interlocked: less than its backup heat, left out").kind == LoadStep::Kind::item);
    CHECK(total(home("NEC 2023", kHome + pump + backup("10 kW")), optional) == kOptional + 6500);
    // 6000 x 65 % = 3900, less than the pump.
    CHECK(total(home("NEC 2023", kHome + pump + backup("6 kW")), optional) == kOptional + 5000);
    CHECK(total(home("CE 2024", kHome + pump + backup("10 kW")), standard) == kBasic + 10'000);
    CHECK(total(home("CE 2024", kHome + pump + backup("4 kW")), standard) == kBasic + 5000);
    // Not interlocked: both.
    CHECK(total(home("CE 2024", kHome + pump + circuit("BH", "backup heat", "10 kW", 2)), standard) == kBasic + 15'000);
    // Of two heat pumps nobody says whose it is: the smaller one stops, the larger runs with it.
    CHECK(total(home("CE 2024", kHome + pump + circuit("H2", "heat pump", "3 kW", 2) + backup("10 kW")), standard) ==
          kBasic + 15'000);
    // Cooling beside it: the pump cools too, 5000 + 4000 against 8000 of heat.
    CHECK(total(home("CE 2024", kHome + pump + backup("8 kW") + circuit("AC", "air conditioner", "4 kW", 2)),
                standard) == kBasic + 9000);
}

TEST_CASE("CE: thermostats say what heats room by room", "[demand][climate][ce]") {
    // 14 kW: separate 10000 + 4000 x 75 % = 13000, central 14000.
    auto const heat = [](std::string const& use) { return circuit("HT", use, "14 kW", 2); };
    CHECK(total(home("CE 2021", kHome + heat("baseboard")), standard) == kBasic + 13'000);
    CHECK(total(home("CE 2021", kHome + heat("floor heating")), standard) == kBasic + 13'000);
    CHECK(total(home("CE 2021", kHome + heat("heating")), standard) == kBasic + 14'000);
    CHECK(total(home("CE 2021", kHome + heat("furnace")), standard) == kBasic + 14'000);
    CHECK(total(home("CE 2021", kHome + "thermostats = 5\n" + heat("heating")), standard) == kBasic + 13'000);
    CHECK(total(home("CE 2021", kHome + "thermostats = 5\n" + heat("boiler")), standard) == kBasic + 14'000);
    CHECK(total(home("CE 2021", kHome + "thermostats = 1\n" + heat("baseboard")), standard) == kBasic + 14'000);
}

TEST_CASE("a heat pump runs in both seasons", "[demand][climate]") {
    // Heating 3000 + 4000, cooling 3000 + 5000.
    auto const loads = circuit("HP", "heat pump", "3 kW", 2) + circuit("BB", "baseboard", "4 kW", 2) +
                       circuit("AC", "air conditioner", "5 kW", 2);
    CHECK(total(home("CE 2018", kHome + loads), standard) == kBasic + 8000);
}
