// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The two questions asked of the optimizer.
#pragma once

#include "balance/plan.h"

namespace legwork {

struct BalanceOptions {
    bool best = false;            // the least imbalance itself, not just near it
    std::optional<int> max_moves; // the best with at most so many moves
    std::optional<double> seconds; // a hard stop only; its use is told in the plan
};

// Proposes spaces for every circuit, moving present ones where that evens the legs. Never fails: an impossible panel
// has no placements and says why. Sub-panels first; each feeder adds its panel's legs to the panel above.
Plan balance(Job const& job, BalanceOptions const& options = {});

// The panel as the file has it: circuits with a space stay there, legal or not; those without are placed as well as
// can be with nobody moved. Also carries the least imbalance that moves could reach, found within about a second's
// worth of counted steps.
Plan as_filed(Job const& job);

// Recounts everything from the job with no code of the search: each slot used once and on the panel, blocked and dead
// spaces empty, fixed circuits at home, two-pole breakers on two legs of one column, imbalances and moves as
// claimed. One sentence a fault; empty when the plan holds. `as_filed` plans may break what the file itself breaks.
std::vector<std::string> recheck(Job const& job, Plan const& plan, bool filed);

} // namespace legwork
