// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Ground-fault protection. Sources: NEC 210.8(A) 2017, 2020 and 2023, 210.8(F) 2020 and 2023 with its relief until
// 1 September 2026, CE 26-704 (1.5 m, 2.5 m, what stands before its receptacle), CE Section 62: trade pages on these
// editions. Texts of 2017, 2020 and 2023: NEC 210.8(D), (E) of 2017, 422.5(A) of 2020, 424.44(E), 424.45(E),
// 424.99(B)(5), 625.54 of 2017 and 2020, 680.44 of the same; 555.9 by two pages. On one page only, and so a warning at
// most: 210.8(C) of 2020 and 2023, 210.8(D), 625.54, 680.44 of 2023; from memory CE 68-068.
#include "job/job.h"
#include "protection_jobs.h"

#include "catch.h"

using namespace made;

namespace {
constexpr auto kRule = "gfci-needed";
} // namespace

TEST_CASE("gfci-needed: receptacles by place, NEC 2017, 2020, 2023 and CE 2018, 2021, 2024", "[check][gfci]") {
    auto const [use, room, in_nec, in_ce] = GENERATE(table<std::string, std::string, std::string, std::string>({
        {"bathroom", "", "EEE", "EEE"},
        {"receptacles", "Bathroom", "EEE", "EEE"},
        {"receptacles", "Washroom and hall", "EEE", "EEE"},
        {"garage", "", "EEE", "---"},
        {"receptacles", "Shed", "EEE", "---"},
        {"workshop", "", "WWW", "---"}, // in the house or a building of its own
        {"receptacles", "Boathouse", "EEE", "---"},
        {"outdoor", "", "EEE", "EEE"},
        {"receptacles", "Dock", "EEE", "EEE"},
        {"receptacles", "Soffit, north", "EEE", "---"}, // out of reach: CE speaks of 2.5 m
        {"receptacles", "Porch", "EEE", "EEE"},
        {"receptacles", "Crawl space", "EEE", "---"},
        {"receptacles", "Unfinished basement", "EEE", "---"},
        {"receptacles", "Basement", "WEE", "---"},
        {"kitchen counter", "Kitchen", "EEE", "WWW"},
        {"receptacles", "Kitchen", "WWE", "WWW"},
        {"refrigerator", "", "--E", "---"},
        {"refrigerator", "Garage", "EEE", "---"},
        {"freezer", "Garage", "EEE", "---"},
        {"laundry", "", "EEE", "---"},
        {"receptacles", "Living room", "---", "---"},
        {"receptacles", "Bedroom", "---", "---"},
        {"receptacles", "", "---", "---"},
        {"lighting", "Bathroom", "---", "---"},
        {"", "Bathroom", "---", "---"}, // what hangs on it is not known
    }));
    CAPTURE(use, room);
    REQUIRE(nec(kRule, at(use, room)) == in_nec);
    REQUIRE(ce(kRule, at(use, room)) == in_ce);
    for (auto const p : {Protection::breaker, Protection::outlet}) {
        REQUIRE(nec(kRule, at(use, room).gfci(p)) == "---");
        REQUIRE(ce(kRule, at(use, room).gfci(p)) == "---");
    }
}

TEST_CASE("gfci-needed: a name that says sink decides what a distance would", "[check][gfci]") {
    auto counter = at("kitchen counter", "Kitchen").called("Counter, left of sink", "Kitchen");
    REQUIRE(ce(kRule, counter) == "EEE");
    auto utility = at("receptacles", "").called("Receptacle by the utility sink", "");
    REQUIRE(nec(kRule, utility) == "EEE");
    REQUIRE(ce(kRule, utility) == "EEE");
    // What stands before its receptacle hides it.
    REQUIRE(ce(kRule, at("dishwasher", "Kitchen", {"5-15R"}).called("Dishwasher, under the sink", "Kitchen")) == "---");
    REQUIRE(ce(kRule, at("laundry", "Bathroom", {"5-20R"})) == "---");
}

