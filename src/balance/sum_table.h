// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One situation: the table of reachable sums.
//
// Minimised: |D| in one situation, for each number of moves. A state is (moves, singles on leg A, sum of the |d| that
// push D up); which states can be reached is kept as one bit each, and adding a decision is a shifted OR. Nothing is
// cut: the finished table is the proof. Cost: decisions x moves x counts x (sum / 64) word operations; sums are small
// integers, a panel's total in VA, so no list of loads makes it slow.
//
// Ties: among assignments of equal |D| and moves, fewest moves, then A not lighter than B, then in the order of the
// file each circuit stays if it can, new ones take leg A if they can.
#pragma once

#include "balance/effort.h"
#include "balance/legs.h"

#include <optional>

namespace legwork {

class SumTable {
public:
    SumTable(LegProblem const& problem, std::size_t situation);

    // The least |D| for any number of moves; none when the effort does not suffice.
    std::optional<std::int64_t> least(Effort& effort) const;
    // The least |D| for at most 0, 1, .. `most` moves (not counting fixed_moves); kUnreachable where the counts
    // forbid it. None when the effort does not suffice (for `assignment` neither).
    std::optional<std::vector<std::int64_t>> by_moves(int most, Effort& effort) const;
    // An assignment with at most `moves` moves (none: any number) and |D| = `worst`, as found by the two above.
    std::optional<Assignment> assignment(std::optional<int> moves, std::int64_t worst, Effort& effort) const;

    static constexpr std::int64_t kUnreachable = std::numeric_limits<std::int64_t>::max();

private:
    using Words = std::vector<std::uint64_t>;
    struct Choice {
        bool plus;
        int moves, on_a; // on_a: relative to the preferred choice where that is the only one without moves
        std::size_t up;
    };
    struct Item {
        Choice first, second; // the preferred one first
    };
    struct Shape {
        int moves = 0, low = 0, counts = 1; // on_a from -low
        std::size_t words = 1;
        std::size_t bytes() const {
            return static_cast<std::size_t>(moves + 1) * static_cast<std::size_t>(counts) * words * 8;
        }
        std::size_t row(int m, int on_a) const {
            return (static_cast<std::size_t>(m) * static_cast<std::size_t>(counts) +
                    static_cast<std::size_t>(on_a + low)) *
                   words;
        }
    };

    std::vector<Item> items(bool with_moves) const;
    Shape shape(std::vector<Item> const& items, int moves) const;
    bool fits(Shape const& s, std::size_t tables, Effort const& effort) const;
    void add(Words& table, Words& scratch, Item const& item, Shape const& s) const;
    std::size_t stride() const;
    std::optional<Words> table(std::vector<Item> const& items, Shape const& s, Effort& effort) const;
    std::int64_t nearest(Words const& table, Shape const& s, int moves, std::vector<Item> const& items, int* on_a,
                         std::size_t* up) const;

    LegProblem const& problem_;
    std::size_t situation_;
    std::int64_t grain_ = 1; // all |d| are multiples of it
    std::size_t most_up_ = 0;
};

} // namespace legwork
