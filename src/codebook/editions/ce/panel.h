// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Panels and runs as the CE Code has them from 2018 to 2024.
#pragma once

#include "codebook/backfeed.h"
#include "codebook/demands.h"
#include "codebook/drop_limits.h"
#include "codebook/outbuilding.h"
#include "codebook/outlet_count.h"
#include "codebook/positions.h"

#include <array>

namespace legwork::ce {

using namespace how_read;

// 64-112(4): the ratings of the overcurrent devices that supply the bus.
template <Source kBy>
inline constexpr BackfeedTable kBackfeed{
    .bus_percent = {120, kBy},
    .dwelling_bus_percent = {125, kBy},
    .output_percent = {},
    .all_breakers = {},
};

constexpr DropLimits drop_limits(std::string_view dwelling_lengths, Source by) {
    return {.part_percent = {3, seen},
            .total_percent = {5, seen},
            .unknown_percent = {80, seen},
            .demanded = true,
            .dwelling_lengths = dwelling_lengths,
            .dwelling_lengths_source = by};
}
inline constexpr auto kDropLimits2018 = drop_limits("8-102(3), Table 68 (number from memory)", memory);
inline constexpr auto kDropLimits = drop_limits("8-102(3), Table 68", seen);

inline constexpr Demands kDemands2018{
    .every_pair_off_together = false, .tied_singles_count = false, .names_outlive_people = false, .up_is_on = false};
inline constexpr Demands kDemands{.every_pair_off_together = false,
                                  .tied_singles_count = false,
                                  .names_outlive_people = false,
                                  .up_is_on = false,
                                  .singles_that_count = "two one-pole breakers whose handles a device of their maker "
                                                        "joins and each of which is rated for all the volts of the "
                                                        "circuit"};

inline constexpr OutbuildingSupplies kOutbuilding{
    .one_only = false, .feeders_from_one_panel = {1, practice}, .other_volts = {1, practice}};

// Since 2021; before: ce_2018/tables.h. 8-304(1): where a device is marked for its whole rating, 15 and 20.
inline constexpr std::array kOutletRows{OutletCount{15_A, 12, seen}, OutletCount{20_A, 16, seen}};
inline constexpr OutletCounts kOutletCounts{kOutletRows};

// Since 2021: 8-108(1), (2). The number of positions is left to whoever chooses the panel.
inline constexpr PositionsTable kPositions{
    .rows = {}, .left_free = 4, .left_free_in_flat = 2, .room_for_two_pole = true, .when_new = true, .source = seen};

} // namespace legwork::ce
