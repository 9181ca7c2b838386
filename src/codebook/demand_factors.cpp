// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/demand_factors.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr auto seen = Source::seen, memory = Source::memory;

// Table 220.54; from 24 dryers on it goes lower, which no building of ours has.
constexpr std::array kDryers{Figure{100, memory}, Figure{100, memory}, Figure{100, memory}, Figure{100, memory},
                             Figure{85, memory},  Figure{75, memory},  Figure{65, memory},  Figure{60, memory},
                             Figure{55, seen},    Figure{50, seen},    Figure{47, seen}};
constexpr int kLastDryers = 23;
} // namespace

Figure dryer_percent(int dryers) {
    auto const n = std::clamp(dryers, 1, kLastDryers);
    auto const rows = static_cast<int>(kDryers.size());
    if (n <= rows) return kDryers[static_cast<std::size_t>(n - 1)];
    return {kDryers.back().value - (n - rows), seen};
}

} // namespace legwork
