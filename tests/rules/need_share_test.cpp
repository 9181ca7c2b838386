// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What shares a circuit. Sources: CE 26-654, 26-722(d) (two counter receptacles a circuit and nothing else; a central
// vacuum's own circuit), NEC 422.12 (central heating); NEC 210.52(B)(2), CE refrigerator, microwave, heating from
// memory; CE 26-654(a), (d), 26-746(1), (3) as notes on 2021 tell them; the rest common practice, no source.
#include "building/resolve.h"
#include "job/job.h"
#include "need_jobs.h"
#include "rules/need/named_things.h"

#include "catch.h"

using namespace made;

namespace {
std::string any_edition() { return GENERATE("NEC 2017", "NEC 2020", "NEC 2023", "CE 2018", "CE 2021", "CE 2024"); }
bool is_nec(std::string_view edition) { return edition.starts_with("NEC"); }

std::string told(std::string const& use, std::string const& name, int poles = 1) {
    typed::Circuit c = one_pole("K1").called(name).use(use);
    c.poles = poles;
    std::string all;
    auto const building = resolve(job({std::move(c)}));
    for (Use const* u : things_of(building.circuits.front())) all += (all.empty() ? "" : ", ") + std::string(u->name);
    return all;
}
} // namespace

TEST_CASE("a name lists things, landmarks and sites are none", "[check][need]") {
    // Common usage, no source.
    auto const [use, name, things] = GENERATE(table<std::string, std::string, std::string>({
        {"refrigerator", "Fridge and kitchen lights", "refrigerator, lighting"},
        {"lighting", "Fridge and kitchen lights", "lighting, refrigerator"},
        {"refrigerator", "Fridge, kitchen lights", "refrigerator, lighting"},
        {"refrigerator", "Receptacle, fridge", "refrigerator"},
        {"freezer", "Freezer, garage outlet", "freezer"},
        {"freezer", "Freezer and garage outlets", "freezer, garage"},
        {"kitchen counter", "Counter, left of sink", "kitchen counter"},
        {"kitchen counter", "Counter between fridge and range", "kitchen counter"},
        {"kitchen counter", "Counter outlets, furnace wall", "kitchen counter"},
        {"microwave", "Microwave over the dishwasher", "microwave"},
        {"water heater", "Water heater, laundry", "water heater"},
        {"furnace", "Furnace / air conditioner", "furnace, air conditioner"},
        {"furnace", "Furnace + laundry outlets", "furnace, receptacles"},
        {"refrigerator", "Fridge/freezer", "refrigerator"},
        {"freezer", "Freezer / fridge", "refrigerator"},
        {"refrigerator", "Fridge and freezer", "refrigerator, freezer"},
        {"oven", "Oven/microwave", "oven"},
        {"furnace", "Furnace room", "furnace"},
        {"furnace", "Laundry and furnace", "furnace, laundry"},
        {"lighting", "Lights, kitchen and laundry", "lighting"},
        {"heating", "Heaters, bath and laundry", "heating"},
        {"", "Lights & sump pump", "lighting, sump pump"},
        {"", "Frigo et lumières", "refrigerator, lighting"},
        {"", " , ; / and & ", ""},
        {"", "", ""},
    }));
    CAPTURE(use, name);
    REQUIRE(told(use, name) == things);
}

TEST_CASE("places said in one breath", "[check][need]") {
    RoomPlaces const bath{RoomPlace::bathroom};
    REQUIRE(places_beside("Bathroom and hall outlets", bath) == RoomPlaces{RoomPlace::hall});
    REQUIRE(places_beside("Outlets, bath & bedroom", bath) == RoomPlaces{RoomPlace::bedroom});
    REQUIRE(places_beside("Bathroom outlets, hall", bath).empty());
    REQUIRE(places_beside("Hall and bedroom outlets", bath).empty());
    REQUIRE(places_beside("Outlet near the bath and hall", bath).empty());
    REQUIRE(places_beside("", bath).empty());
}

