// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What may share a circuit with a use that wants its own, where both families say or leave the same.
#pragma once

#include <array>
#include <string_view>

namespace legwork::beside {

inline constexpr std::array<std::string_view, 9> kHeatAndCooling{"furnace",   "boiler",        "air handler",
                                                                 "heat pump", "backup heat",   "baseboard",
                                                                 "heating",   "floor heating", "air conditioner"};
inline constexpr std::array<std::string_view, 6> kCooking{"range",     "cooktop",   "oven",
                                                          "microwave", "appliance", "heating"};
inline constexpr std::array<std::string_view, 3> kCold{"refrigerator", "freezer", "appliance"};
inline constexpr std::array<std::string_view, 3> kBesideDishwasher{"dishwasher", "disposer", "appliance"};
inline constexpr std::array<std::string_view, 3> kBesideDryer{"dryer", "laundry", "appliance"};
inline constexpr std::array<std::string_view, 4> kHotWater{"water heater", "heat pump water heater",
                                                           "tankless water heater", "appliance"};
inline constexpr std::array<std::string_view, 1> kCars{"vehicle charger"};
inline constexpr std::array<std::string_view, 4> kTubs{"hot tub", "heating", "pool pump", "pool heater"};

} // namespace legwork::beside
