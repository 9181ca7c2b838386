// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One situation: the table of reachable sums.
//
// Minimised: |D| in one situation, for each number of moves. A state is (moves, singles on leg A, how far D is from
// where it is when every decision takes its preferred side); which states can be reached is kept as one bit each, and
// adding a decision is a shifted OR. Left out are only states that no choice reaches with so many moves, or from which
// the moves that are left cannot come back to what staying gives; so the finished table is the proof. Cost: decisions
// x moves x counts x (reach of D / 64) word operations; D is a sum of loads in VA, a small integer, so no list of
// loads makes it slow.
//
// Ties: among assignments of equal |D| and moves, fewest moves, then A not lighter than B, then in the order of the
// file each circuit stays if it can, new ones take leg A if they can.
#pragma once

#include "balance/effort.h"
#include "balance/legs/bit_row.h"
#include "balance/legs/legs.h"

#include <optional>

namespace legwork {

class SumTable {
public:
    SumTable(LegProblem const& problem, std::size_t situation);

    // The least |D| for any number of moves; none when the effort does not suffice.
    std::optional<std::int64_t> least(Effort& effort) const;
    // The least |D| for at most 0, 1, .. `most` moves (not counting fixed_moves); kUnreachable where the counts
    // forbid it. None when the effort does not suffice (for `assignment` neither).
    // `to_read`: assignments will be asked for.
    std::optional<std::vector<std::int64_t>> by_moves(int most, bool to_read, Effort& effort) const;
    // An assignment with at most `moves` moves (none: any number) and |D| = `worst`, as found by the two above.
    std::optional<Assignment> assignment(std::optional<int> moves, std::int64_t worst, Effort& effort) const;

    static constexpr std::int64_t kUnreachable = std::numeric_limits<std::int64_t>::max();

private:
    using Words = std::vector<std::uint64_t>;
    // A decision: its preferred side changes nothing; the other side:
    struct Item {
        bool prefers_plus;
        int moves;         // of the other side; the preferred one has none
        int on_a;          // what it adds to the singles on leg A
        std::int64_t step; // what it adds to D, in double grains
    };
    // The rows of one number of moves, one a count, each a run of bits for D from `from` up (double grains).
    struct Band {
        std::int64_t from = 0;
        std::size_t words = 1, start = 0;
    };
    struct Shape {
        bool counted = false;    // else the counts forbid nothing and are not kept
        int low = 0, counts = 1; // added singles on leg A from -low
        std::vector<Band> bands; // by moves
        std::size_t size = 0;    // words in all
        int moves() const { return static_cast<int>(bands.size()) - 1; }
        bool holds(int m, int on_a) const { return m >= 0 && m <= moves() && on_a >= -low && on_a < counts - low; }
        BitRow row(Words& table, int m, int on_a) const {
            auto const& b = bands[static_cast<std::size_t>(m)];
            return {&table[b.start + static_cast<std::size_t>(on_a + low) * b.words], b.words};
        }
    };
    struct State {
        int moves = 0, on_a = 0;
        std::int64_t d = 0; // in double grains, from the preferred sides
    };

    std::vector<Item> items(bool with_moves) const;
    std::int64_t preferred_difference(std::vector<Item> const& items) const;
    int preferred_count(std::vector<Item> const& items) const;
    Shape shape(std::vector<Item> const& items, int moves) const;
    void set_counts(Shape& s, std::vector<Item> const& items, int moves) const;
    static bool fits(Shape const& s, std::size_t tables, Effort const& effort);
    std::size_t stride() const;
    static Words first_table(Shape const& s);
    static void add(Words& table, Item const& item, Shape const& s);
    std::optional<Words> table(std::vector<Item> const& items, Shape const& s, Effort& effort) const;
    static bool reached(Words& table, Shape const& s, State const& state);
    std::int64_t nearest(Words& table, Shape const& s, std::vector<Item> const& items, State& state) const;
    std::optional<Assignment> read_back(std::vector<Item> const& items, Shape const& s, State state,
                                        std::vector<Words> kept, Effort& effort) const;

    LegProblem const& problem_;
    std::size_t situation_;
    std::int64_t grain_ = 1; // all |d| are multiples of it
};

} // namespace legwork
