// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where each unit may stand within reach of its wires, and what that costs: the ground of seating.h. Made once from the
// model.
#pragma once

#include "balance/seats/room.h"

#include <array>
#include <vector>

namespace legwork {

struct Seat {
    std::array<int, 2> cells{-1, -1}; // one, or two; of a pair half a's first
    int cost = 0;                     // as FateCost
    Fate fate = Fate::lift;
    signed char sign = 0; // of a pair on two legs: +1 with half a on leg A
    bool is_two() const { return cells[1] >= 0; }
};

// What is seated of a unit that is not held.
struct Sitter {
    enum class Kind {
        any_single, // reaches everywhere; may stay at home, else one empty cell is as good as another
        any_pair,   // the same of a pair or a two-pole breaker: one free site is as good as another
        single,     // has its own seats: of short wires, or to come beside the half of a pair that is held
        pair,       // of short wires
    };
    Kind kind = Kind::any_single;
    int unit = -1;
    int lift = 0; // cost of being anywhere else than at one's own seats; of the two `any` kinds
    std::vector<Seat> seats;
    bool is_wide() const { return kind == Kind::any_pair || kind == Kind::pair; }
    bool is_own() const { return kind == Kind::single || kind == Kind::pair; }
};

class Seats {
public:
    explicit Seats(PanelModel const& model);

    PanelModel const& model() const { return model_; }
    // Of every unit that is not held, in their order; sign 0: open.
    std::vector<Sitter> sitters(Signs const& signs) const;
    // Two kinds of cells, neighbours of different kinds: +1 and -1. The legs, where there are two.
    signed char side(int cell) const { return side_[static_cast<std::size_t>(cell)]; }
    // Units whose legs reach decides upon: of short wires, not held.
    std::vector<int> const& limited() const { return limited_; }

private:
    static std::size_t index(int sign) {
        int const from_zero = sign + 1;
        return static_cast<std::size_t>(from_zero);
    }
    bool is_limited(Unit const& u) const;
    Sitter sitter(int unit, int sign) const;
    void seat_half(Sitter& s, Unit const& u) const;
    void seat_single(Sitter& s, Unit const& u, int sign) const;
    void seat_wide(Sitter& s, Unit const& u, int sign) const;
    void seat_beside(Sitter& s, Unit const& u, Fate fate, int cost, int sign) const;
    bool is_free(int cell) const { return !model_.wall[static_cast<std::size_t>(cell)]; }
    std::vector<int> neighbours(int cell) const;

    PanelModel const& model_;
    std::vector<signed char> side_;
    std::vector<int> limited_;
    std::vector<std::array<Sitter, 3>> by_sign_; // of each unit
};

} // namespace legwork
