// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Adding to what stands: NEC 220.83 and 220.87, CE 8-106(8). No worked dwelling with all figures is published; these
// are worked out from the rules.
#include "in_english.h"
#include "job/job.h"
#include "load_job.h"

#include "catch.h"
#include <fmt/format.h>

using namespace made;
using enum LoadMethod;

namespace {
constexpr std::array kNec{"NEC 2017", "NEC 2020", "NEC 2023"};
constexpr std::array kCe{"CE 2018", "CE 2021", "CE 2024"};
std::string const kOld = "existing = true\n";
std::string const kHome = "[dwelling]\narea = \"1000 ft²\"\n";
std::string const kStands = circuit("RG", "range", "12 kW", 2, kOld) + circuit("DR", "dryer", "5 kW", 2, kOld) +
                            circuit("WH", "water heater", "4.5 kW", 2, kOld) +
                            circuit("HT", "baseboard", "6 kW", 2, kOld);
std::string peak(int days) { return fmt::format("peak = {{ amps = \"62 A\", days = {} }}\n", days); }
std::string why(typed::Job const& job, LoadMethod method) {
    auto const p = service_load(job, method);
    CHECK_FALSE(p.load);
    CHECK(p.results.empty());
    CHECK(p.verdict.empty());
    return p.why + " | " + p.fix;
}
} // namespace

