// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "toml/key.h"

#include <array>

namespace legwork {

inline constexpr int kMostOfAHome = 40; // circuits or thermostats of one kind

inline constexpr std::array kPeakKeys = std::to_array<Key>({
    {.name = "amps",
     .takes = Takes::current,
     .example = R"("62 A")",
     .help = "The largest that was read",
     .needed = true},
    {.name = "days",
     .takes = Takes::count,
     .example = "365",
     .help = "Over how many days it was read: 365 of a year's metering, or those of a recorder that hung there",
     .least = 1,
     .most = 3660,
     .needed = true},
});
inline constexpr KeyTable kPeakTable{"dwelling.peak", "peak of [dwelling]",
                                     "The largest draw of the service, over some time", kPeakKeys};

inline constexpr std::array kEnergyManagementKeys = std::to_array<Key>({
    {.name = "limit",
     .takes = Takes::current,
     .example = R"("40 A")",
     .help = "What the device is set to",
     .needed = true},
    {.name = "circuits",
     .takes = Takes::circuits,
     .example = R"(["EV"])",
     .help = "What it holds back, by the marks; at least one",
     .least = 1,
     .needed = true},
});
inline constexpr KeyTable kEnergyManagementTable{"dwelling.energy_management", "energy_management of [dwelling]",
                                                 "A device that holds circuits back to a limit together",
                                                 kEnergyManagementKeys};

inline constexpr std::array kDwellingKeys = std::to_array<Key>({
    {.name = "area",
     .takes = Takes::area,
     .example = R"("64 m²")",
     .help =
         "NEC: by outside dimensions, without garage and open porches; CE: by inside dimensions, without the basement"},
    {.name = "basement",
     .takes = Takes::area,
     .example = R"("40 m²")",
     .help = "CE: where one can stand up in it, at 75 %; NEC: only if it is finished, in full"},
    {.name = "small_appliance_circuits",
     .takes = Takes::count,
     .example = "2",
     .help = "All there are, where they are not all in the list",
     .most = kMostOfAHome,
     .otherwise = "those of the list"},
    {.name = "laundry_circuits",
     .takes = Takes::count,
     .example = "1",
     .help = "All there are, where they are not all in the list",
     .most = kMostOfAHome,
     .otherwise = "those of the list"},
    {.name = "thermostats",
     .takes = Takes::count,
     .example = "5",
     .help = "Rooms whose electric heat has a control of its own",
     .most = kMostOfAHome},
    {.name = "together",
     .takes = Takes::groups_of_loads,
     .example = R"([["heating", "air conditioner"]])",
     .help = "Loads that do run at the same time though they heat and cool"},
    {.name = "peak",
     .takes = Takes::table,
     .example = R"({ amps = "62 A", days = 365 })",
     .help = "The largest draw of an existing service",
     .table = &kPeakTable},
    {.name = "energy_management",
     .takes = Takes::table,
     .example = R"({ limit = "40 A", circuits = ["EV"] })",
     .help = "A device that holds circuits back to a limit together",
     .table = &kEnergyManagementTable},
});
inline constexpr KeyTable kDwellingTable{"dwelling", "[dwelling]",
                                         "A house, a cabin or a flat: what its load calculation asks", kDwellingKeys};

} // namespace legwork
