// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/dwelling.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
using enum RoomPlace;
constexpr auto seen = Source::seen, memory = Source::memory, practice = Source::practice;
constexpr Figure one_seen{1, seen}, one_memory{1, memory}, two_seen{2, seen}, amps_20{20, seen};

using Parts = std::array<HouseholdCircuits, 5>; // by Household

// NEC 210.11(C)(1) to (4), 210.52(B) to (G). Numbers of circuits and amperes as trade pages and worked load examples
// tell them; what may share a circuit from memory, of the garage as trade pages on 2017 to 2023 tell it. A laundry is
// asked for where laundry equipment is to stand.
constexpr HouseholdCircuits nec_garage(bool others) {
    return {.always = false,
            .circuits = one_seen,
            .amps = amps_20,
            .own = true,
            .with_places = {outdoor, dock, workshop},
            .with_lighting = others,
            .with_one_room = others};
}
constexpr Parts nec(HouseholdCircuits const& garage_circuits) {
    return {HouseholdCircuits{.always = true,
                              .circuits = two_seen,
                              .amps = amps_20,
                              .own = false, // what may share them: CounterCircuit
                              .with_places = {},
                              .with_lighting = false,
                              .with_one_room = false},
            HouseholdCircuits{.always = false,
                              .circuits = one_seen,
                              .amps = amps_20,
                              .own = true,
                              .with_places = {utility},
                              .with_lighting = false,
                              .with_one_room = false},
            HouseholdCircuits{.always = true,
                              .circuits = one_seen,
                              .amps = amps_20,
                              .own = true,
                              .with_places = {},
                              .with_lighting = false,
                              .with_one_room = true},
            garage_circuits,
            HouseholdCircuits{.always = true,
                              .circuits = one_memory,
                              .amps = {},
                              .own = false,
                              .with_places = {},
                              .with_lighting = true,
                              .with_one_room = true}};
}
constexpr std::array<Parts, 3> kNec{nec(nec_garage(false)), nec(nec_garage(false)), nec(nec_garage(true))};

// CE 26-650 to 26-656, 26-720 to 26-724. Kitchen and bathroom as trade pages tell them, the rest from memory.
constexpr Parts kCe{HouseholdCircuits{.always = true,
                                      .circuits = two_seen,
                                      .amps = {},
                                      .own = false, // what may share them: CounterCircuit
                                      .with_places = {},
                                      .with_lighting = false,
                                      .with_one_room = false},
                    HouseholdCircuits{.always = false,
                                      .circuits = one_memory,
                                      .amps = {},
                                      .own = true,
                                      .with_places = {utility},
                                      .with_lighting = false,
                                      .with_one_room = false},
                    HouseholdCircuits{.always = false,
                                      .circuits = one_seen,
                                      .amps = {},
                                      .own = false,
                                      .with_places = {},
                                      .with_lighting = true,
                                      .with_one_room = true},
                    HouseholdCircuits{.always = false,
                                      .circuits = one_memory,
                                      .amps = {},
                                      .own = true,
                                      .with_places = {workshop},
                                      .with_lighting = true,
                                      .with_one_room = true},
                    HouseholdCircuits{.always = true,
                                      .circuits = one_memory,
                                      .amps = {},
                                      .own = true,
                                      .with_places = {dock, eaves, hot_tub, boathouse},
                                      .with_lighting = true,
                                      .with_one_room = true}};

// NEC 210.52(B)(1), (2): receptacles of kitchen, pantry, dining room and the like, a refrigerator's among them, no
// lights, nothing fixed in place; from memory.
constexpr std::array<std::string_view, 4> kNecBesideCounter{"refrigerator", "microwave", "freezer", "appliance"};
constexpr CounterCircuit kNecCounter{.wall_receptacles_count = true,
                                     .receptacles_most = {},
                                     .one_receptacle_circuits = {},
                                     .unsplit_amps = {},
                                     .with_places = {kitchen, counter, dining},
                                     .with_uses = kNecBesideCounter,
                                     .source = memory};
// CE 26-722(d), 26-654: two receptacles a circuit and nothing else, on 15 A split between two hots or on 20 A; as trade
// pages tell it.
constexpr CounterCircuit kCeCounter{.wall_receptacles_count = false,
                                    .receptacles_most = Figure{2, seen},
                                    .one_receptacle_circuits = Figure{1, seen},
                                    .unsplit_amps = Figure{20, seen},
                                    .with_places = {kitchen, counter},
                                    .with_uses = {},
                                    .source = seen};

