// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The words that a person reads, and what grew. The form's own words, so no source.
#include "in_english.h"
#include "load_job.h"

#include "catch.h"
#include <fmt/format.h>

using namespace made;
using enum LoadMethod;

namespace {
std::string told(PanelLoad const& p) {
    std::string all;
    for (LoadResult const& r : p.results)
        all += fmt::format("{} | {} | {} | {}\n", in_english(r.item), in_english(r.arithmetic), in_english(r.value),
                           r.reference ? text(*r.reference) : "");
    return all;
}
std::string supply(std::string const& main) {
    return "supply = \"120/240\"\n" + (main.empty() ? "" : "main = \"" + main + "\"");
}
std::string home_of(std::string const& area) { return "[dwelling]\narea = \"" + area + "\"\n"; }
} // namespace

TEST_CASE("a service that carries its load", "[demand][results]") {
    // 7800 + 6000 = 13800: 10000 + 3800 x 40 % = 11520; 11520 / 240 = 48 A.
    auto const p = service_load(
        home("NEC 2023", home_of("100 m²") + circuit("EV", "vehicle charger", "6 kW", 2), supply("100 A")));
    INFO(told(p));
    CHECK(in_english(p.verdict) == "Within the main of 100 A: 48 A.");
    CHECK_THAT(
        told(p),
        Contains("Calculated load |  | 11520 VA |") &&
            Contains("Amperes | 11520 VA ÷ 240 V = 48 A | 48 A | NEC 2023 220.5(A)") &&
            Contains("Neutral | 4680 VA ÷ 240 V = 19.5 A | 19.5 A | NEC 2023 220.61") &&
            Contains("Least for this dwelling | its main switch may be rated no lower | 100 A | NEC 2023 230.79(C)") &&
            Contains("Smallest standard service | ") && Contains(" | 100 A | NEC 2023 240.6(A)") &&
            Contains("4 AWG copper or 2 AWG aluminium | NEC 2023 310.12") &&
            Contains("Present service | the main: 100 A × 240 V = 24000 VA | 100 A |") &&
            Contains("Left on it | 24000 − 11520 = 12480 VA | 12480 VA |") &&
            Contains("Largest circuit that still fits | 60 A × 80 % = 48 A; 48 A × 240 V = 11520 VA") &&
            Contains("60 A, two poles"));
}

TEST_CASE("a service that does not", "[demand][results]") {
    // 6000 + 20000 = 26000 VA, 108.33 A.
    auto const p =
        service_load(home("CE 2024", home_of("100 m²") + circuit("FU", "furnace", "20 kW", 2), supply("100 A")));
    CHECK(in_english(p.verdict) == "Too much for the main of 100 A: 108.33 A, 8.33 A more than it is good for.");
    CHECK_THAT(told(p), Contains("Too much by | 24000 − 26000 = −2000 VA | 2000 VA |") &&
                            Contains("Largest circuit that still fits |  | none |") &&
                            Contains(" | 110 A | CE 2024 Table 13"));
    CHECK_FALSE(p.size.neutral_amps);
    CHECK_THAT(told(p), !Contains("Neutral"));
}

TEST_CASE("a service that carries its load and is less than a dwelling must have", "[demand][results]") {
    auto const p = service_load(home("CE 2024", home_of("85 m²"), supply("60 A")));
    CHECK(in_english(p.verdict) ==
          "Within the main of 60 A: 20.83 A. But a dwelling like this must have 100 A or more (CE 2024 "
          "8-200(1)(b)).");
    CHECK_THAT(told(p), Contains("Least for this dwelling | however small its load | 100 A | CE 2024 8-200(1)(b)"));
}

