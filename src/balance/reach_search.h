// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The front of a panel where some circuits do not reach every space.
//
// Minimised: T(k), as in front.h, over the layouts within reach. The front that does not look at reach bounds it from
// below; a step of it that can be laid out within reach stands. For the others the circuits of limited reach are put on
// spaces before the search, in every way there is, and each time the rest, which reaches everywhere, is solved
// exactly. Nothing is cut but what cannot be legal, so when all ways were tried the front is proven; it ends early when
// all steps are as good as the bound. Cost: a front for each way; beyond some thousand ways it stays unproven.
#pragma once

#include "balance/solved.h"

namespace legwork {

struct ReachStep {
    int moves = 0;
    std::int64_t worst = 0;
    Slots slots;
};

struct ReachFront {
    std::vector<ReachStep> steps; // where it drops; empty: no layout was found
    bool is_proven = false;       // nothing better, or no layout at all, is proven
};

// As a front without assignments; `bound` is the one without a look at reach.
Front as_front(ReachFront const& reach, Front const& bound);

// `solved`: the panel without a look at reach. Steps of more than `most_moves` are not wanted.
ReachFront reach_front(Solved const& solved, Below const& below, ModelOptions const& options, int most_moves,
                       Effort& effort);

} // namespace legwork
