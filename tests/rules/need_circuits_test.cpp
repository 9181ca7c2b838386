// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Circuits a dwelling must have. Sources: NEC 210.11(C)(1) to (4) (two small-appliance circuits, laundry, bathroom and
// garage circuits, 20 A each), 210.52(B)(3), (E), (F); CE 26-654, 26-722(d) (two circuits at the counter, one where one
// receptacle is enough; on 15 A split, else 20 A); CE laundry, garage and outdoors
// of 2018 from memory, of 2021 as notes tell 26-654(b), (c) and 26-656(g), (h).
#include "job/job.h"
#include "need_jobs.h"

#include "catch.h"

using namespace made;

namespace {
constexpr std::string_view kCircuitRules[] = {"need-kitchen", "need-laundry", "need-bath", "need-garage",
                                              "need-outdoor"};
std::string any_edition() { return GENERATE("NEC 2017", "NEC 2020", "NEC 2023", "CE 2018", "CE 2021", "CE 2024"); }
bool is_nec(std::string_view edition) { return edition.starts_with("NEC"); }
} // namespace

TEST_CASE("need-*: a house that has it all, and jobs that are none", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto no_dwelling = dwelling({one_pole("L1").use("lighting")});
    no_dwelling.dwelling.reset();
    auto battery = job({one_pole("L1").use("lighting")}, SupplyKind::dc_12);
    battery.dwelling.emplace();
    for (auto const rule : kCircuitRules) {
        CAPTURE(rule);
        REQUIRE(says(rule, dwelling(home_circuits()), edition).empty());
        REQUIRE(says(rule, no_dwelling, edition).empty());
        REQUIRE(says(rule, battery, edition).empty());
    }
}

TEST_CASE("need-kitchen: two counter circuits", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    REQUIRE(says("need-kitchen", dwelling(home_without({"K1"})), edition) == "warning K2");
    auto const none = found("need-kitchen", dwelling(home_without({"K1", "K2"})), edition);
    REQUIRE(in_short(none) == "warning Main");
    REQUIRE_THAT(none[0].message, Contains("at least 2 circuits"));
    REQUIRE_THAT(none[0].fix, Contains("Add 2 circuits") && Contains("use = \"kitchen counter\""));
    auto old = home_without({"K1"});
    for (typed::Circuit& c : old) c.existing = true;
    REQUIRE(says("need-kitchen", dwelling(old), edition) == "warning K2");
    REQUIRE_THAT(found("need-kitchen", dwelling(old), edition)[0].message, Contains("there before"));
}

TEST_CASE("need-kitchen: one circuit is enough for one receptacle under the CE Code", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto circuits = home_without({"K1"});
    circuits[0].outlet_count = 1;
    REQUIRE(says("need-kitchen", dwelling(circuits), edition) == (is_nec(edition) ? "warning K2" : ""));
    circuits[0].outlet_count = 2;
    REQUIRE(says("need-kitchen", dwelling(circuits), edition) == "warning K2");
}

TEST_CASE("need-kitchen: the rating", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto const k2 = [](Amps a) {
        return one_pole("K2").called("Counter, right", "Kitchen").use("kitchen counter").breaker(a);
    };
    REQUIRE(says("need-kitchen", home_with(k2(20_A)), edition).empty());
    auto const small = found("need-kitchen", home_with(k2(15_A)), edition);
    REQUIRE(in_short(small) == (is_nec(edition) ? "warning K1 K2" : "warning K2"));
    REQUIRE_THAT(small[0].message, Contains("15 A") && Contains("20 A"));
    REQUIRE(
        says("need-kitchen", home_with(k2(15_A).with([](typed::Circuit& c) { c.breaker.reset(); })), edition).empty());
    // A third one is no better for there being two.
    auto const k3 = one_pole("K3").called("Counter, island", "Kitchen").use("kitchen counter").breaker(15_A);
    REQUIRE(says("need-kitchen", home_with(k3), edition) == "warning K3");
    // Split receptacles on a 15 A pair.
    auto pair = home_without({"K1", "K2"});
    for (auto const* mark : {"K1", "K2"})
        pair.push_back(one_pole(mark)
                           .called("Counter", "Kitchen")
                           .use("kitchen counter")
                           .breaker(15_A)
                           .pair("K")
                           .with([](typed::Circuit& c) { c.split = true; }));
    REQUIRE(says("need-kitchen", dwelling(pair), edition) == (is_nec(edition) ? "warning K1 K2" : ""));
}