TEST_CASE("gfci-needed: kitchen receptacles beside a counter circuit are not the counter's", "[check][gfci]") {
    auto const made = home({one_pole("KC").use("kitchen counter").gfci(Protection::breaker),
                            one_pole("KW").use("receptacles").called("Receptacles, table wall", "Kitchen")});
    REQUIRE(says(kRule, made, "NEC 2017").empty());
    REQUIRE(says(kRule, made, "NEC 2020").empty());
    REQUIRE(says(kRule, made, "NEC 2023") == "error KW");
    REQUIRE(says(kRule, made, "CE 2024").empty());
}

TEST_CASE("gfci-needed: the place may stand in the name, of several things each is judged", "[check][gfci]") {
    // Sources: as the places and things above; what is said twice in other words is judged alike (words_test.cpp).
    auto const [use, name, in_nec, in_ce] = GENERATE(table<std::string, std::string, std::string, std::string>({
        {"receptacles", "Kitchen island receptacles", "EEE", "WWW"},
        {"kitchen counter", "Peninsula outlets", "EEE", "WWW"},
        {"receptacles", "Wet bar receptacles", "EEE", "EEE"},
        {"laundry", "Receptacles of bathroom and washer", "EEE", "EEE"},
        {"lighting", "Bathroom lights and plugs", "EEE", "EEE"},
        {"lighting", "Garage lights, outlets", "EEE", "---"},
        {"lighting", "Bathroom lights", "---", "---"},
        {"lighting", "Lights, kitchen and counter", "---", "---"},
        {"lighting", "Lighting outlets, bathroom", "---", "---"},
        {"receptacles", "Finished basement receptacles", "-EE", "---"},
        {"receptacles", "Basement bedroom receptacles", "-EE", "---"},
        {"receptacles", "Pool outlets", "EEE", "EEE"},
        {"receptacles", "Receptacle by the basin", "EEE", "EEE"},
    }));
    CAPTURE(use, name);
    REQUIRE(nec(kRule, at(use, "").called(name, "")) == in_nec);
    REQUIRE(ce(kRule, at(use, "").called(name, "")) == in_ce);
}

TEST_CASE("gfci-needed: openers, pumps and tubs", "[check][gfci]") {
    // 210.8(A)(2): the receptacle at a garage's ceiling. 680.71: texts of 2017 and 2020. 680.21(C), CE 68-068, 68-302:
    // from memory, a warning at most. 210.8(F): what is wired in outdoors, from 2020.
    auto const [use, room, in_nec, in_ce] = GENERATE(table<std::string, std::string, std::string, std::string>({
        {"door opener", "", "EEE", "---"},
        {"door opener", "Garage", "EEE", "---"},
        {"gate operator", "", "-EE", "---"},
        {"pool pump", "", "WEE", "WWW"},
        {"hydromassage tub", "", "EEW", "WWW"},
        {"outdoor pump", "", "WEE", "WWW"},
        {"pump", "Yard", "WEE", "WWW"},
        {"pump", "Boiler room", "---", "---"},
        {"central vacuum", "Garage", "WWW", "---"},
        {"battery charger", "Garage", "WWW", "---"},
        {"attic fan", "", "---", "---"},
        {"heat pump water heater", "Utility room", "---", "---"},
    }));
    CAPTURE(use, room);
    REQUIRE(nec(kRule, at(use, room)) == in_nec);
    REQUIRE(ce(kRule, at(use, room)) == in_ce);
    REQUIRE(nec(kRule, at(use, room).gfci(Protection::breaker)) == "---");
}

TEST_CASE("gfci-needed: what of heating and cooling stands indoors is no outdoor outlet", "[check][gfci]") {
    auto made = home({at_240("heat pump", "Bedroom")});
    made.date = Date{2027, 1, 1};
    REQUIRE(letter(kRule, made, "NEC 2020") == "-");
    REQUIRE(letter(kRule, made, "NEC 2023") == "-");
    made.circuits[0].room.clear();
    made.circuits[0].name = "Indoor head, bedroom";
    REQUIRE(letter(kRule, made, "NEC 2020") == "-");
    made.circuits[0].name = "Heat pump, bedroom"; // it may be what it warms
    REQUIRE(letter(kRule, made, "NEC 2020") != "-");
    made.circuits[0].use = "air handler";
    REQUIRE(letter(kRule, made, "NEC 2020") == "-");
    REQUIRE(letter(kRule, made, "NEC 2023") == "-");
}

