// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Making room where some wires do not reach every space, or many pairs stand apart: seating.h, asked by the search over
// the legs.
#pragma once

#include "balance/seats/seating.h"

#include <string>
#include <unordered_map>

namespace legwork {

class SeatRoom : public Room {
public:
    explicit SeatRoom(PanelModel const& model);

    Extra extra_moves(Signs const& signs, Effort& effort) const override;
    std::optional<Rooming> rooming(Signs const& signs, Effort& effort) const override;
    Fewest fewest_moves(int least, int most, Effort& effort) const override;
    std::vector<int> const& bound_units() const override { return seats_.limited(); }
    bool stands(Signs const& signs, Effort& effort) const override;
    LegProblem narrowed(LegProblem problem, Effort& effort) const override;

private:
    // Whether a layout exists hangs on the legs of the bound units alone: answers that are certain, by those legs.
    std::string key(Signs const& signs) const;
    int least_moves(Signs const& signs) const; // what the signs alone cost

    PanelModel const& model_;
    Seats seats_;
    mutable std::unordered_map<std::string, bool> known_;
};

} // namespace legwork