TEST_CASE("nothing is said of what is not known", "[demand][results]") {
    auto const missing = circuit("WH", "water heater", "", 2);
    auto const p = service_load(home("CE 2024", home_of("85 m²") + missing, supply("100 A")));
    CHECK(p.verdict.empty());
    CHECK_THAT(told(p), Contains("Calculated load | without what is missing | 5000 VA |") &&
                            Contains("Smallest standard service |  | not known |") &&
                            Contains("Left on it |  | not known |"));
    // Too much already: that is sure.
    auto const q = service_load(
        home("CE 2024", home_of("85 m²") + missing + circuit("FU", "furnace", "20 kW", 2), supply("100 A")));
    CHECK_THAT(in_english(q.verdict), Contains("Too much for the main of 100 A: 104.17 A"));
    // No rating: no verdict.
    auto const r = service_load(home("CE 2024", home_of("85 m²"), supply("")));
    CHECK(r.verdict.empty());
    CHECK_THAT(told(r), Contains("Present service | no main, feeder or supply says its amperes | not known |"));
    // The area is missing: so it is said.
    auto const s = service_load(home("NEC 2023", "[dwelling]\nthermostats = 2\n", supply("100 A")));
    CHECK(in_english(s.load->unknown) == std::vector<std::string>{"the floor area of the dwelling"});
    CHECK(s.verdict.empty());
    // Nor is its least size, where that hangs on the area.
    CHECK_FALSE(service_load(home("CE 2024", "[dwelling]\nthermostats = 2\n", supply("100 A"))).size.floor);
}

TEST_CASE("the heavier leg and the left-out part of an ampere are told", "[demand][results]") {
    // Lights of 2000 on leg A, for hours 2500: (0 + 2500) / 120 = 20.83 A.
    auto const p = service_load(home("NEC 2023", circuit("LT", "lighting", "2 kW", 1, "space = 1\n"), supply("20 A")));
    CHECK_THAT(told(p), Contains("Amperes of leg A, the heavier | half of what both carry and what this leg carries "
                                 "alone: (0 + 2500) VA ÷ 120 V = 20.83 A | 20.83 A"));
    CHECK_THAT(in_english(p.verdict), Contains("20.83 A on leg A"));
    // 24030 VA of two poles: 100.125 A, on 100 A.
    auto const q = service_load(home("NEC 2023", circuit("KI", "appliance", "24030 VA", 2), supply("100 A")));
    CHECK(q.size.fits);
    CHECK_THAT(told(q),
               Contains("the standard size at or above 100 A, the part of an ampere left out (NEC 2023 220.5(B))") &&
                   Contains("nothing: only the left-out part of an ampere is above it"));
}

TEST_CASE("which step grew", "[demand][results][grown]") {
    auto const before =
        service_load(home("NEC 2023", home_of("100 m²") + circuit("WH", "water heater", "4.5 kW", 2)), optional);
    auto const grown = [&](std::string const& more, LoadMethod method = optional) {
        auto const one =
            service_load(home("NEC 2023", home_of("100 m²") + circuit("WH", "water heater", "4.5 kW", 2)), method);
        auto const two = service_load(
            home("NEC 2023", home_of("100 m²") + circuit("WH", "water heater", "4.5 kW", 2) + more), method);
        auto const* s = grown_step(*one.load, *two.load);
        return s ? in_english(s->item) : std::string("none");
    };
    CHECK(grown("") == "none");
    CHECK_THAT(grown(circuit("EV", "vehicle charger", "6 kW", 2)), Contains("the rest"));
    CHECK(grown(circuit("EV", "vehicle charger", "6 kW", 2), standard) == "EV");
    CHECK(grown(circuit("FU", "furnace", "9 kW", 2)) == "Electric heat");
    CHECK(grown(circuit("LT", "lighting", "1 kW")) == "none"); // within the floor area
    // One becomes one of two: the line of both grew.
    CHECK_THAT(grown(circuit("DW", "dishwasher", "1200 VA"), standard), Contains("Appliances fastened in place"));
}

TEST_CASE("the part of a total that does not hang on memory", "[demand][results][sure]") {
    // Five dryers at 85 %, which is from memory: 25000 x 85 % = 21250 beside the 4680 of the house.
    std::string dryers;
    for (int i = 0; i < 5; ++i) dryers += circuit(fmt::format("D{}", i), "dryer", "5 kW", 2);
    auto const p = service_load(home("NEC 2023", home_of("100 m²") + dryers), standard);
    CHECK(p.load->total_va == 4680 + 21'250);
    CHECK(sure_va(*p.load) == 4680);
    // A left-out motor's 25 % too.
    auto const q = service_load(home("NEC 2023", home_of("100 m²") + circuit("HT", "heating", "5 kW", 2) +
                                                     circuit("AC", "air conditioner", "4 kW", 2)),
                                standard);
    CHECK(q.load->total_va - sure_va(*q.load) == 1000);
}
