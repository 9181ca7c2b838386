// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder panel/: where a breaker can stand, and which hot it finds there. layout.h is the grid; lines.h where two
// spaces take a breaker of two; feeds.h which sources put voltage on which leg; hang.h what changes as the panel hangs.
//
//     column 0     column 1
//     1 [ A ]      [ A ] 2     row 1      A row has one leg, and rows take turns unless the job says else: so
//     3 [ B ]      [ B ] 4     row 2      neighbours of a column are on two legs, 1+3 and 2+4. On a bus with a leg a
//     5 [ A ]      [ A ] 6     row 3      column they are not; there the facing ones are, 1 and 2.
//
// The geometry of one panel: rows, columns, legs, neighbours. Pure; knows numbering and bus, nothing of circuits.
#pragma once

#include "job/job.h"

#include <optional>
#include <vector>

namespace legwork {

struct Position {
    int column = 0; // 0: the column of space 1 (with `across`, the odd spaces); 1: the other
    int row = 0;    // from 1, the row of space 1
    friend auto operator<=>(Position const&, Position const&) = default;
};

class Layout {
public:
    Layout() = default; // no spaces
    explicit Layout(typed::Panel const& panel);

    int spaces() const { return spaces_; }
    int rows() const { return (spaces_ + 1) / 2; }
    bool has(int space) const { return space >= 1 && space <= spaces_; }
    Position position(int space) const;                // of a space on the panel
    std::optional<int> space_at(Position where) const; // nothing off the panel
    // The leg that the bus gives this space, whatever feeds the panel.
    Leg leg(int space) const;
    // The space one row further along the column (the lower half of a two-pole breaker); nothing past the end.
    std::optional<int> next_in_column(int space) const;
    // True when both stand next to each other in one column.
    bool neighbours(int s, int t) const;
    // A two-pole breaker whose lower-numbered space is `space` reaches two legs here.
    bool takes_two_pole(int space) const;
    bool is_tandem(int space) const;
    bool is_blocked(int space) const;
    bool is_dead(int space) const; // by `dead =` only; without voltage from a source: Feeds

private:
    typed::Panel panel_;
    int spaces_ = 0;
};

// The slots a circuit's breaker takes when its `space` is `at`: one, or two for two poles ("7a" outer 7a+9b, "7b"
// inner 7b+9a). Empty when it does not fit on the panel.
std::vector<Spot> slots(Layout const& layout, Spot at, int poles);

} // namespace legwork
