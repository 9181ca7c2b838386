// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The circuits that a dwelling must have, and what may share them, as the NEC has it: 210.11(C)(1) to (4), 210.52(B) to
// (G). Numbers of circuits and amperes as trade pages and worked load examples tell them; what may share a circuit by
// a text of 2023 and a page, of the garage as trade pages on 2017 to 2023 tell it. A laundry is asked for where laundry
// equipment is to stand.
#pragma once

#include "codebook/dwelling.h"
#include "codebook/shared_circuits.h"

namespace legwork::nec {

using namespace how_read;

namespace home {
using enum RoomPlace;
inline constexpr Figure one_seen{1, seen}, two_seen{2, seen}, amps_20{20, seen};

inline constexpr HouseholdCircuits kKitchen{.always = true,
                                            .circuits = two_seen,
                                            .amps = amps_20,
                                            .own = false, // what may share them: CounterCircuit
                                            .with_places = {},
                                            .with_lighting = false,
                                            .with_one_room = false};
inline constexpr HouseholdCircuits kLaundry{.always = false,
                                            .circuits = one_seen,
                                            .amps = amps_20,
                                            .own = true,
                                            .with_places = {utility},
                                            .with_lighting = false,
                                            .with_one_room = false};
// `basins`: only the receptacles at basins and counters need hang on it, others in the bathroom may be elsewhere.
constexpr HouseholdCircuits bath_with(bool basins) {
    return {.always = true,
            .circuits = one_seen,
            .amps = amps_20,
            .own = true,
            .with_places = {},
            .with_lighting = false,
            .with_one_room = true,
            .basins_only = basins};
}
inline constexpr HouseholdCircuits kBath = bath_with(false), kBasins = bath_with(true);
// `others`: lights and the like may hang on the garage's circuit too.
constexpr HouseholdCircuits garage_with(bool others) {
    return {.always = false,
            .circuits = one_seen,
            .amps = amps_20,
            .own = true,
            .with_places = {outdoor, dock, workshop},
            .with_lighting = others,
            .with_one_room = others};
}
inline constexpr HouseholdCircuits kGarageAlone = garage_with(false), kGarage = garage_with(true);
// 210.52(E)(1) is of one- and two-family dwellings; of a flat (E)(2) asks one only where it opens to the ground.
constexpr HouseholdCircuits outdoor_by(Source source) {
    return {.always = true,
            .circuits = {1, source},
            .amps = {},
            .own = false,
            .with_places = {},
            .with_lighting = true,
            .with_one_room = true,
            .in_flats = false};
}
inline constexpr HouseholdCircuits kOutdoor = outdoor_by(seen), kNotedOutdoor = outdoor_by(noted);

// NEC 210.52(B)(1), (2): receptacles of kitchen, pantry, dining room and the like, a refrigerator's among them, no
// lights, nothing fixed in place: a text of 2023, and a page that says so of none in particular.
inline constexpr std::array<std::string_view, 4> kBesideCounter{"refrigerator", "microwave", "freezer", "appliance"};
constexpr CounterCircuit counter_by(Source source) {
    return {.wall_receptacles_count = true,
            .receptacles_most = {},
            .one_receptacle_circuits = {},
            .unsplit_amps = {},
            .with_places = {kitchen, counter, dining},
            .with_uses = kBesideCounter,
            .source = source};
}
inline constexpr CounterCircuit kCounter = counter_by(seen), kNotedCounter = counter_by(noted);

inline constexpr std::array<std::string_view, 6> kBesideFridge{"kitchen counter", "receptacles", "microwave",
                                                               "freezer",         "appliance",   "refrigerator"};
inline constexpr std::array<std::string_view, 7> kBesideMicrowave{
    "kitchen counter", "receptacles", "refrigerator", "oven", "microwave", "range", "appliance"};

using namespace beside;
// Not here: what codes and custom let share (a small heater, a pump and the light over it).
inline constexpr OwnCircuit kOwnRows[] = {
    {"furnace", kHeatAndCooling, false, seen, "need-dedicated/central-heating"},
    {"boiler", kHeatAndCooling, false, seen, "need-dedicated/central-heating"},
    {"vehicle charger", kCars, true, seen, "need-dedicated/vehicle-charger"},
    {"hydromassage tub", {}, true, memory, "need-dedicated/hydromassage"},
    {"refrigerator", kBesideFridge, false, practice, "need-dedicated"},
    {"freezer", kCold, false, practice, "need-dedicated"},
    {"dishwasher", kBesideDishwasher, false, practice, "need-dedicated"},
    {"microwave", kBesideMicrowave, false, practice, "need-dedicated"},
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
// 625.40 of 2023: an outlet above 16 A or 120 V.
constexpr auto own_rows_of_large_chargers() {
    constexpr std::string_view kCharger = "vehicle charger";
    std::array<OwnCircuit, std::size(kOwnRows) + 1> rows{};
    std::ranges::copy(kOwnRows, rows.begin());
    auto& of_240 = *std::ranges::find(rows, kCharger, &OwnCircuit::use);
    rows.back() = of_240;
    of_240.poles = 2;
    rows.back().poles = 1;
    rows.back().above_w = Figure{1920, seen};
    return rows;
}
inline constexpr auto kOwnRowsOfLargeChargers = own_rows_of_large_chargers();
} // namespace home

// What changed is the bathroom and the garage.
constexpr HouseholdTable household(HouseholdCircuits const& bath, HouseholdCircuits const& garage,
                                   HouseholdCircuits const& outdoor) {
    return {.kitchen = home::kKitchen,
            .laundry = home::kLaundry,
            .utility = Silent{},
            .bath = bath,
            .garage = garage,
            .outdoor = outdoor};
}
inline constexpr OwnCircuitTable kOwnCircuits{home::kOwnRows}, kOfLargeChargers{home::kOwnRowsOfLargeChargers};

} // namespace legwork::nec
