// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The joins of front.h: all choices with at most K moves, K growing.
#pragma once

#include "balance/legs/descent.h"
#include "balance/legs/front.h"
#include "balance/legs/half_list.h"

#include <map>

namespace legwork {

// The best plan had for each number of moves.
class BestByMoves {
public:
    void offer(int moves, std::int64_t worst, Assignment const& choice);
    // With at most so many moves; the largest number there is where there is none.
    std::int64_t least(int most_moves) const;
    std::vector<Front::Step> steps(int most_moves) const; // where it drops

private:
    std::map<int, Front::Step> by_moves_;
};

class FrontJoins {
public:
    // `roomy`: every assignment has room for its pairs with no further move.
    FrontJoins(PanelModel const& model, LegProblem const& p, Room const& room, bool roomy);

    // A plan is known; it is kept under its true number of moves.
    void offer(Assignment const& choice, Effort& effort);
    // The same of the first, even when nothing is left.
    void offer_first(Assignment const& choice, Effort& effort);
    // One situation: what the table of sums reaches with so many moves if there were room for all. Its plans, with the
    // moves that room then takes, are good ones; and T cannot be lower.
    void use_table(std::int64_t least, Effort& effort);
    // Good plans among the legs that have a layout, where not all have: from plans had, with the legs of the bound
    // units first as there, then changed one or two at a time.
    void use_standing(std::int64_t enough, Effort& effort);
    // All choices can be listed and joined: no other proof of the least is needed.
    bool can_finish(Effort const& effort) const { return fits(most_, effort.left() / 4, effort); }
    // Sets steps, least, bound and what is proven; the front has its fewest moves and a lower bound.
    void run(Front& front, Effort& effort);

private:
    bool fits(int moves, std::int64_t steps, Effort const& effort) const;
    bool is_at_floor(int moves) const;
    int next_round(int done, Effort const& effort) const;
    int first_enough(Front const& f) const;
    void finish(Front& f, bool proven);
    void descend_to(int k, int spared, Effort& effort);
    void use_bound_legs(Assignment const& standing, std::int64_t enough, Effort& effort);
    bool join_upto(int upto, int done, Effort& effort);

    PanelModel const& model_;
    LegProblem const& p_;
    Room const& room_;
    bool roomy_;
    Footing footing_;
    bool certain_ = true; // every look at the room was
    int fewest_ = 0;      // no plan has fewer moves
    int most_ = 0;        // moves, of all that can move
    Halves both_;
    BestByMoves best_;
    std::vector<std::int64_t> floor_;
};

} // namespace legwork