TEST_CASE("need-kitchen-share: how many receptacles", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto const k1 = [](int count) {
        return one_pole("K1").called("Counter, left", "Kitchen").use("kitchen counter").with([&](typed::Circuit& c) {
            c.outlet_count = count;
        });
    };
    REQUIRE(says("need-kitchen-share", home_with(k1(2)), edition).empty());
    REQUIRE(says("need-kitchen-share", home_with(k1(3)), edition) == (is_nec(edition) ? "" : "warning K1"));
    REQUIRE(says("need-kitchen-share", home_with(k1(3).old()), edition) == (is_nec(edition) ? "" : "warning K1"));
    auto const listed = one_pole("K1").use("kitchen counter").outlets({"5-20R", "5-20R", "5-20R"});
    REQUIRE(says("need-kitchen-share", home_with(listed), edition) == (is_nec(edition) ? "" : "warning K1"));
    // Receptacles of the kitchen away from the counter are not counted.
    auto walls = k1(6).use("receptacles").called("Receptacles, far wall", "Kitchen");
    walls.c.mark = "R2";
    REQUIRE(says("need-kitchen-share", home_with(walls), edition).empty());
}

TEST_CASE("need-kitchen-share: what else", "[check][need]") {
    auto const [name, nec, ce] = GENERATE(table<std::string, bool, bool>({
        {"Counter, left of sink", false, false},
        {"Counter and lights", true, true},
        {"Counter outlets and dishwasher", true, true},
        {"Counter outlets, disposer", true, true},
        {"Counter outlets and fridge", false, true},
        {"Counter outlets and microwave", false, true},
        {"Counter and dining room outlets", false, true},
        {"Counter and hall outlets", true, true},
        {"Counter, fridge side", false, false},
    }));
    auto const edition = any_edition();
    CAPTURE(name, edition);
    bool const fires = is_nec(edition) ? nec : ce;
    auto const k1 = one_pole("K1").called(name, "Kitchen").use("kitchen counter");
    REQUIRE(says("need-kitchen-share", home_with(k1), edition) == (fires ? "warning K1" : ""));
    REQUIRE(says("need-dedicated", home_with(k1), edition).empty()); // one fault, told once
    auto none = home_with(k1);
    none.dwelling.reset();
    REQUIRE(says("need-kitchen-share", none, edition).empty());
}

TEST_CASE("need-dedicated: what shares a circuit by its name", "[check][need]") {
    auto const [use, name, nec, ce] = GENERATE(table<std::string, std::string, bool, bool>({
        {"refrigerator", "Fridge and kitchen lights", true, true},
        {"refrigerator", "Refrigerator", false, false},
        {"refrigerator", "Fridge/freezer", false, false},
        {"freezer", "Freezer/fridge", false, false},
        {"refrigerator", "Fridge and microwave", false, true},
        {"furnace", "Furnace and basement lights", true, true},
        {"furnace", "Furnace and air conditioner", false, false},
        {"furnace", "Furnace blower, kept as backup heat", false, false},
        {"lighting", "Lights and furnace", true, true},
        {"dishwasher", "Dishwasher and disposer", false, false},
        {"dishwasher", "Dishwasher and lights", true, true},
        {"microwave", "Microwave over the range", false, false},
        {"oven", "Oven/microwave", false, false},
        {"central vacuum", "Central vacuum", false, false},
        {"central vacuum", "Central vacuum and hall outlets", false, true},
        {"sump pump", "Sump pump and basement lights", true, true},
        {"heating", "Heater and lights, shed", false, true},
        {"heating", "Heater, fan and light, bathroom", false, false},
        {"laundry", "Washer and gas dryer", false, false},
        {"water heater", "Water heater and timer", false, false},
        {"well pump", "Well pump and light over it", false, false},
        {"smoke alarms", "Smoke alarms and hall lights", false, false},
    }));
    auto const edition = any_edition();
    CAPTURE(use, name, edition);
    bool const fires = is_nec(edition) ? nec : ce;
    auto const x = one_pole("X").called(name).use(use);
    REQUIRE(says("need-dedicated", home_with(x), edition) == (fires ? "warning X" : ""));
    REQUIRE(says("need-dedicated", home_with(Make(x).old()), edition) == (fires ? "warning X" : ""));
    auto none = home_with(x);
    none.dwelling.reset();
    REQUIRE(says("need-dedicated", none, edition).empty());
}

