// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What counts for a service or feeder, as the NEC has it. Sections: load-service of the edition.
#pragma once

#include "codebook/editions/nec/appliances.h"

#include <array>

namespace legwork::nec {

using namespace how_read;

namespace loads {
// Table 220.42 (2023: 220.45).
inline constexpr std::array kLighting{DemandBand{3'000, 100, seen}, DemandBand{120'000, 35, seen},
                                      DemandBand{0, 25, seen}};
// 220.82(B), 220.83.
inline constexpr std::array kNewDwelling{DemandBand{10'000, 100, seen}, DemandBand{0, 40, seen}};
inline constexpr std::array kExistingDwelling{DemandBand{8'000, 100, seen}, DemandBand{0, 40, seen}};
// Table 220.44 (2023: 220.47): of 2023 a text of it and a trade page, of the others the page.
constexpr auto outlets(Source source) { return std::array{DemandBand{10'000, 100, source}, DemandBand{0, 50, source}}; }
inline constexpr auto kOutlets = outlets(noted), kSeenOutlets = outlets(seen);

// 220.50 with 430.24.
constexpr MotorLoads motor(std::optional<Source> left_out) { return {.percent = {25, seen}, .left_out = left_out}; }

} // namespace loads

// The tables of which more was seen in one edition than in another.
struct LoadTables {
    CookingTable const& cooking = kCooking;
    DryerTable const& dryers = kDryers;
    DemandBands outlets = loads::kOutlets;
};
inline constexpr LoadTables kLoadTables, kSeenLoadTables{kSeenCooking, kSeenDryers, loads::kSeenOutlets};

// What changed: 2020 counts only appliances of 500 W and more among the four, and its 220.60 has a sentence on the
// motor of what is left out, which 2017 has not (both texts were seen); 2023 counts a vehicle charger at 7200 VA at
// least.
constexpr DemandFactors demand_factors(std::int64_t fixed_least, std::optional<Figure> vehicle,
                                       std::optional<Source> left_out_motor, LoadTables const& tables) {
    return {
        .floor = {.amps = {100, seen}, .large_from_m2 = {}, .large_amps = {}, .is_load = false, .of_feeders = false},
        .by_floor = FloorLoads{.va_per_ft2 = {3, seen},
                               .va_per_m2 = {33, seen},
                               .area_by = FloorBy::outside,
                               .small_appliance_va = {1500, seen},
                               .small_appliance_least = {2, seen},
                               .laundry_va = {1500, seen},
                               .laundry_least = {1, seen},
                               .bands = loads::kLighting,
                               .fixed_from = {4, seen},
                               .fixed_least_va = {fixed_least, seen},
                               .fixed_percent = {75, seen},
                               .dryer_least_va = {5000, seen},
                               .dryers = tables.dryers,
                               .cooking = tables.cooking,
                               .vehicle_least_va = vehicle,
                               .motor = loads::motor(left_out_motor)},
        .neutral =
            NeutralLoads{.appliance_percent = {70, seen}, .above_amps = {200, seen}, .above_percent = {70, seen}},
        .optional = OptionalLoads{.least_amps = {100, seen},
                                  .bands = loads::kNewDwelling,
                                  .heat_percent = {65, seen},
                                  .many_heat_percent = {40, seen},
                                  .many_from = {4, seen},
                                  .backup_percent = {65, seen}},
        .existing = ExistingLoads{.bands = loads::kExistingDwelling},
        .peak = {.percent = {125, seen}, .year_days = {365, seen}, .recorded_days = Figure{30, seen}},
        .by_blocks = {},
        .listed = {.continuous_percent = {125, seen},
                   .outlet_va = Figure{180, noted},
                   .outlets = tables.outlets,
                   .motor = loads::motor(left_out_motor)},
        .drops_half_amps = true,
        .managed_counts_at_limit = true,
    };
}

} // namespace legwork::nec
