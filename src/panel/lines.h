// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where a breaker of two spaces can stand.
#pragma once

#include "panel/feeds.h"
#include "panel/layout.h"

#include <vector>

namespace legwork {

// What the legs of a panel mean to whoever places breakers.
enum class Legs {
    two,      // some source has two hot legs with a voltage between them: there is something to balance
    in_phase, // bridged or DC: every space is as good as another
    one,      // one leg is live, the spaces of the other are dead
};
Legs legs(std::vector<Feed> const& feeds);

// Lines of spaces, each space in one line: two consecutive spaces of a line take a pair, and on two legs they are on
// opposite ones. A column from row 1 down; an odd bus cuts it between two neighbouring rows of one letter; on a bus
// with a leg a column a line is the two facing spaces of a row.
std::vector<std::vector<int>> pair_lines(typed::Panel const& panel, Legs legs);

// A two-pole breaker joins two neighbours of one column, so it reaches one leg only on a bus with a leg a column.
bool takes_two_poles(typed::Panel const& panel, Legs legs);

} // namespace legwork
