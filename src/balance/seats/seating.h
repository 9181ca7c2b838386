// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Layouts within reach of the wires. Given on which leg everything shall be, or with some of it open, the layout of the
// fewest moves in which whoever lands elsewhere lands within reach.
//
// Minimised: moves, then conductors moved. Idea: two neighbouring cells are of two kinds (the legs), so cells and
// circuits make a graph with two sides: a pair is an edge between two cells, a single an edge between its cell and
// itself. A layout is a matching that covers every single with its own seats and has an edge for each pair; the
// cheapest one is found in polynomial time (cover.h). Circuits that reach everywhere need no vertex: they cost
// something only where another takes the cell in which they stand. This is exact but for who is who among the pairs: a
// pair of short wires needs one of its own seats, and nobody stays in two ways. Where the matching cannot be dealt out
// like that, or an open single cannot be set on what is left, the search branches on one of them: on its seats, or on
// its kind of cells. A branch is cut when its matching is not cheaper than the best layout known, which costs at least
// as much as its matching. When no branch is left, that layout is the cheapest, or there is none. Mostly the first
// matching does.
#pragma once

#include "balance/effort.h"
#include "balance/seats/seats.h"

#include <optional>

namespace legwork {

struct Seating {
    int cost = 0; // as FateCost, of all units
    Rooming rooming;
    Signs signs; // of the units that were open; 0: any
};

struct SeatingAnswer {
    std::optional<Seating> seating;
    bool is_certain = true; // nothing cheaper, or nothing at all, is proven
};

// Within the effort.
SeatingAnswer cheapest_seating(Seats const& seats, Signs const& signs, Effort& effort);

// One of the same cost as found before, near the main.
std::optional<Seating> neat_seating(Seats const& seats, Signs const& signs, int cost, Effort& effort);

} // namespace legwork