TEST_CASE("220.83(A): without new heat or cooling all of it is in the 40 %", "[demand][existing]") {
    for (auto const* code : kNec) {
        auto const p =
            service_load(home(code, kHome + kStands + circuit("EV", "vehicle charger", "6 kW", 2)), existing);
        CAPTURE(code, counted(p));
        // 3 x 1000 + 3 x 1500 = 7500; 12000 + 5000 + 4500 + 6000 = 27500; heat 6000: 41000 VA.
        // 8000 + 33000 x 40 % = 13200. The 7200 VA of 220.57 are of Part III, not of this.
        CHECK(p.load->total_va == 21'200);
        CHECK(step(p.load->steps, "All of this with heating").va == 41'000);
        CHECK(step(p.load->steps, "the rest").va == 13'200);
        CHECK(in_english(p.load->title) ==
              fmt::format("Existing dwelling, without new heating or cooling ({} 220.83(A))", code));
        // 21200 / 240 = 88.33 A; the floor of the disconnect is 100 A.
        CHECK(p.size.service == 100_A);
        // It is what an electrician would take.
        CHECK(service_load(home(code, kHome + kStands + circuit("EV", "vehicle charger", "6 kW", 2))).load->method ==
              existing);
    }
}

TEST_CASE("220.83(B): with new heat or cooling the larger stands apart, in full", "[demand][existing]") {
    for (auto const* code : kNec) {
        auto const loads = kStands + circuit("EV", "vehicle charger", "6 kW", 2, kOld);
        auto const p = service_load(home(code, kHome + loads + circuit("AC", "air conditioner", "3 kW", 2)), existing);
        CAPTURE(code, counted(p));
        // 7500 + 27500 = 35000: 8000 + 27000 x 40 % = 10800; heat 6000, more than 3000.
        CHECK(p.load->total_va == 8000 + 10'800 + 6000);
        CHECK(in_english(p.load->title) ==
              fmt::format("Existing dwelling, with new heating or cooling ({} 220.83(B))", code));
        CHECK_THAT(
            in_english(service_load(home(code, kHome + loads + circuit("AC", "air conditioner", "3 kW", 2))).load->why),
            Contains("220.83(B)"));
        auto const q = service_load(home(code, kHome + loads + circuit("AC", "air conditioner", "9 kW", 2)), existing);
        CHECK(q.load->total_va == 8000 + 10'800 + 9000);
    }
}

TEST_CASE("220.83: under the first 8 kVA all counts", "[demand][existing]") {
    // 300 ft2 x 3 + 4500 = 5400, 1500 more: 6900.
    auto const p = service_load(
        home("NEC 2020", "[dwelling]\narea = \"300 ft²\"\n" + circuit("WH", "water heater", "1500 VA", 1, kOld)),
        existing);
    CHECK(p.load->total_va == 6900);
}

TEST_CASE("220.87: 125 % of the peak and what is new", "[demand][measured]") {
    for (auto const* code : kNec)
        for (int const days : {30, 365, 400}) {
            auto const job = home(code, kHome + peak(days) + kStands + circuit("EV", "vehicle charger", "6 kW", 2),
                                  "main = \"125 A\"\nsupply = \"120/240\"");
            auto const p = service_load(job);
            CAPTURE(code, days, counted(p));
            // 62 x 240 = 14880, x 125 % = 18600, + 6000 = 24600 VA, 102.5 A.
            CHECK(p.load->method == measured);
            CHECK(p.load->total_va == 24'600);
            CHECK(p.size.amps == 102'500_mA);
            CHECK_FALSE(p.load->neutral_va);
            CHECK_FALSE(p.size.neutral_amps);
            CHECK(in_english(p.load->title) == fmt::format("Measured peak and what is new ({} 220.87)", code));
            CHECK(in_english(p.load->steps.front().arithmetic) ==
                  "62 A × 240 V = 14880 VA, 14880 VA × 125 % = 18600 VA");
        }
}

TEST_CASE("220.87: new heat against new cooling, and of what is held back all, at the limit", "[demand][measured]") {
    auto const added = circuit("H2", "heating", "5 kW", 2) + circuit("AC", "air conditioner", "3 kW", 2);
    auto const p = service_load(home("NEC 2023", kHome + peak(365) + kStands + added), measured);
    CHECK(p.load->total_va == 18'600 + 5000);
    // Limit 20 A x 240 V = 4800; the water heater stood there already and is within it.
    auto const held = "energy_management = { limit = \"20 A\", circuits = [\"EV\", \"WH\"] }\n";
    auto const q = service_load(
        home("NEC 2023", kHome + peak(365) + held + kStands + circuit("EV", "vehicle charger", "9.6 kW", 2)), measured);
    CHECK(q.load->total_va == 18'600 + 4800);
    // Nothing new is held back: it is within the peak.
    auto const r = service_load(home("NEC 2023", kHome + peak(365) +
                                                     "energy_management = { limit = \"20 A\", circuits = [\"WH\"] }\n" +
                                                     kStands + circuit("DW", "dishwasher", "1200 VA")),
                                measured);
    CHECK(r.load->total_va == 18'600 + 1200);
}

TEST_CASE("CE 8-106(8): the peak of a year and what is new", "[demand][measured][ce]") {
    for (auto const* code : kCe) {
        auto const job = home(code, "[dwelling]\narea = \"100 m²\"\n" + peak(365) + kStands +
                                        circuit("EV", "vehicle charger", "6 kW", 2));
        auto const p = service_load(job);
        CAPTURE(code, counted(p));
        CHECK(p.load->method == measured);
        CHECK(p.load->total_va == 14'880 + 6000);
        CHECK(in_english(p.load->title) == fmt::format("Measured peak and what is new ({} 8-106(8))", code));
        CHECK(p.size.service == 100_A); // 87 A, and the floor of 100 A
        // CE 2018: all of this rests on memory; 2021 and 2024: two pages that agree.
        CHECK(sure_va(*p.load) == (std::string_view(code) == "CE 2018" ? 0 : p.load->total_va));
    }
}

TEST_CASE("what the measured method refuses, and what to do", "[demand][measured][refused]") {
    auto const loads = kStands + circuit("EV", "vehicle charger", "6 kW", 2);
    auto const sun = circuit("PV", "solar", "", 2, "breaker = \"20 A\"\n");
    CHECK_THAT(why(home("NEC 2023", kHome + loads), measured),
               Contains("asks for the largest draw of a year, and the job does not know it") && Contains("peak = {"));
    CHECK_THAT(
        why(home("NEC 2023", kHome + peak(29) + loads), measured),
        Contains("a peak of 29 days is too short: NEC 2023 220.87 asks for a year, or 30 days with a recorder") &&
            Contains("read it longer, or take  --method standard"));
    CHECK_THAT(why(home("CE 2024", kHome + peak(364) + loads), measured),
               Contains("a peak of 364 days is too short: CE 2024 8-106(8) asks for 365 days"));
    for (int const days : {30, 365})
        for (auto const* code : {"NEC 2017", "NEC 2023"})
            CHECK_THAT(
                why(home(code, kHome + peak(days) + loads + sun), measured),
                Contains("what is read at the service is not the load where solar or a battery feeds the house") &&
                    Contains("--method standard"));
    CHECK_THAT(why(home("CE 2024", kHome + peak(365) + loads + sun), measured),
               Contains("is not the load where solar"));
    CHECK_THAT(why(home("NEC 2023", kHome + peak(365) + circuit("EV", "vehicle charger", "6 kW", 2)), measured),
               Contains("no circuit says that it was there then") && Contains("existing = true"));
    CHECK_THAT(why(home("NEC 2023", loads), measured), Contains("the job does not know it"));
    // It is not taken by itself either: the next that holds.
    CHECK(service_load(home("NEC 2023", kHome + peak(29) + loads)).load->method == existing);
    CHECK(service_load(home("CE 2024", kHome + peak(30) + loads)).load->method == standard);
    // Nothing new: the peak is the answer to no question.
    CHECK(service_load(home("NEC 2023", kHome + peak(365) + kStands)).load->method == existing);
}

TEST_CASE("what the other methods refuse, and what to do", "[demand][refused]") {
    auto const loads = kStands + circuit("EV", "vehicle charger", "6 kW", 2);
    for (auto const method : {optional, existing}) {
        auto const word = std::string(name(method));
        CHECK_THAT(why(home("CE 2021", kHome + loads), method),
                   Contains("CE 2021 has no " + word + " method of reckoning a load") &&
                       Contains("take  --method standard,  or  --method measured  where a year's peak is known"));
        CHECK_THAT(why(home("NEC 2020", loads), method),
                   Contains("the " + word + " method is for one dwelling, and the job has no table [dwelling]") &&
                       Contains("add  [dwelling]  with its  area,  or take  --method standard"));
        CHECK_THAT(
            why(home("NEC 2020", kHome + circuit("LT", "lighting", "600 VA", 1, kOld), "supply = \"120 on both legs\""),
                method),
            Contains("the " + word + " method (NEC 2020 220.8") &&
                Contains("is for a service of two hots and a neutral, 120/240 V or 120/208 V"));
    }
    CHECK_THAT(
        why(home("NEC 2023", kHome + loads, "supply = \"120/240\"\nmain = \"60 A\""), optional),
        Contains("the optional method (NEC 2023 220.82(B)) is for a service of 100 A or more, and the main is 60 A"));
    CHECK(service_load(home("NEC 2023", kHome + loads, "supply = \"120/240\"\nmain = \"100 A\""), optional).load);
    CHECK_THAT(why(home("NEC 2023", kHome + circuit("WH", "water heater", "4.5 kW", 2)), existing),
               Contains("no circuit says  existing = true") && Contains("mark what was there with  existing = true"));
    auto const part = home("NEC 2023", kHome + circuit("RG", "range", "12 kW", 2, kOld + "panel = \"Main\"\n") +
                                           circuit("SP", "feeder", "", 2, "panel = \"Main\"\n") +
                                           circuit("K1", "kitchen counter", "1500 VA", 1, kOld + "panel = \"Sub\"\n") +
                                           "[[panel]]\nname = \"Sub\"\nspaces = 8\nfeeder = \"Main/SP\"\n");
    for (auto const method : {optional, existing}) {
        auto const p = panel_load_of(part, "Sub", method);
        CHECK_THAT(p.why, Contains("is for the whole of a dwelling, and panel \"Sub\" feeds a part of it"));
        CHECK(p.fix == "take  --method standard");
    }
}
