// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Loads that stand on no line of their own in the codes: each has a sensible one in every method. Worked out from the
// rules, not published.
#include "in_english.h"
#include "load_job.h"

#include "catch.h"

using namespace made;
using enum LoadMethod;

namespace {
std::string const kHome = "[dwelling]\narea = \"100 m²\"\npeak = { amps = \"10 A\", days = 365 }\n";

struct Odd {
    char const *use, *load;
    int poles;
    char const* more;
    // What it adds to a home of 100 m2: NEC standard, optional (in the 40 %), listed in another building; CE 8-200,
    // listed; new beside a measured peak.
    std::int64_t standard, optional, other, ce, ce_other, new_one;
};
} // namespace

TEST_CASE("odd loads in every method", "[demand][odd]") {
    // CE without a range: other loads above 1500 W in full up to 6000 W, 25 % above: 9000 is 6000 + 750.
    // In another building by the CE Code 25 % more for what is presumed to run for hours.
    Odd const all[]{
        // A 240 V circuit of which nothing is known but its load: a machine.
        {"", "3 kW", 2, "", 3000, 3000, 3000, 3000, 3750, 3000},
        // A 120 V one: lamps and small things, within the floor area.
        {"", "1200 VA", 1, "", 0, 0, 1200, 0, 1500, 1200},
        {"welder", "9 kW", 2, "", 9000, 9000, 9000, 6750, 9000, 9000},
        {"workshop", "3 kW", 2, "", 3000, 3000, 3000, 3000, 3000, 3000},
        {"workshop", "1200 VA", 1, "", 0, 0, 1200, 0, 1200, 1200},
        {"receptacles", "3 kW", 2, "", 3000, 3000, 3000, 3000, 3000, 3000},
        // Pool, spa and tankless heaters by the CE Code in full.
        {"hot tub", "9 kW", 2, "", 9000, 9000, 9000, 9000, 11'250, 9000},
        {"tankless water heater", "9 kW", 2, "", 9000, 9000, 9000, 9000, 11'250, 9000},
        {"water heater", "9 kW", 2, "", 9000, 9000, 11'250, 6750, 11'250, 9000},
        {"vehicle charger", "9 kW", 2, "", 9000, 9000, 11'250, 9000, 11'250, 9000},
        // A motor: 25 % more where the method has that line.
        {"well pump", "2 kW", 2, "", 2500, 2000, 2500, 2000, 2500, 2000},
        {"appliance", "2 kW", 2, "motor = true\n", 2500, 2000, 2500, 2000, 2500, 2000},
        {"appliance", "1500 VA", 1, "", 1500, 1500, 1500, 0, 1875, 1500},
        // Small cooking is outside the table; a dryer counts at least 5000.
        {"cooktop", "1500 VA", 1, "", 1500, 1500, 1500, 0, 1500, 1500},
        {"dryer", "2.2 kW", 2, "", 5000, 2200, 2200, 2200, 2200, 2200},
        // By the CE Code a range counts 6000 W whatever its rating.
        {"range", "8 kW", 2, "", 6400, 8000, 8000, 6000, 8000, 8000},
        // A nameplate's 20 A at 240 V; of a motor its 25 % are in them.
        {"well pump", "", 2, "mca = \"20 A\"\n", 4800, 4800, 4800, 4800, 4800, 4800},
        {"appliance", "", 2, "mca = \"20 A\"\n", 4800, 4800, 4800, 4800, 6000, 4800},
        // What is off, a spare, what feeds the panel.
        {"appliance", "5 kW", 2, "off = true\n", 0, 0, 0, 0, 0, 0},
        {"spare", "", 2, "", 0, 0, 0, 0, 0, 0},
        {"generator inlet", "7 kW", 2, "", 0, 0, 0, 0, 0, 0},
        {"surge protector", "", 2, "", 0, 0, 0, 0, 0, 0},
        // A feeder whose panel is not in the job: what it was reckoned for, in full.
        {"feeder", "6 kW", 2, "", 6000, 6000, 6000, 6000, 6000, 6000},
    };
    // Something that stands, so that every method holds; of 2 kW, so that no line of it changes.
    auto const stands = circuit("FZ", "freezer", "300 VA", 1, "existing = true\ncontinuous = false\n");
    auto const total = [](std::string const& code, std::string const& rest, LoadMethod method) {
        auto const p = service_load(home(code, rest), method);
        REQUIRE(p.load);
        CHECK(p.load->unknown.empty());
        return p.load->total_va;
    };
    for (Odd const& o : all) {
        CAPTURE(o.use, o.load, o.poles, o.more);
        auto const one = circuit("OD", o.use, o.load, o.poles, o.more);
        for (auto const* code : {"NEC 2017", "NEC 2020", "NEC 2023"}) {
            CHECK(total(code, kHome + stands + one, standard) == total(code, kHome + stands, standard) + o.standard);
            // 7800 + 300 + the load: below 10 kVA in full, above 40 %. Another building's feeder stands apart.
            auto const all_of_it = 8100 + o.optional;
            auto const expected = std::string(o.use) == "feeder"
                                      ? 8100 + o.optional
                                      : std::min<std::int64_t>(all_of_it, 10'000) +
                                            (std::max<std::int64_t>(all_of_it - 10'000, 0) * 40 + 50) / 100;
            CHECK(total(code, kHome + stands + one, optional) == expected);
            CHECK(total(code, stands + one, standard) == total(code, stands, standard) + o.other);
            CHECK(total(code, kHome + stands + one, measured) == 3000 + o.new_one);
        }
        for (auto const* code : {"CE 2018", "CE 2021", "CE 2024"}) {
            CHECK(total(code, kHome + stands + one, standard) == 6000 + o.ce);
            CHECK(total(code, stands + one, standard) == 300 + o.ce_other);
            CHECK(total(code, kHome + stands + one, measured) == 2400 + o.new_one);
        }
    }
}

TEST_CASE("NEC 2023 counts a charger at 7200 VA at least, by the standard method alone", "[demand][odd][editions]") {
    auto const home_of = [](std::string const& code) {
        return home(code, "[dwelling]\narea = \"100 m²\"\n" + circuit("EV", "vehicle charger", "6 kW", 2));
    };
    CHECK(service_load(home_of("NEC 2017"), standard).load->total_va == 4680 + 6000);
    CHECK(service_load(home_of("NEC 2020"), standard).load->total_va == 4680 + 6000);
    auto const p = service_load(home_of("NEC 2023"), standard);
    CHECK(p.load->total_va == 4680 + 7200);
    CHECK(in_english(step(p.load->steps, "EV").arithmetic) == "at least 7200 VA");
    CHECK(text(step(p.load->steps, "EV").reference) == "NEC 2023 220.57");
    CHECK(service_load(home_of("NEC 2023"), optional).load->total_va == 10'000 + 1520); // 13800 in all
}

TEST_CASE("NEC 2020 counts only appliances of 500 W and more among the four", "[demand][odd][editions]") {
    auto const rest = "[dwelling]\narea = \"100 m²\"\n" + circuit("DW", "dishwasher", "1200 VA") +
                      circuit("DI", "disposer", "400 VA") + circuit("WH", "water heater", "4.5 kW", 2) +
                      circuit("TW", "tankless water heater", "3 kW", 2);
    // 2017: four, 9100 x 75 % = 6825. From 2020 three: 8700 in full, and the 400 beside them. The disposer's motor:
    // 100.
    CHECK(service_load(home("NEC 2017", rest), standard).load->total_va == 4680 + 6825 + 100);
    for (auto const* code : {"NEC 2020", "NEC 2023"})
        CHECK(service_load(home(code, rest), standard).load->total_va == 4680 + 8700 + 400 + 100);
}

TEST_CASE("sections by edition", "[demand][odd][editions]") {
    auto const rest = "[dwelling]\narea = \"100 m²\"\n" + circuit("HT", "heating", "5 kW", 2);
    struct Row {
        char const *code, *area, *demand;
    };
    for (auto const& [code, area, demand] : {Row{"NEC 2017", "220.12", "Table 220.42"},
                                             {"NEC 2020", "220.14(J)", "Table 220.42"},
                                             {"NEC 2023", "220.41", "Table 220.45"}}) {
        auto const p = service_load(home(code, rest), standard);
        CHECK(step(p.load->steps, "General lighting and receptacles").reference.section == area);
        CHECK(step(p.load->steps, "the rest").reference.section == demand);
        CHECK(step(p.load->steps, "HT").reference.section == "220.51");
        for (LoadStep const& s : p.load->steps) CHECK(s.reference.edition == code);
    }
    for (auto const* code : {"CE 2018", "CE 2021", "CE 2024"}) {
        auto const p = service_load(home(code, rest));
        for (LoadStep const& s : p.load->steps) CHECK(s.reference.edition == code);
    }
}
