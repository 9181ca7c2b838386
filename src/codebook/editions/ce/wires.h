// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Wires, breakers and receptacles as the CE Code (CSA C22.1) has them from 2018 to 2024; each edition says how it came
// by what was not seen of all. Sections of each number: sections.h of the edition.
#pragma once

#include "codebook/ampacity.h"

namespace legwork::ce {

using namespace how_read;

// 14-104(2)
template <Source kAluminium>
inline constexpr std::array kSmallWires{
    SmallWireRow{Gauge::awg14, Metal::copper, 15_A, seen},
    SmallWireRow{Gauge::awg12, Metal::copper, 20_A, seen},
    SmallWireRow{Gauge::awg10, Metal::copper, 30_A, seen},
    SmallWireRow{Gauge::awg12, Metal::aluminium, 15_A, kAluminium},
    SmallWireRow{Gauge::awg10, Metal::aluminium, 25_A, kAluminium},
};

template <Source kBy>
inline constexpr std::array kReceptacles{
    ReceptacleRow{15, 15, 15, kBy}, ReceptacleRow{20, 20, 20, kBy}, ReceptacleRow{30, 30, 30, kBy},
    ReceptacleRow{40, 50, 50, kBy}, ReceptacleRow{50, 50, 50, kBy},
};

inline constexpr RangeDemand kRange{
    // 8-300
    .base_va = {8000, seen}, .base_up_to_va = {12000, seen}, .excess_percent = {40, seen},
    .per_kilowatt = false,   .small_up_to_va = {},           .small_percent = {},
    .large_from_va = {},     .large_least_breaker = {},
};

} // namespace legwork::ce