TEST_CASE("need-kitchen: circuits under other names", "[check][need]") {
    auto circuits = home_without({"K1", "K2"});
    circuits.push_back(one_pole("A").called("Receptacles, sink wall", "Kitchen").use("receptacles"));
    circuits.push_back(one_pole("B").called("Kitchen and dining outlets").use("receptacles"));
    REQUIRE(says("need-kitchen", dwelling(circuits)).empty());
    REQUIRE(says("need-kitchen", dwelling(circuits), "CE 2024").empty());
    circuits.pop_back();
    circuits.push_back(one_pole("C").called("Counter by the fridge").use("refrigerator").with([](typed::Circuit& c) {
        c.use_guessed = true;
    }));
    REQUIRE(says("need-kitchen", dwelling(circuits)).empty());
    circuits.push_back(one_pole("D").called("Counter, left", "Kitchen").use("kitchen counter"));
    REQUIRE(says("need-kitchen", dwelling(circuits)).empty());
}

TEST_CASE("need-bath: 20 A under the NEC, any circuit under the CE Code", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto const ba = [] { return one_pole("BA").called("Receptacle by the basin", "Bathroom").use("bathroom"); };
    REQUIRE(says("need-bath", home_with(ba().breaker(20_A)), edition).empty());
    REQUIRE(says("need-bath", home_with(ba().breaker(15_A)), edition) == (is_nec(edition) ? "warning BA" : ""));
    REQUIRE(says("need-bath", home_with(ba().breaker(15_A).old()), edition) == (is_nec(edition) ? "warning BA" : ""));
    REQUIRE(says("need-bath", dwelling(home_without({"BA"})), edition) == (is_nec(edition) ? "warning Main" : ""));
    // A bathroom is shown, and every circuit of receptacles is somewhere else.
    auto shown = home_without({"BA"});
    shown.push_back(one_pole("BF").called("Fan", "Bathroom").use("bath fan"));
    REQUIRE(says("need-bath", dwelling(shown), edition) == "warning Main");
    shown.push_back(one_pole("R2").called("Receptacles, upstairs").use("receptacles"));
    REQUIRE(says("need-bath", dwelling(shown), edition) == (is_nec(edition) ? "warning Main" : ""));
}

TEST_CASE("need-bath: from 2020 on it is of basins and counters", "[check][need]") {
    // Source: NEC 210.11(C)(3) of 2017; of 2020 and 2023, where other receptacles of a bathroom may hang elsewhere.
    auto const [edition, of] =
        GENERATE(table<std::string, std::string>({{"NEC 2017", "for receptacles there"},
                                                  {"NEC 2020", "for receptacles at basins and counters there"},
                                                  {"NEC 2023", "for receptacles at basins and counters there"}}));
    CAPTURE(edition);
    REQUIRE_THAT(found("need-bath", dwelling(home_without({"BA"})), edition).at(0).message, Contains(of));
    auto made = dwelling(home_without({"BA"}));
    made.circuits.push_back(one_pole("BA").called("Receptacle by the basin", "Bathroom").use("bathroom"));
    made.circuits.push_back(one_pole("BX").called("Receptacle, towel rail", "Bathroom").breaker(15_A));
    REQUIRE(says("need-bath", made, edition).empty());
}

TEST_CASE("need-bath: what may share the circuit", "[check][need]") {
    auto const [name, room, fires] = GENERATE(table<std::string, std::string, bool>({
        {"Outlet and fan", "Bathroom", false},
        {"Outlets, fan and lights", "Bath", false},
        {"Outlets by the basins", "Bathrooms, both", false},
        {"Outlets and lights", "Bathrooms, both", true},
        {"Bathroom and hall outlets", "", true},
        {"Outlets, bathroom and bedroom", "", true},
        {"Upstairs bath and hall bath outlets", "", false},
        {"Bathroom outlets, hall side", "", false},
        {"Outlet, bath closet", "Bath", false},
        {"Outlets of hall bath and master bath, hall bath light and fan", "", true},
        {"Outlets of hall bath and master bath", "", false},
        {"Outlet, light and fan, hall bath", "", false},
        {"Outlet and light", "Bathroom and powder room", true},
        {"Receptacles of bathroom and washer", "", true},
    }));
    CAPTURE(name, room);
    auto const made = home_with(one_pole("BA").called(name, room).use("bathroom"));
    REQUIRE(says("need-bath", made) == (fires ? "warning BA" : ""));
    REQUIRE(says("need-bath", made, "CE 2024").empty());
}