TEST_CASE("gfci-needed: volts and amperes in scope", "[check][gfci]") {
    REQUIRE(nec(kRule, at_240("dryer", "Laundry", {"14-30R"})) == "-EE"); // 240 V from 2020
    REQUIRE(nec(kRule, at_240("range", "Kitchen", {"14-50R"}).breaker(50_A)) == "--E");
    REQUIRE(nec(kRule, at_240("vehicle charger", "Garage", {"14-50R"}).breaker(50_A)) == "EEE");
    REQUIRE(nec(kRule, at_240("welder", "Garage", {"6-50R"}).breaker(50_A)) == "-EE");
    REQUIRE(nec(kRule, at("receptacles", "Outdoors", {"TT-30R"}).called("Receptacle, outside", "").breaker(30_A)) ==
            "-EE");
    REQUIRE(nec(kRule, at_240("outdoor", "", {"6-20R"}).breaker(20_A)) == "-EE");
    // CE: 125 V, 15 A and 20 A only.
    REQUIRE(ce(kRule, at_240("outdoor", "", {"6-20R"}).breaker(20_A)) == "---");
    REQUIRE(ce(kRule, at("outdoor", "", {"TT-30R"}).breaker(30_A)) == "---");
    REQUIRE(ce(kRule, at_240("vehicle charger", "Garage", {"14-50R"}).breaker(50_A)) == "---");
    // One receptacle in scope is enough.
    REQUIRE(ce(kRule, at_240("outdoor", "", {"6-20R", "5-20R"}).breaker(20_A)) == "EEE");
}

TEST_CASE("gfci-needed: a receptacle outdoors that a vehicle is charged at, CE", "[check][gfci]") {
    // CE 86-306(2) of 2021, on a page that quotes it: class A for a 5-20R outdoors. Else it is an outdoor receptacle.
    auto const car = at("vehicle charger", "Driveway", {"5-20R"}).breaker(20_A);
    REQUIRE(ce(kRule, car) == "EEE");
    REQUIRE(found(kRule, job({car}), "CE 2021").at(0).reference.section == "86-306(2)");
    REQUIRE(found(kRule, job({car}), "CE 2018").at(0).reference.section == "26-704");
    REQUIRE(ce(kRule, at("vehicle charger", "Driveway")) == "---"); // wired in
}

TEST_CASE("gfci-needed: appliances by use, from one page or from memory a warning at most", "[check][gfci]") {
    REQUIRE(nec(kRule, at("dishwasher", "")) == "EEW");
    REQUIRE(nec(kRule, at("sump pump", "Utility room")) == "-EW");
    REQUIRE(nec(kRule, at_240("range", "")) == "--W");
    REQUIRE(nec(kRule, at_240("oven", "").breaker(60_A)) == "--W");
    REQUIRE(nec(kRule, at_240("oven", "").breaker(70_A)) == "---");
    REQUIRE(nec(kRule, at_240("dryer", "")) == "-WW"); // most are plugged in
    REQUIRE(nec(kRule, at_240("hot tub", "", {}).breaker(60_A)) == "WWW");
    REQUIRE(ce(kRule, at_240("hot tub", "")) == "WWW");
    REQUIRE(nec(kRule, at("floor heating", "Bathroom")) == "EEE");
    REQUIRE(nec(kRule, at("floor heating", "Hall")) == "WWW"); // 424.45(E), 424.99(B)(5): under a covering, in any room
    auto const hall = found(kRule, home({at("floor heating", "Hall")}), "NEC 2017").at(0);
    REQUIRE_THAT(hall.message, Contains("424.45(E)") && Contains("lies under a floor covering"));
    REQUIRE(ce(kRule, at("floor heating", "Hall")) == "---");
    REQUIRE(ce(kRule, at("floor heating", "Bathroom")) == "WWW"); // Section 62, from 2018
    REQUIRE(ce(kRule, at_240("baseboard", "Bathroom")) == "WWW");
    REQUIRE(ce(kRule, at_240("baseboard", "Bedroom")) == "---");
    REQUIRE(nec(kRule, at("lighting", "Crawl space")) == "EWW");
    REQUIRE(nec(kRule, at("appliance", "").called("Boat hoist", "")) == "EEE");
    REQUIRE(nec(kRule, at_240("vehicle charger", "Driveway", {"14-50R"}).breaker(50_A)) == "EEE");
    // 625.54: up to 50 A in 2017, all of them from 2020 on.
    REQUIRE(nec(kRule, at_240("vehicle charger", "", {"14-50R"}).breaker(50_A)) == "EEW");
    REQUIRE(nec(kRule, at_240("vehicle charger", "", {"14-60R"}).breaker(60_A)) == "-EW");
}

