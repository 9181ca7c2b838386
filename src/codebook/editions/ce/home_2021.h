// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The circuits that a dwelling must have, and what may share them, as the CE Code has it since 2021: 26-654, 26-656,
// 26-746, 26-806. Notes on 2021 state them; of 2024 they were not seen. So each edition says how it came by them.
#pragma once

#include "codebook/editions/ce/dwelling.h"

namespace legwork::ce {

namespace home_2021 {
using enum RoomPlace;

// 26-654(b), (c): the laundry's receptacles and those of a utility room, each on a circuit that feeds nothing else.
constexpr HouseholdCircuits alone(Source by) {
    return {.always = false,
            .circuits = {1, by},
            .amps = {},
            .own = true,
            .with_places = {},
            .with_lighting = false,
            .with_one_room = false};
}

// 26-656(h): the garage's lights and door opener may share its circuit.
constexpr HouseholdCircuits in_garage(Source by) {
    auto asked = home::kGarage;
    asked.circuits.source = by;
    return asked;
}

// 26-656(g), 26-724(a): of single dwellings; unlike the garage's, no light is let on that circuit.
constexpr HouseholdCircuits outdoors(Source by) {
    return {.always = true,
            .circuits = {1, by},
            .amps = {},
            .own = true,
            .with_places = {dock, eaves, hot_tub, boathouse},
            .with_lighting = false,
            .with_one_room = false,
            .in_flats = false};
}

template <Source kBy>
inline constexpr HouseholdCircuits kAlone = alone(kBy);
template <Source kBy>
inline constexpr HouseholdCircuits kGarage = in_garage(kBy);
template <Source kBy>
inline constexpr HouseholdCircuits kOutdoors = outdoors(kBy);

using namespace beside;
// Two built-in cooking units count as one appliance: 26-746(3).
inline constexpr std::array<std::string_view, 5> kCookingTogether{"range", "cooktop", "oven", "appliance", "heating"};

// 26-746(1): a heating or cooking appliance of more than 1500 W.
constexpr OwnCircuit large_appliance(std::string_view use, std::span<std::string_view const> with, bool one_outlet,
                                     Source by) {
    return {use, with, one_outlet, by, "need-dedicated/cooking", 0, Figure{1500, by}};
}

constexpr auto own_rows(Source by, Source charger) {
    return std::to_array<OwnCircuit>({
        // 26-654(a): but for a clock's recessed receptacle
        {"refrigerator", {}, true, by, "need-dedicated/refrigerator"},
        // 26-654(d)
        {"microwave", {}, true, by, "need-dedicated/microwave", 0, {}, "in a cupboard or enclosure", {counter}},
        {"central vacuum", {}, false, seen, "need-dedicated/central-vacuum"},
        // 26-806 is of what burns fuel, whose circuit has one pole; one that heats by electricity goes by 62-110
        {"furnace", kHeatAndCooling, false, by, "need-dedicated/central-heating", 1},
        {"boiler", kHeatAndCooling, false, by, "need-dedicated/central-heating", 1},
        {"furnace", kHeatAndCooling, false, by, "need-dedicated/heating", 2},
        {"boiler", kHeatAndCooling, false, by, "need-dedicated/heating", 2},
        {"baseboard", kHeatAndCooling, false, by, "need-dedicated/heating"},
        {"heating", kHeatAndCooling, false, by, "need-dedicated/heating"},
        {"floor heating", kHeatAndCooling, false, by, "need-dedicated/heating"},
        {"vehicle charger", kCars, true, charger, "need-dedicated/vehicle-charger"},
        large_appliance("range", kCookingTogether, true, by),
        large_appliance("cooktop", kCookingTogether, false, by),
        large_appliance("oven", kCookingTogether, false, by),
        large_appliance("dryer", kBesideDryer, true, by),
        large_appliance("water heater", {}, false, by),
        large_appliance("tankless water heater", {}, false, by),
        {"freezer", kCold, false, practice, "need-dedicated"},
        {"dishwasher", kBesideDishwasher, false, practice, "need-dedicated"},
        {"sump pump", {}, false, practice, "need-dedicated"},
        {"heat pump", kHeatAndCooling, false, practice, "need-dedicated"},
        {"hot tub", kTubs, false, practice, "need-dedicated"},
    });
}
template <Source kBy, Source kCharger>
inline constexpr auto kOwnRows = own_rows(kBy, kCharger);
} // namespace home_2021

template <Source kBy>
inline constexpr HouseholdTable kHousehold2021{.kitchen = home::kKitchen,
                                               .laundry = home_2021::kAlone<kBy>,
                                               .utility = home_2021::kAlone<kBy>,
                                               .bath = home::kBath,
                                               .garage = home_2021::kGarage<kBy>,
                                               .outdoor = home_2021::kOutdoors<kBy>};
template <Source kBy, Source kCharger>
inline constexpr OwnCircuitTable kOwnCircuits2021{home_2021::kOwnRows<kBy, kCharger>};

} // namespace legwork::ce
