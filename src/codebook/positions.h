// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How many breaker positions the panel of a dwelling must have, and how many of them free.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

// Positions are counted as one-pole breakers of 120 V.
struct PositionsRow {
    Amps up_to; // rating of the service or feeder; the last row serves larger ones too
    int positions, with_central_heating;
};

struct PositionsTable {
    std::span<PositionsRow const> rows; // rising; none: no least number of them
    int left_free;                      // after every breaker that is needed is in
    int left_free_in_flat;              // in a unit of an apartment building
    bool room_for_two_pole;             // in a single dwelling: two of them beside each other, for a two-pole breaker
    bool when_new;                      // asked when the panel is fitted, not for as long as it stands
    Source source;
};

// Null where the code asks for no number, or it was not read.
inline PositionsTable const* dwelling_positions(CodeBook const& book) { return book.positions.get(); }
// The row of a service of this rating; of one that is not known the first, which holds whatever it is. The table has
// rows.
PositionsRow const& positions_row(PositionsTable const& table, std::optional<Amps> service);

} // namespace legwork