TEST_CASE("gfci-needed: what is wired in outdoors, from NEC 2020", "[check][gfci]") {
    REQUIRE(nec(kRule, at_240("well pump", "Yard")) == "-EE");
    REQUIRE(nec(kRule, at_240("well pump", "Yard").breaker(50_A)) == "-EE");
    REQUIRE(nec(kRule, at_240("well pump", "Yard").breaker(60_A)) == "---"); // 50 A and less
    REQUIRE(nec(kRule, at("lighting", "Yard")) == "---");
    REQUIRE(nec(kRule, at_240("water heater", "Garage")) == "--W"); // 2023: garages too, as their floor lies
    // Of a garage alone does the floor decide; everywhere the outlet is an outdoor one.
    auto const message = [](std::string const& room) {
        return found(kRule, home({at_240("water heater", room)}), "NEC 2023").at(0).message;
    };
    REQUIRE_THAT(message("Garage"), Contains("outdoors at it, and its floor is at or below"));
    for (auto const room : {"Shed", "Boathouse"})
        REQUIRE_THAT(message(room), Contains("the outlet is outdoors at it") && !Contains("floor"));
    REQUIRE(ce(kRule, at_240("well pump", "Yard")) == "---");
    auto const shop = job({at_240("well pump", "Yard")}); // 210.8(F) is for dwellings
    REQUIRE(says(kRule, shop, "NEC 2020").empty());
    REQUIRE(says(kRule, shop, "NEC 2023").empty());
}

TEST_CASE("gfci-needed: listed heating and cooling outdoors is let off until 1 September 2026", "[check][gfci]") {
    auto const [year, month, day, outdoors, unsaid] = GENERATE(table<int, int, int, std::string, std::string>({
        {0, 0, 0, "N", "N"}, // no date
        {2026, 5, 2, "N", "N"},
        {2026, 8, 31, "N", "N"},
        {2026, 9, 1, "E", "W"},
        {2027, 1, 1, "E", "W"},
    }));
    CAPTURE(year, month, day);
    auto made = home({at_240("heat pump", "Yard")});
    if (year > 0) made.date = Date{year, month, day};
    REQUIRE(letter(kRule, made, "NEC 2023") == outdoors);
    // Of 2020 an amendment of 2022 says the same, where it is adopted.
    REQUIRE(letter(kRule, made, "NEC 2020") == (outdoors == "E" ? "E" : "W"));
    auto const said = found(kRule, made, "NEC 2020").at(0).message;
    REQUIRE((said.find("the amendment of 2022") != std::string::npos) == (outdoors == "N"));
    REQUIRE(letter(kRule, made, "NEC 2017") == "-");
    made.circuits[0].room.clear();
    REQUIRE(letter(kRule, made, "NEC 2023") == unsaid);
    REQUIRE(letter(kRule, made, "NEC 2020") == "W");
    REQUIRE_THAT(found(kRule, made, "NEC 2020").at(0).message, Contains("the unit stands outdoors"));
    made.circuits[0].existing = true;
    made.circuits[0].room = "Yard";
    REQUIRE(letter(kRule, made, "NEC 2023") == (outdoors == "E" ? "W" : "-")); // it stands there already
    made.circuits[0].use = "well pump";                                        // nothing lets that off
    made.circuits[0].existing = false;
    REQUIRE(letter(kRule, made, "NEC 2023") == "E");
    auto window_unit = home({at("air conditioner", "Bedroom", {"5-20R"})});
    REQUIRE(letter(kRule, window_unit, "NEC 2023") == "-");
}

