// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What runs in both seasons, whose quarter the neutral takes, what is fastened in place, and a source that stands
// alone.
#include "load_job.h"

#include "reckon/service.h"

#include "catch.h"

using namespace made;

namespace {
constexpr auto standard = LoadMethod::standard;
std::string const kHome = "[dwelling]\narea = \"1000 ft²\"\n"; // general 3000 + 4500 VA: 3000 + 4500 × 35 % = 4575
constexpr std::int64_t kGeneral = 4'575;

std::int64_t total(std::string const& code, std::string const& rest, LoadMethod method = standard) {
    return service_load(home(code, kHome + rest), method).load.value().total_va;
}
std::int64_t neutral(std::string const& code, std::string const& rest) {
    return service_load(home(code, kHome + rest), standard).load.value().neutral_va.value();
}
std::string notes_of(std::string const& code, std::string const& rest) {
    return notes(service_load(home(code, kHome + rest), standard));
}
} // namespace

TEST_CASE("220.60: the quarter of a motor that is left out came with 2020", "[demand][motor]") {
    auto const both = circuit("HT", "heating", "20 kW", 2) + circuit("AC", "air conditioner", "9 kVA", 2);
    CHECK(total("NEC 2017", both) == kGeneral + 20'000);
    for (auto const* code : {"NEC 2020", "NEC 2023"}) {
        CAPTURE(code);
        CHECK(total(code, both) == kGeneral + 20'000 + 2'250);
        CHECK_THAT(notes_of(code, both), Contains("Readings differ"));
        // No verdict of too much hangs on a reading.
        CHECK(sure_va(service_load(home(code, kHome + both), standard).load.value()) == kGeneral + 20'000);
    }
    CHECK_THAT(notes_of("NEC 2017", both), !Contains("Readings differ"));
}

TEST_CASE("a furnace's blower runs with cooling too, also where more than 1800 VA heats", "[demand][climate]") {
    // 220.60; the bound is common practice, no source.
    auto const cooling = circuit("AC", "air conditioner", "4 kVA", 2);
    auto const at = [&](std::string const& va) { return total("NEC 2017", cooling + circuit("FU", "furnace", va, 2)); };
    CHECK(at("1800 VA") == kGeneral + 4'000 + 1'000 + 1'800);
    // What heats as well has a blower inside, whose own figure nobody gave: at most as much, and no verdict of too
    // much hangs on that.
    CHECK(at("1801 VA") == kGeneral + 4'000 + 1'000 + 1'800);
    auto const electric = [&](std::string const& va) {
        return service_load(home("NEC 2017", kHome + cooling + circuit("FU", "furnace", va, 2)), standard).load.value();
    };
    CHECK(electric("3 kW").total_va == kGeneral + 4'000 + 1'000 + 1'800);
    CHECK(sure_va(electric("3 kW")) == kGeneral + 4'000 + 1'000);
    // Where the guess alone lets cooling count, its motor's quarter is no surer than that.
    CHECK(electric("5500 VA").total_va == kGeneral + 4'000 + 1'000 + 1'800);
    CHECK(sure_va(electric("5500 VA")) == kGeneral + 5'500);
    for (LoadStep const& step : electric("3 kW").steps)
        if (step.va == 1'800) CHECK(step.reference.source == Source::practice);
    CHECK(at("9 kW") == kGeneral + 9'000);
    // The share of heat takes no more of it than leaves the blower: 65 % of 2000 VA would be 1300.
    CHECK(total("NEC 2017", circuit("FU", "furnace", "2 kW", 2), LoadMethod::optional) == 7'500 + 1'800);
    CHECK(total("NEC 2017", circuit("FU", "furnace", "4 kW", 2), LoadMethod::optional) == 7'500 + 2'600);
    // Without cooling it counts once, in full by the optional method as well: it heats nothing of which a share counts.
    CHECK(total("NEC 2017", circuit("FU", "furnace", "800 VA")) == kGeneral + 800);
    CHECK(total("NEC 2017", circuit("FU", "furnace", "800 VA"), LoadMethod::optional) == 7'500 + 800);
    // With electric heat it is on that side as well.
    auto const heat = circuit("BB", "baseboard", "6 kW", 2);
    CHECK(total("NEC 2017", heat + cooling + circuit("FU", "furnace", "800 VA")) == kGeneral + 6'800);
    // Said to run with the air conditioner, it brings no other heat with it.
    CHECK(service_load(home("NEC 2017", kHome + "together = [[\"FU\", \"AC\"]]\n" + heat + cooling +
                                            circuit("FU", "furnace", "800 VA")),
                       standard)
              .load->total_va == kGeneral + 6'800);
    // CE 8-200: within the basic load, above 1500 W one of the other loads.
    auto const ce = [&](std::string const& va) {
        return service_load(home("CE 2021", "[dwelling]\narea = \"80 m²\"\n" + cooling + circuit("FU", "furnace", va)),
                            standard)
            .load->total_va;
    };
    CHECK(ce("1500 VA") == 5'000 + 4'000);
    CHECK(ce("1600 VA") == 5'000 + 4'000 + 1'600);
}

TEST_CASE("220.61: the neutral's quarter is of the largest motor on the neutral", "[demand][neutral]") {
    auto const motors = circuit("WP", "well pump", "2 kVA", 2) + circuit("DI", "disposer", "800 VA");
    CHECK(neutral("NEC 2023", motors) == kGeneral + 800 + 200);
    CHECK_THAT(notes_of("NEC 2023", motors),
               Contains("of the largest motor on the neutral") && Contains("neutral, DI."));
    CHECK_THAT(notes_of("NEC 2023", circuit("DI", "disposer", "800 VA")), !Contains("on the neutral"));
}

TEST_CASE("what of a tub returns over the neutral is assumed, and said so", "[demand][neutral]") {
    auto const four_wires = "cable = \"6/3\"\n";
    CHECK_THAT(notes_of("NEC 2023", circuit("HT", "hot tub", "9 kW", 2, four_wires)),
               Contains("all of it is assumed") && Contains("of HT."));
    CHECK_THAT(notes_of("NEC 2023", circuit("RG", "range", "9 kW", 2, four_wires)), !Contains("is assumed"));
    CHECK_THAT(notes_of("NEC 2023", circuit("WH", "water heater", "4 kW", 2)), !Contains("is assumed"));
}

TEST_CASE("220.53: `fastened` says what is in place, a plain appliance that decides is told", "[demand][fixed]") {
    auto const three = circuit("WH", "water heater", "4 kW", 2) + circuit("DW", "dishwasher", "1200 VA") +
                       circuit("DI", "disposer", "800 VA");
    auto const fan = [](std::string const& more) { return circuit("AF", "appliance", "1000 VA", 1, more); };
    CHECK(total("NEC 2017", three + fan("")) == kGeneral + 7'000 + 200);
    CHECK(total("NEC 2017", three + fan("fastened = true\n")) == kGeneral + 5'250 + 200);
    CHECK_THAT(notes_of("NEC 2017", three + fan("")), Contains("Taken as plugged in") && Contains("in: AF."));
    CHECK_THAT(notes_of("NEC 2017", three + fan("fastened = true\n")), !Contains("Taken as plugged in"));
    CHECK_THAT(notes_of("NEC 2017", three + fan("fastened = false\n")), !Contains("Taken as plugged in"));
    CHECK_THAT(notes_of("NEC 2017", circuit("WH", "water heater", "4 kW", 2) + fan("")),
               !Contains("Taken as plugged in")); // two are not four
    // What is fastened by its use may be on a cord.
    CHECK(total("NEC 2017", three + circuit("WP", "well pump", "1 kVA", 2, "fastened = false\n")) ==
          kGeneral + 7'000 + 250);
}

TEST_CASE("the optional method takes its plain sum by its own section", "[demand][optional]") {
    auto const p = service_load(home("NEC 2023", kHome), LoadMethod::optional);
    CHECK(step(p.load->steps, "General load").reference.section == "220.82(B)");
    CHECK(step(service_load(home("NEC 2023", kHome), standard).load->steps, "General load").reference.section ==
          "Table 220.45");
}

TEST_CASE("a source that stands alone is not held to a dwelling's load nor to its least service", "[demand][source]") {
    // NEC 230.79 and CE 8-200 speak of services.
    auto const cabin = [](std::string const& fed_from, std::string const& code) {
        return service_load(home(code, kHome + circuit("RG", "range", "9 kW", 2),
                                 "supply = \"120/240\"\nmain = \"60 A\"\nfed_from = \"" + fed_from + "\""));
    };
    for (auto const* code : {"NEC 2023", "CE 2021"}) {
        CAPTURE(code);
        auto const alone = cabin("Inverter, 6 kW", code);
        CHECK(alone.verdict.empty());
        CHECK_FALSE(alone.size.floor);
        CHECK_THAT(notes(alone), Contains("stands alone"));
        CHECK_FALSE(cabin("Meter, north wall", code).verdict.empty());
    }
}
