// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Making room for pairs. Given on which leg everything shall be, the fewest further moves after which every pair has
// two neighbouring spaces: present circuits lifted out of the way (to any space of their leg), one half of a pair moved
// to the far side of the other, whole pairs lifted. Singles need no look: the counts of the legs hold for them.
//
// Minimised: moves, then conductors moved. Method: a pass along each line of cells; a state is (cell, whether an odd
// run of empty cells ends here, pairs that fit so far less pairs lifted). An empty run of L cells holds floor(L / 2)
// pairs, so only its parity matters; a unit that leaves pays once, at its first cell. Nothing is cut: the pass is
// exact. Cost cells x states, some microseconds. What joins two far places (a pair that stands apart today: stays,
// keeps this half, keeps that half) is tried case by case.
#pragma once

#include "balance/model.h"

#include <optional>
#include <vector>

namespace legwork {

// What becomes of a unit.
enum class Fate { home, keep_a, keep_b, lift };

struct Rooming {
    std::vector<Fate> fate;      // of each unit; a unit that is held or has no place today: home or lift
    std::vector<int> other_cell; // keep_a, keep_b: where the other half goes; else -1
    std::vector<bool> empty;     // cells that nothing stands on after that; lifted and new units go here
};

class Room {
public:
    explicit Room(PanelModel const& model);

    // Least moves beyond what the signs alone cost; kImpossible when no layout has room.
    int extra_moves(Signs const& signs) const;
    // What one call of extra_moves may cost, in steps of effort.h.
    std::int64_t steps_a_look() const;
    std::optional<Rooming> rooming(Signs const& signs) const;

    // The fewest moves for which any layout is possible with `least` to `most` singles on leg A, of all moves; and
    // signs of present singles that do it (0: any). None when there is no layout at all.
    struct Fewest {
        int moves = 0;
        Signs signs;
    };
    std::optional<Fewest> fewest_moves(int least, int most) const;

    // Pairs that no present place is kept for, and pairs that fit if all that is not held were lifted.
    int pairs_asked() const;
    int pairs_that_fit() const;
    // Every case of pairs that stand apart was looked at.
    bool is_exact() const { return exact_; }

    struct Tile { // a pair on cells (cell, cell + 1) around a half that stays
        int unit, cell, anchor;
        Fate fate;
    };
    struct Case {
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
    PanelModel const& model_;
    std::vector<Case> cases_;
    bool exact_ = true;
};

} // namespace legwork
