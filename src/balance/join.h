// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Several situations: the two halves of the decisions met in the middle.
//
// Minimised: the worst |D| over the situations. A state is a pair of boxes, one of each half's tree, holding all the
// pairs of half-choices whose D are in them; their sums bound |D| from below. A branch is cut when that bound is not
// below the best found, or when no pair of it has a count of singles that the legs can take. When nothing is left,
// every pair was looked at or cut: that is the proof. Cost: about 2^(N/2) N/2 to list and sort, and a join that grows
// with the number of situations.
//
// Ties: the first in the order of the trees, which depends on the job alone.
#pragma once

#include "balance/effort.h"
#include "balance/half_list.h"

#include <functional>

namespace legwork {

struct Join {
    HalfList const& left;
    HalfList const& right;
    int least_on_a, most_on_a;
    Effort& effort;
};

// Calls `found(worst, i, j)` for pairs with a worst |D| below the limit; what it returns is the limit from then on (not
// above the old one). Every pair below the limit of its moment is shown. False when the effort ended first.
using Found = std::function<std::int64_t(std::int64_t worst, std::size_t left, std::size_t right)>;
bool join(Join const& halves, std::int64_t limit, Found const& found);

} // namespace legwork
