// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The slow, obvious twin of the optimizer: every way to stand the circuits of a small panel, none left out. It knows
// nothing of legs first and spaces after, of counts, of fragments or of making room.
#pragma once

#include "balance/oracle/reckon.h"
#include "job/job.h"

namespace legwork::oracle {

// One way to stand a piece: the spaces it takes (bit s - 1 of space s), the circuits of it that thereby stand
// elsewhere than today, and what it adds to A - B in each situation minimised.
struct Choice {
    std::uint32_t spaces = 0;
    int moves = 0;
    std::vector<std::int64_t> d;
};

// What is placed at once: a circuit of one pole, one of two poles, or both halves of a multiwire pair.
struct Piece {
    std::string marks;
    std::vector<Choice> choices;
};

struct Board {
    std::vector<std::int64_t> constant; // A - B of what hangs below feeders of two poles
    std::uint32_t held = 0;             // spaces whose half-size breakers stay
    std::vector<Piece> pieces;
};

enum class Today { may_move, stays };

// With Today::stays every circuit that has a space keeps it, legal or not. With Today::may_move a fixed circuit that
// stands illegally stands nowhere. A one-pole circuit legally on a half stays always. A pair that is not tied and
// stands apart on two legs today may stay there, either way round, and so may any pair where all is in phase; a pair
// that goes elsewhere goes next to each other.
Board board(typed::Job const& job, typed::Panel const& panel, Today today, FeederLoads const& below = {});

struct Step {
    int moves = 0;
    std::int64_t imbalance = 0;
    friend bool operator==(Step const&, Step const&) = default;
};

// The whole trade-off: the least imbalance with at most so many moves, where it drops, from the fewest moves
// possible. Empty when the circuits cannot stand on the panel. At most 4 situations and 31 spaces; the cost grows
// with the subsets of spaces, so up to 12 spaces in practice.
std::vector<Step> exhaustive(Board const& board);

} // namespace legwork::oracle
