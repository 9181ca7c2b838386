// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How untidy it is for a circuit to stand on a space: larger breakers nearer the main, circuits of a room together, so
// that empty spaces gather at the far end. Only compares places; never a reason to move a wire.
#pragma once

#include "balance/model/model.h"

#include <cstdint>
#include <map>
#include <string>

namespace legwork {

class Neatness {
public:
    explicit Neatness(PanelModel const& model);

    // Where the circuits of each room stand: the mean row of those in `slots` (by circuit; empty: not placed yet).
    void look(std::vector<std::vector<Spot>> const& slots);

    std::int64_t cost(int circuit, int space) const;
    std::int64_t cost(Unit const& unit, int space, int next_space) const; // of a pair or a two-pole breaker
    // Rows from the main's end, 0 the nearest.
    int distance(int space) const;

private:
    PanelModel const& model_;
    Layout layout_;
    bool main_at_row_one_ = true;
    std::map<std::string, std::int64_t> room_row_; // in hundredths of a row
};

} // namespace legwork
