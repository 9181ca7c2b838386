// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Energy management: what a device holds back counts at its limit. Worked out from the rules, not published.
#include "in_english.h"
#include "load_job.h"

#include "catch.h"
#include <fmt/format.h>

using namespace made;
using enum LoadMethod;

namespace {
std::string home_with(std::string const& limit, std::string const& marks) {
    return fmt::format("[dwelling]\narea = \"100 m²\"\nenergy_management = {{ limit = \"{}\", circuits = [{}] }}\n",
                       limit, marks);
}
constexpr std::int64_t kGeneral = 7800, kStandard = 4680, kBasic = 6000; // see climate_test.cpp
std::string const kCharger = circuit("EV", "vehicle charger", "9.6 kW", 2);
std::string const kDryer = circuit("DR", "dryer", "5 kW", 2);
} // namespace

TEST_CASE("a limit smaller than its loads counts, whatever the loads", "[demand][managed]") {
    // 40 A x 240 V = 9600 VA of 14600.
    auto const p = service_load(home("NEC 2023", home_with("40 A", "\"EV\", \"DR\"") + kCharger + kDryer), standard);
    CHECK(p.load->total_va == kStandard + 9600);
    auto const s = step(p.load->steps, "Energy management, at its limit");
    CHECK(in_english(s.arithmetic) == "40 A × 240 V = 9600 VA");
    CHECK(s.circuits == std::vector<std::string>{"EV", "DR"});
    CHECK(text(s.reference) == "NEC 2023 220.70");
    CHECK(step(p.load->steps, "DR").kind == LoadStep::Kind::item);
    // At 208 V: 8320 VA.
    auto const wye = service_load(
        home("NEC 2023", home_with("40 A", "\"EV\", \"DR\"") + kCharger + kDryer, "supply = \"120/208\""), standard);
    CHECK(wye.load->total_va == kStandard + 8320);
    // CE 8-106(10), (11), since 2021 with 8-500.
    for (auto const& [code, section] : {std::pair{"CE 2018", "8-106(10), (11)"},
                                        {"CE 2021", "8-106(10), (11), 8-500"},
                                        {"CE 2024", "8-106(10), (11), 8-500"}}) {
        auto const q = service_load(home(code, home_with("40 A", "\"EV\", \"DR\"") + kCharger + kDryer));
        CHECK(q.load->total_va == kBasic + 9600);
        CHECK(step(q.load->steps, "Energy management").reference.section == section);
    }
}

TEST_CASE("a limit larger than its loads changes nothing but the line", "[demand][managed]") {
    auto const p = service_load(home("NEC 2023", home_with("80 A", "\"EV\", \"DR\"") + kCharger + kDryer), standard);
    CHECK(p.load->total_va == kStandard + 14'600);
    CHECK(in_english(step(p.load->steps, "Energy management, all of it").arithmetic) ==
          "9600 + 5000 = 14600 VA, not more than the limit of 80 A");
    // Its motor is still the largest: 25 % of 5000.
    auto const pump = circuit("WP", "well pump", "5 kW", 2);
    CHECK(service_load(home("NEC 2023", home_with("80 A", "\"WP\"") + pump), standard).load->total_va ==
          kStandard + 5000 + 1250);
    // And within a limit of 10 A no larger than 2400: 600.
    CHECK(service_load(home("NEC 2023", home_with("10 A", "\"WP\"") + pump), standard).load->total_va ==
          kStandard + 2400 + 600);
}

TEST_CASE("a managed load that nobody knows counts as the limit, and nothing is missing", "[demand][managed]") {
    auto const p = service_load(home("CE 2024", home_with("40 A", "\"EV\"") + circuit("EV", "vehicle charger", "", 2)));
    CHECK(p.load->unknown.empty());
    CHECK(p.load->total_va == kBasic + 9600);
    // Not managed: it is missing.
    auto const q =
        service_load(home("CE 2024", "[dwelling]\narea = \"100 m²\"\n" + circuit("EV", "vehicle charger", "", 2)));
    CHECK(in_english(q.load->unknown) == std::vector<std::string>{"the load of EV"});
    CHECK_FALSE(q.size.service);
}

TEST_CASE("what is managed is among the 40 % of the optional methods, heat apart", "[demand][managed][optional]") {
    // 7800 + 9600 = 17400: 10000 + 7400 x 40 %.
    CHECK(service_load(home("NEC 2023", home_with("40 A", "\"EV\"") + circuit("EV", "vehicle charger", "12 kW", 2)),
                       optional)
              .load->total_va == 10'000 + 2960);
    // Heat under a limit does not fall into the 40 %: 7800, and 40 A x 240 V in full.
    CHECK(service_load(home("NEC 2023", home_with("40 A", "\"HT\"") + circuit("HT", "furnace", "15 kW", 2)), optional)
              .load->total_va == kGeneral + 9600);
    // 220.83: new heat that is managed is new heat.
    auto const p = service_load(home("NEC 2023", home_with("40 A", "\"HT\"") + circuit("HT", "furnace", "15 kW", 2) +
                                                     circuit("WH", "water heater", "4.5 kW", 2, "existing = true\n")),
                                existing);
    CHECK_THAT(in_english(p.load->title), Contains("220.83(B)"));
    // 7800 + 4500 = 12300: 8000 + 4300 x 40 % = 9720, and 9600.
    CHECK(p.load->total_va == 9720 + 9600);
}

TEST_CASE("CE: a managed load of a part of a dwelling may run for hours", "[demand][managed][listed]") {
    auto const job =
        home("CE 2024", home_with("40 A", "\"EV\"") + circuit("SP", "feeder", "", 2, "panel = \"Main\"\n") +
                            circuit("LT", "lighting", "600 VA", 1, "panel = \"Main\"\n") +
                            circuit("EV", "vehicle charger", "12 kW", 2, "panel = \"Sub\"\n") +
                            "[[panel]]\nname = \"Sub\"\nspaces = 8\nfeeder = \"Main/SP\"\n");
    // 9600, and 25 % of it.
    CHECK(panel_load_of(job, "Sub").load->total_va == 12'000);
}

TEST_CASE("what is said and changes nothing is told", "[demand][managed][notes]") {
    auto const p = service_load(home("CE 2024", home_with("40 A", "\"SP\"") +
                                                    circuit("SP", "feeder", "", 2, "panel = \"Main\"\n") +
                                                    circuit("EV", "vehicle charger", "12 kW", 2, "panel = \"Sub\"\n") +
                                                    "[[panel]]\nname = \"Sub\"\nspaces = 8\nfeeder = \"Main/SP\"\n"));
    CHECK(p.load->total_va == kBasic + 12'000);
    CHECK_THAT(notes(p), Contains("Energy management names SP, which feeds panel \"Sub\": name the circuits there"));
    auto const q = service_load(home("CE 2024", "[dwelling]\narea = \"100 m²\"\n" +
                                                    circuit("HT", "heating", "4 kW", 2, "interlocked = true\n")));
    CHECK_THAT(notes(q), Contains("`interlocked` is of backup heat beside a heat pump, so it changes nothing of HT"));
}
