// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Making room for pairs where all wires reach all spaces. Given on which leg everything shall be, the fewest further
// moves after which every pair has two neighbouring spaces: present circuits lifted out of the way (to any space of
// their leg), one half of a pair moved to the far side of the other, whole pairs lifted. Singles need no look: the
// counts of the legs hold for them.
//
// Minimised: moves, then conductors moved. Method: a pass along each line of cells; a state is (cell, whether an odd
// run of empty cells ends here, pairs that fit so far less pairs lifted). An empty run of L cells holds floor(L / 2)
// pairs, so only its parity matters; a unit that leaves pays once, at its first cell. Nothing is cut: the pass is
// exact. Cost cells x states, some microseconds. What joins two far places (a pair that stands apart today: stays,
// keeps this half, keeps that half) is tried case by case.
#pragma once

#include "balance/seats/room.h"

namespace legwork {

class LineRoom : public Room {
public:
    explicit LineRoom(PanelModel const& model);

    Extra extra_moves(Signs const& signs, Effort& effort) const override;
    std::optional<Rooming> rooming(Signs const& signs, Effort& effort) const override;
    Fewest fewest_moves(int least, int most, Effort& effort) const override;
    std::vector<int> const& bound_units() const override { return none_; }
    bool stands(Signs const& signs, Effort& effort) const override {
        return extra_moves(signs, effort).moves < kImpossible;
    }
    LegProblem narrowed(LegProblem problem, Effort&) const override { return problem; }

    // Every case of pairs that stand apart is looked at. Where not, what is found holds, and may not be the best.
    bool is_exact() const { return exact_; }

    // Pairs that no present place is kept for, and pairs that fit if all that is not held were lifted.
    int pairs_asked() const;
    int pairs_that_fit() const;

    struct Tile { // a pair on cells (cell, cell + 1) around a half that stays
        int unit, cell, anchor;
        Fate fate;
    };
    struct LineCase {
        std::vector<std::vector<int>> singles; // of a cell: units that stand there
        std::vector<int> block;                // first cell: a unit that may stay on it and the next; else -1
        std::vector<int> payer;                // the unit that pays when this cell is not under its own block; else -1
        std::vector<int> must;                 // the half-held pair whose known cell this is; else -1
        std::vector<std::vector<Tile>> tiles;  // by first cell
        std::vector<bool> wall;
        std::vector<int> stay_put; // units at home on cells that are walls here
        int asked = 0;             // pairs without a place
        int base = 0;              // conductors and moves of what has no place
    };

private:
    std::int64_t steps_a_look() const;

    PanelModel const& model_;
    std::vector<LineCase> cases_;
    std::vector<int> none_;
    bool exact_ = true;
};

} // namespace legwork
