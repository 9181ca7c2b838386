// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Tables that both families share. NEC Table 310.16 (2017: Table 310.15(B)(16)) and CE Tables 2 and 4, harmonised in
// 2012.
#pragma once

#include "codebook/code_book.h"

#include <array>

namespace legwork {

// Read on two pages that agree. Printings before 2011 differ in the smallest sizes.
inline constexpr std::array kAmpacities{
    AmpacityRow{Gauge::awg14, 15, 20, 25, 0, 0, 0},           AmpacityRow{Gauge::awg12, 20, 25, 30, 15, 20, 25},
    AmpacityRow{Gauge::awg10, 30, 35, 40, 25, 30, 35},        AmpacityRow{Gauge::awg8, 40, 50, 55, 35, 40, 45},
    AmpacityRow{Gauge::awg6, 55, 65, 75, 40, 50, 55},         AmpacityRow{Gauge::awg4, 70, 85, 95, 55, 65, 75},
    AmpacityRow{Gauge::awg3, 85, 100, 115, 65, 75, 85},       AmpacityRow{Gauge::awg2, 95, 115, 130, 75, 90, 100},
    AmpacityRow{Gauge::awg1, 110, 130, 145, 85, 100, 115},    AmpacityRow{Gauge::awg1_0, 125, 150, 170, 100, 120, 135},
    AmpacityRow{Gauge::awg2_0, 145, 175, 195, 115, 135, 150}, AmpacityRow{Gauge::awg3_0, 165, 200, 225, 130, 155, 175},
    AmpacityRow{Gauge::awg4_0, 195, 230, 260, 150, 180, 205},
};

// NEC 240.6(A); CE Table 13 has the same steps: two lists that agree, neither of a named edition.
inline constexpr std::array kStandardBreakers{15,  20,  25,  30,  35,  40,  45,  50,  60,  70,  80, 90,
                                              100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400};
// NEC 2023 adds a breaker of 10 A, for lighting and little else; no wire of ours is smaller than it allows.
inline constexpr std::array kStandardBreakers2023{10, 15,  20,  25,  30,  35,  40,  45,  50,  60,  70,  80,
                                                  90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400};

} // namespace legwork