TEST_CASE("need-dedicated: a second outlet", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto const rf = [](int count) {
        return one_pole("RF").called("Refrigerator", "Kitchen").use("refrigerator").with([&](typed::Circuit& c) {
            c.outlet_count = count;
        });
    };
    REQUIRE(says("need-dedicated", home_with(rf(1)), edition).empty());
    REQUIRE(says("need-dedicated", home_with(rf(2)), edition) == (is_nec(edition) ? "" : "warning RF"));
    auto const car = two_pole("EV").use("vehicle charger").with([](typed::Circuit& c) { c.outlet_count = 2; });
    REQUIRE(says("need-dedicated", home_with(car), edition) == "warning EV");
    // Source: NEC 625.40 of 2017 and 2020, each outlet; of 2023 (two pages), one above 16 A or 120 V.
    if (is_nec(edition)) {
        auto const small = [](VoltAmperes load) {
            return one_pole("EV").use("vehicle charger").with([&](typed::Circuit& c) {
                c.outlet_count = 2;
                c.load = load;
            });
        };
        REQUIRE(says("need-dedicated", home_with(small(1920_VA)), edition) ==
                (edition == "NEC 2023" ? "" : "warning EV"));
        REQUIRE(says("need-dedicated", home_with(small(1921_VA)), edition) == "warning EV");
    }
    auto const heaters = two_pole("H1").use("baseboard").with([](typed::Circuit& c) { c.outlet_count = 3; });
    REQUIRE(says("need-dedicated", home_with(heaters), edition).empty());
}

TEST_CASE("need-dedicated: the section that asks it, where one does", "[check][need]") {
    auto const furnace = one_pole("X").called("Furnace and lights").use("furnace");
    REQUIRE_THAT(text(found("need-dedicated", home_with(furnace), "NEC 2020").at(0).reference), Contains("422.12"));
    auto const tub = one_pole("X").called("Hydromassage tub and bathroom lights").use("hydromassage tub");
    REQUIRE_THAT(text(found("need-dedicated", home_with(tub), "NEC 2020").at(0).reference), Contains("680.71"));
    REQUIRE(
        says("need-dedicated", home_with(one_pole("X").called("Hydromassage tub").use("hydromassage tub"))).empty());
    REQUIRE(says("need-dedicated", home_with(tub), "CE 2021").empty());
    auto const pump = one_pole("X").called("Sump pump and lights").use("sump pump");
    REQUIRE(text(found("need-dedicated", home_with(pump), "NEC 2020").at(0).reference) == "common practice");
}

TEST_CASE("need-dedicated: since CE 2021 a refrigerator and an enclosed microwave share nothing", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    bool const since_2021 = edition == "CE 2021" || edition == "CE 2024";
    auto const judged = [&](std::string use, std::string name) {
        return says("need-dedicated", home_with(one_pole("X").called(std::move(name), "Kitchen").use(std::move(use))),
                    edition);
    };
    std::string const fires = since_2021 ? "warning X" : "";
    REQUIRE(judged("refrigerator", "Fridge and freezer") == fires);
    REQUIRE(judged("microwave", "Microwave and oven") == fires);
    REQUIRE(judged("microwave", "Microwave").empty());
    if (!since_2021) return;
    REQUIRE(judged("microwave", "Microwave and lights") == fires);
    REQUIRE(judged("microwave", "Microwave and lights, island counter").empty()); // none in a cupboard
    auto const told =
        found("need-dedicated", home_with(one_pole("X").called("Microwave and lights").use("microwave")), edition);
    REQUIRE_THAT(told.at(0).message, Contains("in a cupboard or enclosure"));
}

TEST_CASE("need-dedicated: since CE 2021 a heating or cooking appliance above 1500 W", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    bool const since_2021 = edition == "CE 2021" || edition == "CE 2024";
    auto const judged = [&](std::string use, std::string name, std::optional<VoltAmperes> load = {}) {
        return found("need-dedicated",
                     home_with(two_pole("X").called(std::move(name)).use(std::move(use)).with([&](typed::Circuit& c) {
                         c.load = load;
                     })),
                     edition);
    };
    REQUIRE(judged("cooktop", "Cooktop and oven").empty()); // two built-in units are one appliance
    REQUIRE(judged("range", "Range").empty());
    REQUIRE(judged("water heater", "Water heater and heat pump").size() == 1);
    auto const shared = found("need-dedicated",
                              home_with(one_pole("X").called("Oven and microwave").use("oven").load(3000_VA)), edition);
    REQUIRE(shared.size() == (since_2021 ? 1u : 0u));
    if (!since_2021) return;
    REQUIRE(shared[0].reference.section == "26-746(1)");
    REQUIRE(shared[0].severity == Severity::warning);
    auto const with_lights = [&](VoltAmperes load) {
        auto const oven = one_pole("X").called("Oven and lights").use("oven").load(load);
        return says("need-dedicated", home_with(oven), edition);
    };
    REQUIRE(with_lights(1501_VA) == "warning X");
    REQUIRE(with_lights(1500_VA).empty());
}
