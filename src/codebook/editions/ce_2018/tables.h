// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What CE 2018 has and later editions do not: smaller wires for the feeder of a dwelling, a least number of positions
// in its panel, twelve outlets on a circuit of 20 A as on one of 15 A.
#pragma once

#include "codebook/outlet_count.h"
#include "codebook/positions.h"

#include <array>

namespace legwork::ce_2018 {

using namespace how_read;

// Table 39.
inline constexpr std::array kDwellingFeeders{
    DwellingFeederRow{60_A, Gauge::awg6, std::nullopt, memory},
    DwellingFeederRow{100_A, std::nullopt, Gauge::awg2, memory},
    DwellingFeederRow{200_A, Gauge::awg2_0, Gauge::awg4_0, memory},
};

// 8-304(1)(a), as a trade quiz tells it; that 20 A are no more, as a page on what changed in 2021 does.
inline constexpr std::array kOutletRows{OutletCount{15_A, 12, seen}, OutletCount{20_A, 12, noted}};
inline constexpr OutletCounts kOutletCounts{kOutletRows};

// 8-108, read in the text of 2015 only. Of the apartments of a building fewer are asked: this is the table of a single
// dwelling.
inline constexpr std::array kPositionRows{
    PositionsRow{60_A, 16, 16},
    PositionsRow{100_A, 24, 24},
    PositionsRow{125_A, 30, 24},
    PositionsRow{200_A, 40, 30},
};
inline constexpr PositionsTable kPositions{.rows = kPositionRows,
                                           .left_free = 2,
                                           .left_free_in_flat = 2,
                                           .room_for_two_pole = false,
                                           .when_new = false,
                                           .source = memory};

} // namespace legwork::ce_2018
