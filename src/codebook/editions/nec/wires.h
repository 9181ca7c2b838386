// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Wires, breakers and receptacles as the NEC (NFPA 70) has them from 2017 to 2023. Sections of each number: sections.h
// of the edition.
#pragma once

#include "codebook/ampacity.h"

namespace legwork::nec {

using namespace how_read;

inline constexpr std::array kSmallWires{
    // 240.4(D)
    SmallWireRow{Gauge::awg14, Metal::copper, 15_A, seen},    SmallWireRow{Gauge::awg12, Metal::copper, 20_A, seen},
    SmallWireRow{Gauge::awg10, Metal::copper, 30_A, seen},    SmallWireRow{Gauge::awg12, Metal::aluminium, 15_A, seen},
    SmallWireRow{Gauge::awg10, Metal::aluminium, 25_A, seen},
};

inline constexpr std::array kDwellingFeeders{
    // Table 310.12 (2017: Annex D, example D7)
    DwellingFeederRow{100_A, Gauge::awg4, Gauge::awg2, seen},
    DwellingFeederRow{110_A, Gauge::awg3, Gauge::awg1, seen},
    DwellingFeederRow{125_A, Gauge::awg2, Gauge::awg1_0, seen},
    DwellingFeederRow{150_A, Gauge::awg1, Gauge::awg2_0, seen},
    DwellingFeederRow{175_A, Gauge::awg1_0, Gauge::awg3_0, seen},
    DwellingFeederRow{200_A, Gauge::awg2_0, Gauge::awg4_0, seen},
    DwellingFeederRow{225_A, Gauge::awg3_0, std::nullopt, seen},
    DwellingFeederRow{250_A, Gauge::awg4_0, std::nullopt, seen},
};

// Table 210.21(B)(3) and Table 210.24 (2023: 210.24(1)), which agree. In 2023 the first asks for no less than it says,
// and the second still for no more: of a larger one readings differ.
constexpr auto receptacles(bool larger_disputed) {
    return std::array{
        ReceptacleRow{15, 15, 15, seen, larger_disputed}, ReceptacleRow{20, 15, 20, seen, larger_disputed},
        ReceptacleRow{30, 30, 30, seen, larger_disputed}, ReceptacleRow{40, 40, 50, seen, larger_disputed},
        ReceptacleRow{50, 50, 50, seen, larger_disputed}};
}
inline constexpr auto kReceptacles = receptacles(false), kAtLeastReceptacles = receptacles(true);

inline constexpr RangeDemand kRange{
    // Table 220.55 columns B and C with notes 1, 3 and 4; 210.19(A)(3)
    .base_va = {8000, seen},
    .base_up_to_va = {12000, seen},
    .excess_percent = {5, seen},
    .per_kilowatt = true,
    .small_up_to_va = Figure{8750, seen},
    .small_percent = Figure{80, seen},
    .large_from_va = Figure{8750, seen},
    .large_least_breaker = Figure{40, seen},
};

} // namespace legwork::nec
