// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The least imbalance of one panel, and the least for each number of moves.
//
// Minimised: T(k), the worst |D| over the situations with at most k moves, for k = the fewest possible, ... until the
// least of all is reached. Moves are what the signs cost plus what making room then costs. With one situation and room
// for every choice the table of sums gives T(k) as it stands. Else the choices of both halves with at most K moves are
// joined, each pair held against the best plan had with no more moves than its signs cost; a pair that is below is
// looked up in Room for its true number of moves, which is never less, and kept under that. So when the join ends, T(k)
// is proven for k <= K; K grows until the least is reached. Cost: in all a few full joins, and less when the least
// comes early. Where some choices of legs have no layout at all (short wires), the joins show more pairs in vain; so
// good plans are sought first with such legs as are known to stand.
#pragma once

#include "balance/effort.h"
#include "balance/legs/legs.h"
#include "balance/plan.h"
#include "balance/seats/room.h"

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

// The same by descents and quick bounds alone.
Least quick_least(LegProblem const& problem, Effort& effort);

struct Front {
    struct Step {
        int moves;
        std::int64_t worst;
        std::optional<Assignment> choice; // none: to be read from the table of sums
    };
    std::optional<int> fewest_moves; // none: no layout at all, or none was found
    bool is_certain = true;          // about that
    std::int64_t least = 0, lower_bound = 0;
    std::vector<Step> steps; // where T drops, from the fewest moves to the least imbalance
    int proven_to = -1;      // steps with at most so many moves are proven
};

// `to_read`: assignments of steps will be asked for, so they must fit the effort too.
Front front(PanelModel const& model, LegProblem const& problem, Room const& room, bool to_read, Effort& effort);

// The assignment of a step; none when the effort does not suffice.
std::optional<Assignment> assignment_of(LegProblem const& problem, Front::Step const& step, Effort& effort);

} // namespace legwork
