// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Wires, breakers and receptacles as the CE Code (CSA C22.1) has them from 2018 to 2024. Sections of each number:
// sections.h of the edition.
#pragma once

#include "codebook/ampacity.h"

namespace legwork::ce {

using namespace how_read;

inline constexpr std::array kSmallWires{
    // 14-104(2)
    SmallWireRow{Gauge::awg14, Metal::copper, 15_A, seen},
    SmallWireRow{Gauge::awg12, Metal::copper, 20_A, seen},
    SmallWireRow{Gauge::awg10, Metal::copper, 30_A, seen},
    SmallWireRow{Gauge::awg12, Metal::aluminium, 15_A, memory},
    SmallWireRow{Gauge::awg10, Metal::aluminium, 25_A, memory},
};

inline constexpr std::array kDwellingFeeders{
    // Table 39
    DwellingFeederRow{60_A, Gauge::awg6, std::nullopt, memory},
    DwellingFeederRow{100_A, std::nullopt, Gauge::awg2, memory},
    DwellingFeederRow{200_A, Gauge::awg2_0, Gauge::awg4_0, memory},
};

inline constexpr std::array kReceptacles{
    ReceptacleRow{15, 15, 15, memory}, ReceptacleRow{20, 20, 20, memory}, ReceptacleRow{30, 30, 30, memory},
    ReceptacleRow{40, 50, 50, memory}, ReceptacleRow{50, 50, 50, memory},
};

inline constexpr RangeDemand kRange{
    // 8-300
    .base_va = {8000, seen}, .base_up_to_va = {12000, seen}, .excess_percent = {40, seen},
    .per_kilowatt = false,   .small_up_to_va = {},           .small_percent = {},
    .large_from_va = {},     .large_least_breaker = {},
};

} // namespace legwork::ce
