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

// 64-112(4), from memory: the ratings of the overcurrent devices that supply the bus.
inline constexpr BackfeedTable kBackfeed{
    .bus_percent = {120, memory},
    .dwelling_bus_percent = {125, memory},
    .output_percent = {},
    .all_breakers = {},
};

inline constexpr DropLimits kDropLimits{
    .part_percent = {3, seen},
    .total_percent = {5, seen},
    .unknown_percent = {80, seen},
    .demanded = true,
    .dwelling_lengths = "8-102(3), Table 68 (number from memory)",
};

inline constexpr Demands kDemands{
    .every_pair_off_together = false, .tied_singles_count = false, .names_outlive_people = false, .up_is_on = false};

inline constexpr OutbuildingSupplies kOutbuilding{
    .one_only = false, .feeders_from_one_panel = {1, practice}, .other_volts = {1, practice}};

// 8-304(1)(a), as a trade quiz of 2025 tells it: 12 on a two-wire branch circuit, unless the load is known.
inline constexpr OutletCount kOutletCount{15_A, 12, seen};

// 8-108, read in the text of 2015; taken to stand in 2018, 2021 and 2024. Of the apartments of a building fewer are
// asked: this is the table of a single dwelling.
inline constexpr std::array kPositionRows{
    PositionsRow{60_A, 16, 16},
    PositionsRow{100_A, 24, 24},
    PositionsRow{125_A, 30, 24},
    PositionsRow{200_A, 40, 30},
};
inline constexpr PositionsTable kPositions{.rows = kPositionRows, .left_free = 2, .source = seen};

} // namespace legwork::ce