TEST_CASE("need-laundry: asked where a laundry is shown", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto const none = home_without({"LA"});
    REQUIRE(says("need-laundry", dwelling(none), edition).empty());
    auto const and_also = [&](typed::Circuit c) {
        auto circuits = none;
        circuits.push_back(std::move(c));
        return dwelling(circuits);
    };
    REQUIRE(says("need-laundry", and_also(two_pole("DR").called("Dryer", "Hall closet").use("dryer")), edition) ==
            "warning Main");
    REQUIRE(says("need-laundry", and_also(two_pole("WH").called("Water heater", "Laundry").use("water heater")),
                 edition) == "warning Main");
    auto const la = [] { return one_pole("LA").called("Washing machine", "Laundry").use("laundry"); };
    REQUIRE(says("need-laundry", and_also(la().breaker(20_A)), edition).empty());
    REQUIRE(says("need-laundry", and_also(la().breaker(15_A)), edition) == (is_nec(edition) ? "warning LA" : ""));
    REQUIRE(says("need-laundry", and_also(la().called("Washer and dryer in one", "Laundry nook")), edition).empty());
    REQUIRE(says("need-laundry", and_also(la().called("Washing machine", "Back porch")), edition).empty());
    REQUIRE(says("need-laundry", and_also(la().called("Laundry and bathroom outlets")), edition) == "warning LA");
    REQUIRE(says("need-laundry", and_also(la().called("Laundry outlets and lights")), edition) == "warning LA");
    REQUIRE(says("need-laundry", and_also(la().called("Laundry outlets and lights").old()), edition) == "warning LA");
}

TEST_CASE("need-garage: asked where a garage is shown", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto const car = two_pole("EV").called("Vehicle charger", "Garage").use("vehicle charger");
    auto const with_receptacles = [&](typed::Circuit c) {
        auto made = home_with(car);
        made.circuits.push_back(std::move(c));
        return made;
    };
    auto const ga = [] { return one_pole("GA").called("Outlets", "Garage").use("garage"); };
    REQUIRE(says("need-garage", home_with(car), edition) == "warning Main");
    REQUIRE(says("need-garage", with_receptacles(ga()), edition).empty());
    REQUIRE(says("need-garage", with_receptacles(ga().breaker(15_A)), edition) ==
            (is_nec(edition) ? "warning GA" : ""));
    REQUIRE(says("need-garage", with_receptacles(ga().breaker(15_A).old()), edition) ==
            (is_nec(edition) ? "warning GA" : ""));
    REQUIRE(says("need-garage", with_receptacles(ga().called("Outlets and door opener", "Garage")), edition).empty());
    REQUIRE(says("need-garage", with_receptacles(ga().called("Garage and hall outlets")), edition) == "warning GA");
    REQUIRE(says("need-garage", with_receptacles(ga().called("Garage and porch outlets")), edition) ==
            (is_nec(edition) ? "" : "warning GA"));
    // Until 2020 the circuit feeds no lights; 2023 lets it serve the rest of the garage.
    bool const lights_too = edition != "NEC 2017" && edition != "NEC 2020";
    REQUIRE(says("need-garage", with_receptacles(ga().called("Outlets and lights", "Garage")), edition) ==
            (lights_too ? "" : "warning GA"));
    // A suite over a garage shows none.
    auto suite = dwelling(home_circuits());
    suite.panels[0].building = "Suite over garage";
    REQUIRE(says("need-garage", suite, edition).empty());
    auto detached = dwelling(home_circuits());
    detached.circuits.push_back(
        one_pole("GL").called("Lights").use("lighting").with([](typed::Circuit& c) { c.building = "Garage"; }));
    REQUIRE(says("need-garage", detached, edition) == "warning Main");
}

TEST_CASE("need-outdoor: a receptacle outdoors", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto const none = home_without({"OU"});
    auto const got = found("need-outdoor", dwelling(none), edition);
    REQUIRE(in_short(got) == "warning Main");
    REQUIRE_THAT(got[0].fix, Contains("use = \"outdoor\""));
    auto shared = none;
    shared.push_back(one_pole("R2").called("Dining room and porch outlets").use("receptacles"));
    REQUIRE(says("need-outdoor", dwelling(shared), edition) == (is_nec(edition) ? "" : "warning R2"));
    auto dock = none;
    dock.push_back(one_pole("D1").called("Dock outlets", "Dock").use("outdoor"));
    REQUIRE(says("need-outdoor", dwelling(dock), edition).empty());
    auto old = none;
    for (typed::Circuit& c : old) c.existing = true;
    REQUIRE(says("need-outdoor", dwelling(old), edition).empty());
}

