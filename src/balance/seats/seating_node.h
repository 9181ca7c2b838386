// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One branch of seating.h: what is settled in it, and the cheapest matching of the rest.
#pragma once

#include "balance/seats/cover.h"
#include "balance/seats/seats.h"

#include <optional>
#include <vector>

namespace legwork {

constexpr int kNoSeat = 1'000'000'000;

struct SeatingNode {
    std::vector<bool> free;             // cells that nothing settled stands on
    std::vector<int> settled;           // of each sitter: the seat it has; -1: open
    std::vector<bool> bare;             // of each: without the seats that only it could use (pairs: see strip)
    std::vector<signed char> kind;      // of each single: the kind of cells it shall have; 0: open
    std::vector<bool> split;            // of each pair of short wires: matched cell by cell
    std::vector<std::size_t> next_seat; // of alike pairs: the first seat that the next of them may have
    int cost = 0;                       // of what is settled
};

// The matching: cheapest, never dearer than a layout of this branch.
struct SeatingMatch {
    struct Pair {
        int upper = -1, lower = -1;
        int sitter = -1, seat = -1; // whose own seat it is; -1: anybody's
    };
    int cost = 0;
    std::vector<Pair> pairs;
    std::vector<int>
        seat_of; // of each single that was matched, and each pair that was split and whole: its seat; else -1
    std::vector<bool> free; // cells that are left
};

class SeatingGraph {
public:
    // `distances`: of each cell, what it costs in tidiness; empty: nothing.
    SeatingGraph(Seats const& seats, std::vector<Sitter> const& sitters, std::vector<int> distances);

    // A seat on two cells of one kind: no edge of the graph, so to be settled before it is matched.
    bool is_askew(Seat const& s) const { return s.is_two() && seats_.side(s.cells[0]) == seats_.side(s.cells[1]); }
    static bool is_open(SeatingNode const& n, std::size_t sitter) { return n.settled[sitter] < 0; }
    bool may_take(SeatingNode const& n, std::size_t sitter, Seat const& seat) const;

    EdgeCover::Answer match(SeatingNode const& n, SeatingMatch& match, Effort& effort) const;
    // The open singles on what a matching has left. Sets their seats.
    EdgeCover::Answer complete(SeatingNode const& n, SeatingMatch& match, Effort& effort) const;
    // What the open singles cost at least.
    int least_of_open(SeatingNode const& n) const;
    // What a seat costs for one of its cells; no more for both than the seat.
    static int share(Seat const& s, int cell);

private:
    class Builder;
    std::int64_t edge_cost(int cost, Seat const& s) const;
    int base_cost(SeatingNode const& n) const;

    Seats const& seats_;
    std::vector<Sitter> const& sitters_;
    std::vector<int> distances_;
    std::vector<int> saved_;  // of each cell: what staying in it saves a single that reaches everywhere
    std::vector<int> number_; // of each cell among those of its kind
    int of_kind_[2] = {0, 0};
};

} // namespace legwork
