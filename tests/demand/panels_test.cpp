// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Sub-panels, feeders and outbuildings. Worked out from the rules, not published.
#include "building/resolve.h"
#include "in_english.h"
#include "load_job.h"

#include "catch.h"
#include <fmt/format.h>

using namespace made;
using enum LoadMethod;

namespace {
std::string on(std::string const& panel) { return fmt::format("panel = \"{}\"\n", panel); }
std::string sub(std::string const& name, std::string const& feeder, std::string const& more = "") {
    return fmt::format("[[panel]]\nname = \"{}\"\nspaces = 12\nfeeder = \"{}\"\n{}", name, feeder, more);
}
std::string feeder(std::string const& mark, std::string const& panel, std::string const& breaker = "60 A") {
    return circuit(mark, "feeder", "", 2, on(panel) + fmt::format("breaker = \"{}\"\n", breaker));
}
std::string const kHome = "[dwelling]\narea = \"100 m²\"\n";
} // namespace

TEST_CASE("a sub-panel of a dwelling: what is listed there", "[demand][panels]") {
    auto const rest = kHome + feeder("SP", "Main") + circuit("WH", "water heater", "4.5 kW", 2, on("Main")) +
                      circuit("C1", "kitchen counter", "1200 VA", 1, on("Kitchen")) +
                      circuit("C2", "kitchen counter", "1200 VA", 1, on("Kitchen")) +
                      circuit("LT", "lighting", "1 kW", 1, on("Kitchen")) +
                      circuit("RG", "range", "12 kW", 2, on("Kitchen")) + sub("Kitchen", "Main/SP");
    auto const nec = panel_load_of(home("NEC 2023", rest), "Kitchen");
    CAPTURE(counted(nec));
    // 1000 + 2 x 1500 = 4000: 3000 + 1000 x 35 % = 3350; a range by the table 8000.
    CHECK(nec.load->total_va == 3350 + 8000);
    CHECK_FALSE(nec.load->whole_dwelling);
    CHECK_FALSE(nec.size.floor);
    CHECK_THAT(notes(nec), Contains("What floor area this panel serves is not known"));
    CHECK(in_english(nec.load->title) == "Standard method for a part of a dwelling (NEC 2023 Article 220, Part III)");
    CHECK(in_english(nec.load->why) == "This panel feeds a part of the dwelling: what is listed there.");
    // 11350 / 240 = 47.29 A on the feeder's 60 A; 70 % of the range on the neutral.
    CHECK(nec.facts.rating == 60_A);
    CHECK(in_english(nec.facts.rated_by) == "the feeder SP");
    CHECK(nec.load->neutral_va == 3350 + 5600);
    CHECK(in_english(nec.verdict) == "Within the feeder SP of 60 A: 47.29 A.");
    // CE: 1200 + 1200 + 12000; the lights burn for hours, 1000 and 25 % of it.
    auto const ce = panel_load_of(home("CE 2024", rest), "Kitchen");
    CHECK(ce.load->total_va == 1200 + 1200 + 12'000 + 1250);
    // A light without a load is missing where the floor area does not stand for it.
    auto const missing = kHome + feeder("SP", "Main") + circuit("WH", "water heater", "4.5 kW", 2, on("Main")) +
                         circuit("LT", "lighting", "", 1, on("Kitchen")) + sub("Kitchen", "Main/SP");
    CHECK(in_english(panel_load_of(home("NEC 2023", missing), "Kitchen").load->unknown) ==
          std::vector<std::string>{"the load of LT"});
    CHECK(panel_load_of(home("NEC 2023", missing), "Main", standard).load->unknown.empty());
}

TEST_CASE("a feeder that carries all of the dwelling is reckoned as the dwelling", "[demand][panels]") {
    auto const rest = kHome + feeder("SP", "Main", "125 A") + circuit("RG", "range", "12 kW", 2, on("House")) +
                      circuit("HT", "furnace", "10 kW", 2, on("House")) + sub("House", "Main/SP");
    for (auto const* code : {"NEC 2017", "NEC 2020", "NEC 2023"}) {
        auto const job = home(code, rest);
        auto const service = panel_load_of(job, "Main"), house = panel_load_of(job, "House");
        // 7800 + 12000 = 19800: 10000 + 9800 x 40 % = 3920; 10000 x 65 %.
        CHECK(house.load->total_va == 20'420);
        CHECK(service.load->total_va == 20'420);
        CHECK(house.load->method == optional);
        CHECK(house.load->whole_dwelling);
        CHECK(in_english(house.facts.rated_by) == "the feeder SP");
        // The 100 A are of the service's disconnect, not of a feeder.
        CHECK(service.size.floor == 100_A);
        CHECK_FALSE(house.size.floor);
        CHECK(house.size.service == 100_A); // 85.08 A; 220.82 is for 100 A or more
    }
    // CE 8-200(1)(b) is of service and feeder alike.
    auto const ce = panel_load_of(home("CE 2024", rest), "House");
    CHECK(ce.load->total_va == 6000 + 6000 + 10'000);
    CHECK(ce.size.floor == 100_A);
    CHECK(ce.size.service == 100_A); // 91.67 A
    // One circuit beside it, and the feeder carries a part.
    auto const part = home("CE 2024", rest + circuit("LT", "lighting", "600 VA", 1, on("Main")));
    CHECK_FALSE(panel_load_of(part, "House").load->whole_dwelling);
    // A spare or a surge protector beside it does not.
    auto const still = home("CE 2024", rest + circuit("S1", "spare", "", 1, on("Main")) +
                                           circuit("S2", "surge protector", "", 2, on("Main")));
    CHECK(panel_load_of(still, "House").load->whole_dwelling);
}

TEST_CASE("panels below panels are counted once", "[demand][panels]") {
    auto const job = home("NEC 2020", kHome + feeder("SP", "Main") + feeder("SQ", "Sub") +
                                          circuit("WH", "water heater", "4.5 kW", 2, on("Main")) +
                                          circuit("DW", "dishwasher", "1200 VA", 1, on("Sub")) +
                                          circuit("WP", "well pump", "1 kW", 2, on("Loft")) + sub("Sub", "Main/SP") +
                                          sub("Loft", "Sub/SQ"));
    // The pump is a motor: 25 % of 1000.
    CHECK(panel_load_of(job, "Loft").load->total_va == 1250);
    CHECK(panel_load_of(job, "Sub").load->total_va == 1200 + 1250);
    CHECK(panel_load_of(job, "Main", standard).load->total_va == 4680 + 4500 + 1200 + 1250);
}

TEST_CASE("a DC panel listed first does not take the dwelling away from the AC service", "[demand][panels]") {
    auto const job =
        job_of("[job]\ncode = \"CE 2024\"\n" + kHome +
               "[[panel]]\nname = \"Shelf\"\nspaces = 4\nsupply = \"12 V DC\"\n"
               "[[panel]]\nname = \"Main\"\nspaces = 12\nsupply = \"120/240\"\n" +
               circuit("L1", "lighting", "60 VA", 1, on("Shelf")) + circuit("HT", "heating", "2 kW", 2, on("Main")));
    auto const building = resolve(job);
    CHECK(service_panel(building)->name == "Main");
    CHECK(service_load(job).load->whole_dwelling);
    CHECK(service_load(job).load->total_va == 8000);
    auto const dc = panel_load_of(job, "Shelf");
    CHECK_FALSE(dc.load);
    CHECK_THAT(dc.why, Contains("is on DC"));
}

TEST_CASE("what stands in an outbuilding is not within the floor area of the dwelling", "[demand][panels][building]") {
    auto const barn =
        feeder("SP", "Main") + circuit("LT", "lighting", "600 VA", 1, on("Barn")) +
        circuit("RC", "receptacles", "1800 VA", 1, on("Barn")) + circuit("WH", "water heater", "3 kW", 2, on("Main")) +
        circuit("KL", "lighting", "600 VA", 1, on("Main")) + sub("Barn", "Main/SP", "building = \"Barn\"\n");
    // NEC: 600 and 1800 in full beside the 4680 of the house; its own lights are within them.
    auto const nec = panel_load_of(home("NEC 2023", kHome + barn), "Main", standard);
    CHECK(nec.load->total_va == 4680 + 600 + 1800 + 3000);
    CHECK_THAT(notes(nec), Contains("not counted again: KL") && !Contains("LT"));
    // CE: other loads, of which only those above 1500 W count: 1800 + 3000.
    auto const ce = panel_load_of(home("CE 2024", kHome + barn), "Main");
    CHECK(ce.load->total_va == 6000 + 4800);
    CHECK_THAT(notes(ce), Contains("Not above 1500 VA, so within the basic load: LT"));
    // Its own feeder: what is listed there.
    CHECK(panel_load_of(home("NEC 2023", kHome + barn), "Barn").load->total_va == 2400);
}

TEST_CASE("a peak is of the service, not of a panel below it", "[demand][panels][refused]") {
    auto const job = home(
        "NEC 2023", "[dwelling]\narea = \"100 m²\"\npeak = { amps = \"62 A\", days = 365 }\n" + feeder("SP", "Main") +
                        circuit("RG", "range", "12 kW", 2, on("House") + "existing = true\n") +
                        circuit("EV", "vehicle charger", "6 kW", 2, on("House")) + sub("House", "Main/SP"));
    CHECK(panel_load_of(job, "Main", measured).load->total_va == 24'600);
    auto const p = panel_load_of(job, "House", measured);
    CHECK_FALSE(p.load);
    CHECK(p.why == "the peak was read at the service, and panel \"House\" feeds a part of it");
    CHECK(p.fix == "name the service's panel, or take  --method standard");
}
