// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The least imbalance of one panel, and the least for each number of moves.
//
// Minimised: T(k), the worst |D| over the situations with at most k moves, for k = the fewest possible, ... until the
// least of all is reached. Moves are what the signs cost plus what making room then costs. With one situation and room
// for every choice the table of sums gives T(k) as it stands. Else the choices of each half are classed by their moves
// and class j is joined with class k - j, k = 0, 1, 2, ...; a pair found is looked up in Room for its true number of
// moves, which is never less than k, and kept under it. What is cut is worse than a plan already had with no more
// moves; so when step k ends, T(k) is proven. Cost: in all about one full join, and less when the least comes early.
#pragma once

#include "balance/effort.h"
#include "balance/legs.h"
#include "balance/plan.h"
#include "balance/room.h"

#include <optional>
#include <vector>

namespace legwork {

struct Least {
    std::int64_t worst = 0, lower_bound = 0; // equal when proven
    std::optional<Assignment> choice;        // one that reaches `worst`, when the method shows one
    bool is_proven() const { return worst == lower_bound; }
};

// Sums of all loads fit the 31 bits of a join.
bool fits_join(LegProblem const& problem);

// The least worst |D| over all assignments with counts in range, whatever they move. The problem has room.
Least least_worst(LegProblem const& problem, Effort& effort);

struct Front {
    struct Step {
        int moves;
        std::int64_t worst;
        std::optional<Assignment> choice; // none: to be read from the table of sums
    };
    std::optional<int> fewest_moves; // none: no layout at all
    std::int64_t least = 0, lower_bound = 0;
    std::vector<Step> steps; // where T drops, from the fewest moves to the least imbalance
    int proven_to = -1;      // steps with at most so many moves are proven
};

Front front(PanelModel const& model, LegProblem const& problem, Room const& room, Effort& effort);

// The assignment of a step; none when the effort does not suffice.
std::optional<Assignment> assignment_of(LegProblem const& problem, Front::Step const& step, Effort& effort);

} // namespace legwork
