// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What counts for a service or feeder, as the CE Code has it. Sections: load-service of the edition.
#pragma once

#include "codebook/demand_factors.h"

#include <array>

namespace legwork::ce {

using namespace how_read;

namespace loads {
// 8-200(1)(a)(vii), 62-118(3).
inline constexpr std::array kOthers{DemandBand{6'000, 100, seen}, DemandBand{0, 25, seen}};
inline constexpr std::array kSeparateHeat{DemandBand{10'000, 100, seen}, DemandBand{0, 75, seen}};

} // namespace loads

// The continuous share is 80 % of the rating (8-104): a continuous load counts at 125 %. `kMeasured`: the load of the
// last year stands for what is there, 8-106(8); `kMotor`: 28-108.
template <Source kMeasured, Source kMotor>
inline constexpr DemandFactors kDemandFactors{
    .floor = {.amps = {60, seen},
              .large_from_m2 = Figure{80, seen},
              .large_amps = Figure{100, seen},
              .is_load = true,
              .of_feeders = true},
    .by_floor = {},
    .neutral = {},
    .optional = {},
    .existing = {},
    .peak = {.percent = {100, kMeasured}, .year_days = {365, kMeasured}, .recorded_days = {}},
    .by_blocks = BlockLoads{.first_m2 = {90, seen},
                            .first_w = {5000, seen},
                            .block_m2 = {90, seen},
                            .block_w = {1000, seen},
                            .area_by = FloorBy::inside,
                            .basement_percent = {75, seen},
                            .range_w = {6000, seen},
                            .range_up_to_w = {12'000, seen},
                            .range_excess_percent = {40, seen},
                            .small_up_to_w = {1500, seen},
                            .others_with_range_percent = {25, seen},
                            .others = loads::kOthers,
                            .separate_heat = loads::kSeparateHeat},
    .listed = {.continuous_percent = {125, seen},
               .outlet_va = {},
               .outlets = {},
               .motor = {.percent = {25, kMotor}, .left_out = {}}},
    .drops_half_amps = false,
    .managed_counts_at_limit = true,
};

} // namespace legwork::ce
