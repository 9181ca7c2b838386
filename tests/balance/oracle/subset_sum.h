// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every reachable sum of leg A, one bit each: the third judge, for one situation and any number of spaces.
#pragma once

#include "balance/oracle/homes.h"

namespace legwork::oracle {

// The trade-off for up to `moves` moves, where it drops. One situation; all |d| together under 131 072 VA.
std::vector<Step> subset_sum(Legs const& legs, int moves);
// The least imbalance with any number of moves.
std::int64_t subset_sum_least(Legs const& legs);

} // namespace legwork::oracle
