// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/demand_factors.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr auto seen = Source::seen, memory = Source::memory;

// Table 220.42 (2023: 220.45).
constexpr std::array kLighting{DemandBand{3'000, 100, seen}, DemandBand{120'000, 35, seen}, DemandBand{0, 25, seen}};
// 220.82(B), 220.83.
constexpr std::array kNewDwelling{DemandBand{10'000, 100, seen}, DemandBand{0, 40, seen}};
constexpr std::array kExistingDwelling{DemandBand{8'000, 100, seen}, DemandBand{0, 40, seen}};
// Table 220.44 (2023: 220.47).
constexpr std::array kOutlets{DemandBand{10'000, 100, memory}, DemandBand{0, 50, memory}};

// 220.50 with 430.24; what is left out: 220.60.
constexpr MotorLoads kMotor{.percent = {25, seen}, .left_out = memory};

// What changed: 2020 counts only appliances of 500 W and more among the four; 2023 counts a vehicle charger at 7200 VA
// at least.
constexpr DemandFactors nec(std::int64_t fixed_least, std::optional<Figure> vehicle) {
    return {
        .floor = {.amps = {100, seen}, .large_from_m2 = {}, .large_amps = {}, .is_load = false, .of_feeders = false},
        .by_floor =
            FloorLoads{.va_per_ft2 = {3, seen},
                       .va_per_m2 = {33, seen},
                       .area_by = "outside dimensions, without garage, open porches and what cannot be finished",
                       .small_appliance_va = {1500, seen},
                       .small_appliance_least = {2, seen},
                       .laundry_va = {1500, seen},
                       .laundry_least = {1, seen},
                       .bands = kLighting,
                       .fixed_from = {4, seen},
                       .fixed_least_va = {fixed_least, seen},
                       .fixed_percent = {75, seen},
                       .dryer_least_va = {5000, seen},
                       .vehicle_least_va = vehicle,
                       .motor = kMotor},
        .neutral =
            NeutralLoads{.appliance_percent = {70, seen}, .above_amps = {200, seen}, .above_percent = {70, seen}},
        .optional = OptionalLoads{.least_amps = {100, seen},
                                  .bands = kNewDwelling,
                                  .heat_percent = {65, seen},
                                  .many_heat_percent = {40, seen},
                                  .many_from = {4, seen},
                                  .backup_percent = {65, seen}},
        .existing = ExistingLoads{.bands = kExistingDwelling},
        .peak = {.percent = {125, seen}, .year_days = {365, seen}, .recorded_days = Figure{30, seen}},
        .by_blocks = {},
        .listed = {.continuous_percent = {125, seen},
                   .outlet_va = Figure{180, memory},
                   .outlets = kOutlets,
                   .motor = kMotor},
        .drops_half_amps = true,
        .managed_counts_at_limit = true,
    };
}

constexpr std::array kNec{nec(0, std::nullopt), nec(500, std::nullopt), nec(500, Figure{7200, seen})};

// Table 220.54; from 24 dryers on it goes lower, which no building of ours has.
constexpr std::array kDryers{Figure{100, memory}, Figure{100, memory}, Figure{100, memory}, Figure{100, memory},
                             Figure{85, memory},  Figure{75, memory},  Figure{65, memory},  Figure{60, memory},
                             Figure{55, seen},    Figure{50, seen},    Figure{47, seen}};
constexpr int kLastDryers = 23;

// 8-200(1)(a)(vii), 62-118(3).
constexpr std::array kOthers{DemandBand{6'000, 100, seen}, DemandBand{0, 25, seen}};
constexpr std::array kSeparateHeat{DemandBand{10'000, 100, seen}, DemandBand{0, 75, seen}};

// The continuous share is 80 % of the rating (8-104): a continuous load counts at 125 %.
constexpr DemandFactors kCe{
    .floor = {.amps = {60, seen},
              .large_from_m2 = Figure{80, seen},
              .large_amps = Figure{100, seen},
              .is_load = true,
              .of_feeders = true},
    .by_floor = {},
    .neutral = {},
    .optional = {},
    .existing = {},
    .peak = {.percent = {100, memory}, .year_days = {365, memory}, .recorded_days = {}},
    .by_blocks = BlockLoads{.first_m2 = {90, seen},
                            .first_w = {5000, seen},
                            .block_m2 = {90, seen},
                            .block_w = {1000, seen},
                            .area_by = "inside dimensions, all storeys but the basement",
                            .basement_percent = {75, seen},
                            .range_w = {6000, seen},
                            .range_up_to_w = {12'000, seen},
                            .range_excess_percent = {40, seen},
                            .small_up_to_w = {1500, seen},
                            .others_with_range_percent = {25, seen},
                            .others = kOthers,
                            .separate_heat = kSeparateHeat},
    .listed = {.continuous_percent = {125, seen},
               .outlet_va = {},
               .outlets = {},
               .motor = {.percent = {25, memory}, .left_out = {}}},
    .drops_half_amps = false,
    .managed_counts_at_limit = true,
};
} // namespace

DemandFactors const& demand_factors(CodeBook const& book) {
    return book.family == Family::nec ? kNec[book.column] : kCe;
}

Figure dryer_percent(int dryers) {
    auto const n = std::clamp(dryers, 1, kLastDryers);
    auto const rows = static_cast<int>(kDryers.size());
    if (n <= rows) return kDryers[static_cast<std::size_t>(n - 1)];
    return {kDryers.back().value - (n - rows), seen};
}

} // namespace legwork