TEST_CASE("need-*: a part of a house, and an old house, are asked nothing that the job does not touch",
          "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    auto part = dwelling({one_pole("R1").called("Receptacles", "Bedroom").use("receptacles")});
    part.panels[0].fed_from = "House panel, basement";
    auto old = dwelling({one_pole("R1").called("Receptacles", "Living room").use("receptacles").old(),
                         one_pole("DR").called("Dryer, gas", "Laundry").use("appliance").old(),
                         two_pole("EV").called("Vehicle charger", "Driveway").use("vehicle charger")});
    old.panels[0].existing = true;
    for (auto const rule : kCircuitRules) {
        CAPTURE(rule);
        REQUIRE(says(rule, part, edition).empty());
        if (rule != "need-outdoor") REQUIRE(says(rule, old, edition).empty());
    }
    // What is put into a place brings none of its circuits (B): receptacles there do.
    using Added = std::pair<std::string_view, typed::Circuit>;
    for (auto const& [rule, more] :
         {Added{"need-garage", two_pole("E2").called("Vehicle charger", "Garage").use("vehicle charger")},
          Added{"need-garage", one_pole("E2").called("Garage door opener").use("door opener")},
          Added{"need-outdoor", two_pole("E2").called("Heat pump", "Yard").use("heat pump")},
          Added{"need-bath", one_pole("E2").called("Fan", "Bathroom").use("bath fan")},
          Added{"need-laundry", two_pole("E2").called("Water heater", "Laundry").use("water heater")}}) {
        auto with = old;
        with.circuits.push_back(more);
        CAPTURE(rule);
        REQUIRE(says(rule, with, edition).empty());
    }
    old.circuits.push_back(one_pole("GA").called("Outlets", "Garage").use("garage").breaker(15_A));
    REQUIRE(says("need-garage", old, edition) == (is_nec(edition) ? "warning GA" : ""));
    part.panels[0].fed_from = "Meter, north wall";
    REQUIRE(says("need-kitchen", part, edition) == "warning Main");
    // A new kitchen in an old house is new work.
    old.circuits.push_back(two_pole("RG").called("Range", "Kitchen").use("range"));
    REQUIRE(says("need-kitchen", old, edition) == "warning Main");
}

TEST_CASE("need-laundry: since CE 2021 laundry and utility room each have theirs", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    bool const since_2021 = edition == "CE 2021" || edition == "CE 2024";
    auto const judged = [&](typed::Circuit c) { return says("need-laundry", home_with(std::move(c)), edition); };
    auto const ut = [](std::string name) { return one_pole("UT").called(std::move(name)).use("receptacles"); };
    REQUIRE(judged(ut("Utility room outlets")).empty());
    REQUIRE(judged(ut("Utility room and hall outlets")) == (since_2021 ? "warning UT" : ""));
    REQUIRE(judged(ut("Utility room outlets and lights")) == (since_2021 ? "warning UT" : ""));
    REQUIRE(judged(one_pole("FU").called("Furnace", "Utility room").use("furnace")).empty()); // no receptacles shown
    auto const both = one_pole("LA").called("Laundry and utility room outlets").use("laundry");
    REQUIRE(judged(both) == (since_2021 ? "warning LA" : "")); // told once
    auto second = home_with(ut("Utility room and hall outlets"));
    second.circuits.push_back(one_pole("U2").called("Outlets", "Utility room").use("receptacles"));
    REQUIRE(says("need-laundry", second, edition).empty());
    if (since_2021)
        REQUIRE(found("need-laundry", home_with(ut("Utility room and hall outlets")), edition)[0].reference.section ==
                "26-654(c)");
}

TEST_CASE("need-outdoor: since CE 2021 no lights on it, and none asked of a flat", "[check][need]") {
    auto const edition = any_edition();
    CAPTURE(edition);
    bool const since_2021 = edition == "CE 2021" || edition == "CE 2024";
    REQUIRE(says("need-outdoor", home_with(one_pole("OU").called("Porch outlets and lights").use("outdoor")),
                 edition) == (since_2021 ? "warning OU" : ""));
    auto flat = dwelling(home_without({"OU"}));
    flat.panels[0].supply->kind = SupplyKind::wye_120_208;
    // NEC 210.52(E)(1) speaks of one- and two-family dwellings, (E)(2) of flats that open to the ground.
    REQUIRE(says("need-outdoor", flat, edition) == (since_2021 || is_nec(edition) ? "" : "warning Main"));
}