TEST_CASE("gfci-needed: existing work is warned about, judged without [dwelling] too", "[check][gfci]") {
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        REQUIRE(letter(kRule, at("bathroom", "").old(), edition) == "W");
        REQUIRE(letter(kRule, job({at("bathroom", "")}), edition) == "E");
    }
    REQUIRE_THAT(found(kRule, home({at("bathroom", "").old()}), "NEC 2020").at(0).message, Contains("there before"));
    auto const in_dwellings_only = GENERATE(as<std::string>{}, "Laundry", "Basement");
    REQUIRE(letter(kRule, job({at("receptacles", in_dwellings_only)}), "NEC 2023") == "W");
    REQUIRE_THAT(found(kRule, job({at("bathroom", "")}), "NEC 2020").at(0).reference.section, Contains("210.8(B)"));
}

TEST_CASE("gfci-needed: message and fix name place, edition and device", "[check][gfci]") {
    auto const unsaid = found(kRule, home({at("outdoor", "Dock")}), "NEC 2023").at(0);
    REQUIRE_THAT(unsaid.message, Contains("outdoor receptacles") && Contains("NEC 2023 210.8(A)(3)") &&
                                     Contains("whether it has any is not said"));
    REQUIRE_THAT(unsaid.fix, Contains("GFCI breaker") && Contains("first outlet") && Contains("say gfci"));
    REQUIRE(unsaid.where.key == "gfci");
    auto const none = found(kRule, home({at("outdoor", "Dock").gfci(Protection::no)}), "CE 2024").at(0);
    REQUIRE_THAT(none.message, Contains("CE 2024 26-704") && Contains("it has none (gfci = false)"));
    auto const wired = found(kRule, home({at_240("well pump", "Yard")}), "NEC 2023").at(0);
    REQUIRE_THAT(wired.fix, Contains("a two-pole GFCI breaker") && !Contains("receptacle"));
}

TEST_CASE("gfci-needed: a pair that lacks it is one finding, cured by one two-pole breaker", "[check][gfci]") {
    auto const made = home({one_pole("D1").use("outdoor").pair("D", Tie::two_pole_breaker),
                            one_pole("D2").use("outdoor").pair("D", Tie::two_pole_breaker)});
    for (auto const& edition : editions()) REQUIRE(says(kRule, made, edition) == "error D1 D2");
    REQUIRE_THAT(found(kRule, made).at(0).fix, Contains("one two-pole GFCI breaker for D1 and D2"));
    auto half = made;
    half.circuits[0].gfci = Protection::outlet;
    REQUIRE(says(kRule, half) == "error D2");
    REQUIRE_THAT(found(kRule, half).at(0).fix, Contains("after the neutrals part"));
    half.circuits[1].gfci = Protection::outlet;
    REQUIRE(says(kRule, half).empty());
}

TEST_CASE("gfci-needed: the breaker of a feeder protects all behind it, feeders and DC are not judged",
          "[check][gfci]") {
    auto made = job({two_pole("SP").called("Garage panel", "Garage").use("feeder").cable("6/3"),
                     at("garage", "").in("Shed"), one_pole("DC1").use("outdoor").in("Boat")});
    auto shed = made.panels[0];
    shed.name = "Shed";
    shed.supply.reset();
    shed.feeder = typed::FeederName{"Main", "SP"};
    auto boat = made.panels[0];
    boat.name = "Boat";
    boat.supply->kind = SupplyKind::dc_12;
    made.panels.push_back(shed);
    made.panels.push_back(boat);
    REQUIRE(says(kRule, made) == "error K1");
    made.circuits[0].gfci = Protection::breaker;
    REQUIRE(says(kRule, made).empty());
}