constexpr std::array<std::string_view, 8> kHeatAndCooling{"furnace",   "boiler",  "heat pump",     "backup heat",
                                                          "baseboard", "heating", "floor heating", "air conditioner"};
constexpr std::array<std::string_view, 6> kCooking{"range", "cooktop", "oven", "microwave", "appliance", "heating"};
constexpr std::array<std::string_view, 3> kCold{"refrigerator", "freezer", "appliance"};
constexpr std::array<std::string_view, 6> kNecBesideFridge{"kitchen counter", "receptacles", "microwave",
                                                           "freezer",         "appliance",   "refrigerator"};
constexpr std::array<std::string_view, 3> kBesideDishwasher{"dishwasher", "disposer", "appliance"};
constexpr std::array<std::string_view, 7> kNecBesideMicrowave{"kitchen counter", "receptacles", "refrigerator", "oven",
                                                              "microwave",       "range",       "appliance"};
constexpr std::array<std::string_view, 3> kCeBesideMicrowave{"microwave", "oven", "range"};
constexpr std::array<std::string_view, 3> kBesideDryer{"dryer", "laundry", "appliance"};
constexpr std::array<std::string_view, 3> kHotWater{"water heater", "tankless water heater", "appliance"};
constexpr std::array<std::string_view, 1> kCars{"vehicle charger"};
constexpr std::array<std::string_view, 2> kTubs{"hot tub", "heating"};

// Not here: what codes and custom let share (a small heater under the NEC, a pump and the light over it).
constexpr OwnCircuit kNecOwn[] = {
    {"furnace", kHeatAndCooling, false, seen, "need-dedicated/central-heating"},
    {"boiler", kHeatAndCooling, false, seen, "need-dedicated/central-heating"},
    {"vehicle charger", kCars, true, memory, "need-dedicated/vehicle-charger"},
    {"refrigerator", kNecBesideFridge, false, practice, "need-dedicated"},
    {"freezer", kCold, false, practice, "need-dedicated"},
    {"dishwasher", kBesideDishwasher, false, practice, "need-dedicated"},
    {"microwave", kNecBesideMicrowave, false, practice, "need-dedicated"},
    {"range", kCooking, true, practice, "need-dedicated"},
    {"cooktop", kCooking, false, practice, "need-dedicated"},
    {"oven", kCooking, false, practice, "need-dedicated"},
    {"dryer", kBesideDryer, true, practice, "need-dedicated"},
    {"water heater", kHotWater, false, practice, "need-dedicated"},
    {"tankless water heater", kHotWater, false, practice, "need-dedicated"},
    {"sump pump", {}, false, practice, "need-dedicated"},
    {"heat pump", kHeatAndCooling, false, practice, "need-dedicated"},
    {"hot tub", kTubs, false, practice, "need-dedicated"},
};
constexpr OwnCircuit kCeOwn[] = {
    {"refrigerator", kCold, true, memory, "need-dedicated/refrigerator"},
    {"microwave", kCeBesideMicrowave, true, memory, "need-dedicated/microwave"},
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
    {"tankless water heater", kHotWater, false, practice, "need-dedicated"},
    {"sump pump", {}, false, practice, "need-dedicated"},
    {"heat pump", kHeatAndCooling, false, practice, "need-dedicated"},
    {"hot tub", kTubs, false, practice, "need-dedicated"},
};
} // namespace

HouseholdCircuits const& household_circuits(CodeBook const& book, Household part) {
    auto const at = static_cast<std::size_t>(part);
    return book.family == Family::nec ? kNec[book.column][at] : kCe[at];
}

CounterCircuit const& counter_circuit(CodeBook const& book) {
    return book.family == Family::nec ? kNecCounter : kCeCounter;
}

OwnCircuit const* own_circuit(CodeBook const& book, std::string_view use) {
    auto const rows = book.family == Family::nec ? std::span<OwnCircuit const>(kNecOwn) : kCeOwn;
    auto const at = std::ranges::find(rows, use, &OwnCircuit::use);
    return at == rows.end() ? nullptr : &*at;
}

} // namespace legwork
