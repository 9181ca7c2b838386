// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The circuits that a dwelling must have, and what may share them, as the CE Code has it: 26-650 to 26-656, 26-720 to
// 26-724. Kitchen and bathroom as trade pages tell them, the rest from memory and as CE 2018 is taken to have it; since
// 2021: home_2021.h.
#pragma once

#include "codebook/dwelling.h"
#include "codebook/shared_circuits.h"

namespace legwork::ce {

using namespace how_read;

namespace home {
using enum RoomPlace;
inline constexpr Figure one_seen{1, seen}, one_memory{1, memory}, two_seen{2, seen};

inline constexpr HouseholdCircuits kKitchen{.always = true,
                                            .circuits = two_seen,
                                            .amps = {},
                                            .own = false, // what may share them: CounterCircuit
                                            .with_places = {},
                                            .with_lighting = false,
                                            .with_one_room = false};
inline constexpr HouseholdCircuits kLaundry{.always = false,
                                            .circuits = one_memory,
                                            .amps = {},
                                            .own = true,
                                            .with_places = {utility},
                                            .with_lighting = false,
                                            .with_one_room = false};
inline constexpr HouseholdCircuits kBath{.always = false,
                                         .circuits = one_seen,
                                         .amps = {},
                                         .own = false,
                                         .with_places = {},
                                         .with_lighting = true,
                                         .with_one_room = true};
inline constexpr HouseholdCircuits kGarage{.always = false,
                                           .circuits = one_memory,
                                           .amps = {},
                                           .own = true,
                                           .with_places = {workshop},
                                           .with_lighting = true,
                                           .with_one_room = true};
inline constexpr HouseholdCircuits kOutdoor{.always = true,
                                            .circuits = one_memory,
                                            .amps = {},
                                            .own = true,
                                            .with_places = {dock, eaves, hot_tub, boathouse},
                                            .with_lighting = true,
                                            .with_one_room = true};

// CE 26-722(d), 26-654: two receptacles a circuit and nothing else, on 15 A split between two hots or on 20 A; as trade
// pages tell it.
inline constexpr CounterCircuit kCounter{.wall_receptacles_count = false,
                                         .receptacles_most = Figure{2, seen},
                                         .one_receptacle_circuits = Figure{1, seen},
                                         .unsplit_amps = Figure{20, seen},
                                         .with_places = {kitchen, counter},
                                         .with_uses = {},
                                         .source = seen};

inline constexpr std::array<std::string_view, 3> kBesideMicrowave{"microwave", "oven", "range"};

using namespace beside;
inline constexpr OwnCircuit kOwnRows[] = {
    {"refrigerator", kCold, true, memory, "need-dedicated/refrigerator"},
    {"microwave", kBesideMicrowave, true, memory, "need-dedicated/microwave"},
    {"central vacuum", {}, false, seen, "need-dedicated/central-vacuum"},
    {"furnace", kHeatAndCooling, false, memory, "need-dedicated/central-heating"},
    {"boiler", kHeatAndCooling, false, memory, "need-dedicated/central-heating"},
    {"baseboard", kHeatAndCooling, false, memory, "need-dedicated/heating"},
    {"heating", kHeatAndCooling, false, memory, "need-dedicated/heating"},
    {"floor heating", kHeatAndCooling, false, memory, "need-dedicated/heating"},
    {"vehicle charger", kCars, true, memory, "need-dedicated/vehicle-charger"},
    {"freezer", kCold, false, practice, "need-dedicated"},
    {"dishwasher", kBesideDishwasher, false, practice, "need-dedicated"},
    {"range", kCooking, true, practice, "need-dedicated"},
    {"cooktop", kCooking, false, practice, "need-dedicated"},
    {"oven", kCooking, false, practice, "need-dedicated"},
    {"dryer", kBesideDryer, true, practice, "need-dedicated"},
    {"water heater", kHotWater, false, practice, "need-dedicated"},
    {"heat pump water heater", kHotWater, false, practice, "need-dedicated"},
    {"tankless water heater", kHotWater, false, practice, "need-dedicated"},
    {"sump pump", {}, false, practice, "need-dedicated"},
    {"heat pump", kHeatAndCooling, false, practice, "need-dedicated"},
    {"air handler", kHeatAndCooling, false, practice, "need-dedicated"},
    {"hot tub", kTubs, false, practice, "need-dedicated"},
};
} // namespace home

inline constexpr HouseholdTable kHousehold{.kitchen = home::kKitchen,
                                           .laundry = home::kLaundry,
                                           .utility = Silent{},
                                           .bath = home::kBath,
                                           .garage = home::kGarage,
                                           .outdoor = home::kOutdoor};
inline constexpr OwnCircuitTable kOwnCircuits{home::kOwnRows};

} // namespace legwork::ce
