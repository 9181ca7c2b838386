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
// With moves there is a limit for each number of them, never more for more moves; a box is held against the limit of
// the fewest moves in it.
//
// Ties: the first in the order of the trees, which depends on the job alone.
#pragma once

#include "balance/effort.h"
#include "balance/legs/half_list.h"

#include <functional>

namespace legwork {

// Pairs wanted: below the limit of their moves. Entry m: of m moves; pairs of more than all entries, or of not more
// than `done`, are not.
struct Limits {
    std::vector<std::int64_t> worst;
    int done = -1;
};

struct Join {
    HalfList const& left;
    HalfList const& right;
    int least_on_a, most_on_a;
    Effort& effort;
};

// Calls `found` for pairs that are wanted; it may lower limits. Every pair below its limit of the moment is shown.
// False when the effort ended first.
using ShowPair = std::function<void(std::int64_t worst, int moves, HalfList::Point left, HalfList::Point right)>;
bool join(Join const& halves, Limits& limits, ShowPair const& found);

} // namespace legwork
