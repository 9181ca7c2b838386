// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A circuit told in a line, and whether it can be added. Sources: Ohm's law; the continuous share of 80 % (NEC
// 210.20(A), CE 8-104); loads by CE 8-200(1), added up beside each case.
#include "building/resolve.h"
#include "made_job.h"

#include "job/job.h"
#include "reckon/added_circuit.h"

#include "catch.h"

using namespace made;

namespace {
typed::Job hall(SupplyKind kind = SupplyKind::split_120_240) {
    auto made = job({two_pole("FU", 1).use("furnace").breaker(50_A).load(9000_VA)}, kind);
    typed::Dwelling d;
    d.area = Area{70'000'000};
    made.dwelling = d;
    return made;
}
AddedCircuit tell(std::string_view words, typed::Job const& job = hall(), std::string_view edition = "NEC 2023") {
    auto const building = resolve(job);
    auto told = added_circuit(words, building, *code_book(edition), building.panels[0]);
    if (!told.circuit) return told;
    REQUIRE(told.circuit->panel == &building.panels[0]);
    told.circuit->panel = nullptr; // it goes with the building
    return told;
}
Circuit told(std::string_view words, typed::Job const& job = hall()) {
    auto const t = tell(words, job);
    INFO(t.why);
    REQUIRE(t.circuit);
    return *t.circuit;
}
WithMore added(typed::Job const& job, std::string_view words, std::string_view edition) {
    auto const* book = code_book(edition);
    auto const building = resolve(job);
    auto const told = added_circuit(words, building, *book, building.panels[0]);
    return with_more(building, as_typed(job), *book, *told.circuit);
}
} // namespace

TEST_CASE("a circuit told in a line", "[check][load]") {
    auto const c = told("vehicle charger, 40 A, 2 poles, continuous");
    REQUIRE(c.use->name == "vehicle charger");
    REQUIRE(c.breaker == 40_A);
    REQUIRE(c.poles == 2);
    REQUIRE(c.continuous == true);
    REQUIRE(c.load == 7680_VA); // 80 % of 40 A at 240 V
    REQUIRE(c.mark == "NEW");
    REQUIRE(told("  range ,  9.6 kW ").load == 9600_VA); // two poles by its use
    REQUIRE(told("range, 9.6 kW").poles == 2);
    REQUIRE(told("lighting, 300 W").poles == 1);
    REQUIRE(told("Sauna in the yard, 30 A, 240 V").load == 7200_VA); // all that the breaker lets through
    REQUIRE(told("heat pump, mca 24 A, 2 poles").mca == 24_A);
    REQUIRE_FALSE(told("heat pump, mca 24 A, 2 poles").load);
    REQUIRE(told("kiln, 48 A, two poles, not continuous").continuous == false);
    REQUIRE(told("pump, 1 kW, 120 V, motor").motor == true);
    REQUIRE(told("hot tub, 50 A, 208 V", hall(SupplyKind::wye_120_208)).load == 10'400_VA); // 208 V
}

TEST_CASE("a circuit told in a line gets a mark that nothing has", "[check][load]") {
    auto made = hall();
    made.circuits[0].mark = "NEW";
    typed::Cable cable;
    cable.mark = "NEW2";
    made.cables = {cable};
    REQUIRE(told("range, 8 kW", made).mark == "NEW3");
}

TEST_CASE("what was taken for granted of a told circuit is said", "[check][load]") {
    REQUIRE(tell("range, 8 kW").taken.empty());
    REQUIRE_THAT(tell("hot tub, 50 A, 2 poles").taken.at(0), Contains("50 A × 240 V = 12000 VA"));
    auto const unknown = tell("thingamajig, 20 A, 1 pole").taken;
    REQUIRE(unknown.size() == 2);
    REQUIRE_THAT(unknown[0], Contains("an appliance"));
    REQUIRE_THAT(unknown[1], Contains("20 A × 120 V = 2400 VA"));
}

TEST_CASE("a circuit that cannot be told says why and how", "[check][load]") {
    for (auto const words :
         {"", ",", "range", "range,", "range, 8", "range, 8 kW,", "range, 8 kW, 3 poles", "range, 8 kW, -1 A",
          "thing, 20 A", "range, mca, 8 kW", "range, 99999 A", "\xC3\x28, \xFF"}) {
        CAPTURE(words);
        auto const t = tell(words);
        CHECK_FALSE(t.circuit);
        CHECK_FALSE(t.why.empty());
        CHECK_THAT(t.fix, Contains("vehicle charger, 40 A, 2 poles, continuous"));
    }
    REQUIRE_THAT(tell("range, 8 kW", hall(SupplyKind::bridged_120)).why, Contains("no two hots"));
    REQUIRE_THAT(tell("range, 8 kW", hall(SupplyKind::dc_12)).why, Contains("on DC"));
}

TEST_CASE("one circuit more fits up to the last ampere and no further", "[check][load]") {
    auto const edition = GENERATE(as<std::string>{}, "CE 2018", "CE 2021", "CE 2024");
    // 5000 + 9000 on 100 A: 10 000 VA are left, and a vehicle charger counts in full.
    REQUIRE(added(hall(), "vehicle charger, 10000 W, 2 poles", edition).fits == true);
    auto const more = added(hall(), "vehicle charger, 10001 W, 2 poles", edition);
    REQUIRE(more.fits == false);
    REQUIRE(more.panels.size() == 1);
    REQUIRE(more.panels[0].more_va == 10'001);
    REQUIRE(more.panels[0].grew);
    REQUIRE(more.panels[0].grew->reference.section == "8-200(1)(a)(vi)");
    REQUIRE(more.building.circuits.size() == 2);
    REQUIRE(more.no_space.empty());
}

TEST_CASE("one circuit more by the step that decides", "[check][load]") {
    // NEC 220.82: 70 m² at 33 VA, 2310, + 4500: all in the first 10 000; of 8000 more the first 3190 are, the rest
    // counts at 40 %.
    auto const more = added(hall(), "range, 8000 W", "NEC 2023");
    REQUIRE(more.fits == true);
    REQUIRE(more.panels[0].more_va == 3190 + 1924);
    REQUIRE(more.panels[0].grew);
    // What is within the general lighting adds nothing.
    auto const lamp = added(hall(), "lighting, 100 W", "NEC 2023");
    REQUIRE(lamp.fits == true);
    REQUIRE(lamp.panels[0].more_va == 0);
    REQUIRE_FALSE(lamp.panels[0].grew);
}

TEST_CASE("one circuit more cannot be judged without a rating or a load, but too much already is no", "[check][load]") {
    auto made = hall();
    made.panels[0].main.reset();
    REQUIRE_FALSE(added(made, "range, 8 kW", "CE 2024").fits);
    made = hall();
    made.circuits[0].load.reset();
    REQUIRE_FALSE(added(made, "range, 8 kW", "CE 2024").fits);
    REQUIRE(added(made, "vehicle charger, 30 kW, 2 poles", "CE 2024").fits == false);
}
