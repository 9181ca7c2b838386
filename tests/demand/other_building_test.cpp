// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Buildings that are no dwelling: what is listed, with what is added for long running and for the largest motor. Worked
// out from the rules, not published.
#include "in_english.h"
#include "load_job.h"

#include "catch.h"
#include <fmt/format.h>

using namespace made;

namespace {
std::string const kShop = circuit("LT", "lighting", "2 kW", 1, "space = 1\n") +
                          circuit("CO", "workshop", "3680 VA", 2, "motor = true\n") +
                          circuit("WE", "welder", "9.6 kW", 2) + circuit("HT", "heating", "5 kW", 2);
} // namespace

TEST_CASE("a workshop: continuous 125 %, largest motor 25 %, outlets at 180 VA", "[demand][listed]") {
    for (auto const* code : {"NEC 2017", "NEC 2020", "NEC 2023"}) {
        auto const p =
            service_load(home(code, kShop + circuit("RC", "receptacles", "", 1, "outlet_count = 6\nspace = 3\n")));
        CAPTURE(code, counted(p));
        // 6 x 180 = 1080; 2000 + 3680 + 9600 + 5000; motor 3680 x 25 % = 920; lights and heat 7000 x 25 % = 1750.
        CHECK(step(p.load->steps, "RC").va == 1080);
        CHECK(in_english(step(p.load->steps, "RC").arithmetic) == "6 outlets × 180 VA = 1080 VA, at least");
        CHECK(step(p.load->steps, "Largest motor").va == 920);
        CHECK(in_english(step(p.load->steps, "Continuous loads").arithmetic) ==
              "2000 + 5000 = 7000 VA, 7000 VA × 25 % = 1750 VA");
        CHECK(p.load->total_va == 24'030);
        // 100.125 A shared evenly. The lights stand on one leg and the receptacles on the other: 20450 of both, so
        // (10225 + 2500) / 120 = 106.04 A, of which the part of an ampere is left out.
        CHECK(p.size.amps == 100'125_mA);
        CHECK(p.size.to_carry == 106_A);
        CHECK(p.size.service == 110_A);
        CHECK_FALSE(p.size.floor);
        // Lights and receptacles alone return over the neutral: 3080 / 240.
        CHECK(p.load->neutral_va == 3080);
        CHECK(p.size.neutral_amps == 12'833_mA);
        CHECK(in_english(p.load->why) ==
              "There is no table [dwelling], so this is reckoned as another building: all that is listed.");
        CHECK_THAT(notes(p), Contains("Least lighting load a square foot"));
    }
}

TEST_CASE("CE: a load is presumed to run for hours unless its use says otherwise", "[demand][listed][ce]") {
    for (auto const* code : {"CE 2018", "CE 2021", "CE 2024"}) {
        auto const p = service_load(home(code, kShop + circuit("RC", "receptacles", "1080 VA") +
                                                   circuit("NW", "network", "200 VA") +
                                                   circuit("FZ", "freezer", "400 VA", 1, "continuous = false\n")));
        CAPTURE(code, counted(p));
        // 1080 + 2000 + 3680 + 9600 + 5000 + 200 + 400 = 21960; 920; 7000 x 25 % = 1750; 200 x 25 % = 50.
        CHECK(p.load->total_va == 24'680);
        CHECK(step(p.load->steps, "presumed").va == 50);
        CHECK(text(step(p.load->steps, "presumed").reference) == fmt::format("{} 8-104(3)", code));
        // 102.83 A shared evenly; no fraction is left out.
        CHECK(p.size.amps == 102'833_mA);
        CHECK(p.size.service == 110_A);
        CHECK_FALSE(p.load->neutral_va);
        // Outlets alone say nothing: CE gives no VA of an outlet.
        auto const q = service_load(home(code, circuit("RC", "receptacles", "", 1, "outlet_count = 6\n")));
        CHECK(in_english(q.load->unknown) == std::vector<std::string>{"the load of RC"});
    }
}

TEST_CASE("NEC: receptacles above 10 kVA count at half, machines plugged in at 240 V in full", "[demand][listed]") {
    std::string outlets;
    for (int i = 0; i < 7; ++i) outlets += circuit(fmt::format("R{}", i), "receptacles", "", 1, "outlet_count = 10\n");
    // 70 x 180 = 12600: 10000 + 2600 x 50 % = 11300; and a kiln of 9 kW.
    auto const p = service_load(home("NEC 2023", outlets + circuit("KI", "workshop", "9 kW", 2)));
    CHECK(p.load->total_va == 11'300 + 9000);
    CHECK(step(p.load->steps, "Receptacles: the rest").va == 1300);
    CHECK(text(step(p.load->steps, "Receptacles: the rest").reference) == "NEC 2023 220.14(I), 220.47");
    CHECK(p.load->neutral_va == 11'300);
    // More typed than the outlets ask: that.
    auto const q = service_load(home("NEC 2023", circuit("R1", "receptacles", "1500 VA", 1, "outlet_count = 4\n")));
    CHECK(q.load->total_va == 1500);
}

TEST_CASE("heat against cooling is judged with what long running adds", "[demand][listed][climate]") {
    // Heat 5000, and 25 % of it: 6250. Cooling 5100; as no largest motor it adds nothing.
    auto const loads = circuit("HT", "heating", "5 kW", 2) + circuit("AC", "air conditioner", "5100 VA", 2) +
                       circuit("CO", "appliance", "6 kW", 2, "motor = true\n");
    auto const p = service_load(home("NEC 2023", loads));
    CHECK(p.load->total_va == 5000 + 1250 + 6000 + 1500);
    CHECK(in_english(step(p.load->steps, "The larger of heating and cooling").arithmetic) ==
          "5000 VA or 5100 VA: 5000 VA, the larger with what it adds further down");
}

TEST_CASE("one hot and its neutral: the neutral carries all of it", "[demand][listed]") {
    auto const p = service_load(home("NEC 2023", circuit("LT", "lighting", "1200 VA"), "supply = \"120 on one leg\""));
    CHECK(p.load->total_va == 1500);
    CHECK(p.load->neutral_va == 1500);
    CHECK(p.size.amps == 12'500_mA);
    CHECK(p.size.neutral_amps == 12'500_mA);
    CHECK_FALSE(p.size.lines);
    CHECK(p.size.service == 15_A);
}
