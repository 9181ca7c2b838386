// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// From a matching whose pairs are dealt out to what becomes of each unit.
#pragma once

#include "balance/seats/seating.h"
#include "balance/seats/seating_node.h"

#include <vector>

namespace legwork {

// A layout: what is settled, a matching, and which of its pairs each pair of short wires has.
struct DealtSeats {
    SeatingNode node;
    SeatingMatch match;
    std::vector<int> pair_of; // of each sitter of short wires whose pair is anybody's; else -1
};

// `sitters` are those that the matching is of.
Seating seating_of(Seats const& seats, std::vector<Sitter> const& sitters, DealtSeats const& dealt);

} // namespace legwork
