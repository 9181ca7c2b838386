// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/uses.h"

#include "catch.h"

using namespace legwork;

TEST_CASE("a use is guessed from the words of a name", "[codebook]") {
    // Source: common practice, no source (how electricians name circuits).
    auto const [name, room, poles, use] = GENERATE(table<std::string, std::string, int, std::string>({
        {"Counter, left of sink", "Kitchen", 1, "kitchen counter"},
        {"Water heater, under stair", "", 2, "water heater"},
        {"Tankless water heater", "", 2, "tankless water heater"},
        {"Dishwasher", "", 1, "dishwasher"},
        {"Washer", "Laundry", 1, "laundry"},
        {"Food waste disposer", "", 1, "disposer"},
        {"Fridge, back wall", "", 1, "refrigerator"},
        {"Bunk room baseboard heaters", "", 2, "baseboard"},
        {"Heat pump", "", 2, "heat pump"},
        {"Irrigation pump, 3 hp", "Pump house", 2, "well pump"},
        {"Hand sink heater", "", 1, "water heater"},
        {"Exhaust fan", "Finishing room", 1, ""},
        {"Bath exhaust fan", "", 1, "bath fan"},
        {"Awning lights", "", 1, "lighting"},
        {"Laundry room lights", "", 1, "lighting"},
        {"Range", "Kitchen", 2, "range"},
        {"Range hood light", "", 1, "lighting"},
        {"Boiler room receptacles", "", 1, "receptacles"},
        {"Laundry room receptacles", "", 1, "laundry"},
        {"Garage receptacles, bench wall", "", 1, "garage"},
        {"Receptacles", "Bathroom", 1, "bathroom"},
        {"Pavilion outdoor outlet, west post", "", 1, "outdoor"},
        {"Hall and stair receptacles", "", 1, "receptacles"},
        {"EV charger", "Garage", 2, "vehicle charger"},
        {"Spare", "", 1, "spare"},
        {"Spare bedroom receptacles", "", 1, "receptacles"},
        {"Rangeley bunk room", "", 1, ""},
        {"Bedroom", "", 1, ""},
        {"Garage door opener", "", 1, "door opener"},
        {"Opener, garage door", "", 1, "door opener"},
        {"Gate opener, driveway", "", 1, "gate operator"},
        {"Pool pump", "", 2, "pool pump"},
        {"Pump for the pool", "", 2, "pool pump"},
        {"Pool heater", "", 2, "pool heater"},
        {"Whirlpool tub", "Bathroom", 1, "hydromassage tub"},
        {"Fountain pump, front garden", "", 1, "outdoor pump"},
        {"Septic pump", "Yard", 1, "outdoor pump"},
        {"Circulation pump", "Boiler room", 1, "pump"},
        {"Attic fan", "", 1, "attic fan"},
        {"Heat pump water heater", "", 2, "heat pump water heater"},
        {"Water heater (heat pump)", "", 2, "heat pump water heater"},
        {"Hybrid water heater", "", 2, "heat pump water heater"},
        {"Electric fireplace", "Living room", 1, "electric fireplace"},
        {"Gas fireplace", "Living room", 1, ""},
        {"Sauna", "", 2, "sauna"},
        {"Sauna outlets", "", 1, "receptacles"},
        {"Sauna lights", "", 1, "lighting"},
        {"Kiln", "Studio", 2, "kiln"},
        {"Central vac", "", 1, "central vacuum"},
        {"Battery charger, golf cart", "Garage", 1, "battery charger"},
        {"Golf cart charger", "Garage", 1, "battery charger"},
        {"EV", "Garage", 2, "vehicle charger"},
        {"Air handler", "Attic", 2, "air handler"},
        {"Mini split indoor unit", "", 2, "air handler"},
        {"Heat pump, indoor head", "", 2, "air handler"},
        {"Mini split", "", 2, "heat pump"},
        {"Bath GFCI", "", 1, "bathroom"},
        {"Garage doors", "", 1, "door opener"},
        {"Receptacle by garage door", "", 1, "garage"},
        {"Spa", "", 2, "hot tub"},
        {"Sewage ejector", "Basement", 1, "pump"},
        {"A.C.", "", 2, "air conditioner"},
        {"A/C", "", 2, "air conditioner"},
        {"AC outlets", "", 1, "receptacles"},
        {"Micro inverters, roof", "", 2, "solar"},
        {"Kitchen island receptacles", "", 1, "kitchen counter"},
        {"Peninsula outlets", "", 1, "kitchen counter"},
        {"Bathroom counter receptacles", "", 1, "bathroom"},
        {"Counter receptacles", "Laundry", 1, "receptacles"},
        {"Receptacle by the furnace", "Basement", 1, "receptacles"},
        {"Receptacles near the water heater", "", 1, "receptacles"},
        {"Under-counter fridge", "", 1, "refrigerator"},
        {"Light over range", "", 1, "lighting"},
        {"Home theater", "", 1, ""},
        {"Chauffe-eau", "", 2, "water heater"},
        {"Éclairage, quai", "", 1, "lighting"},
        {"SÉCHEUSE", "", 2, "dryer"},
        {"Prises, atelier", "", 1, "receptacles"},
        {"Tomacorrientes, taller", "", 1, "receptacles"},
        {"", "", 1, ""},
    }));
    CAPTURE(name, room, poles);
    REQUIRE(guess_use(name, room, poles, {}) == use);
}

TEST_CASE("a guess that contradicts poles or outlets is dropped", "[codebook]") {
    REQUIRE(guess_use("Boot dryer receptacle", "", 1, {}) == "receptacles"); // a dryer is on two poles
    REQUIRE(guess_use("Range", "", 1, {}).empty());
    REQUIRE(guess_use("Range", "", 2, {"5-20R"}).empty());
    REQUIRE(guess_use("Range", "", 2, {"14-50R"}) == "range");
    REQUIRE(guess_use("Dishwasher", "", 2, {}).empty());
    REQUIRE(guess_use("Lights", "Loft", 1, {"5-15R"}).empty());
}

TEST_CASE("every guessed use is in the table, and no bytes upset the guess", "[codebook]") {
    for (Use const& u : uses()) REQUIRE(use_named(u.name) == &u);
    REQUIRE(guess_use(std::string("\0\xff\xfe  ,,", 7), "\x80", 1, {"?"}).empty());
}
