// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// All choices for one half of the decisions, as points (D per situation, singles on leg A), and a tree over them.
#pragma once

#include "balance/effort.h"
#include "balance/legs/legs.h"

#include <cstdint>
#include <limits>
#include <vector>

namespace legwork {

// Decisions with the same effect: only how many of them take - matters (the last ones do).
struct Group {
    std::vector<int> members; // indices of decisions
    std::vector<std::int64_t> d;
    bool is_single = false;
    int plus_moves = 0, minus_moves = 0;
    std::size_t ways() const { return members.size() + 1; }
};

// Equal decisions together, or each alone (when it matters which of them moves). With `with_moves` equal moves too.
std::vector<Group> groups(LegProblem const& problem, bool together, bool with_moves);

// Two halves with about as many choices each; order is fixed by the groups' own order.
struct Halves {
    std::vector<Group> left, right;
};
Halves halves(std::vector<Group> all);

constexpr int kAnyMoves = std::numeric_limits<int>::max();

// How many choices of at most so many moves a half has; more than 2^62: 2^62.
std::uint64_t size_of(std::vector<Group> const& half, int most_moves = kAnyMoves);

class HalfList {
public:
    // A point listed, sorted into its tree and boxed.
    static constexpr std::int64_t kStepsAPoint = 150;

    // Every choice of the groups with at most so many moves. The values must fit 31 bits. Empty when the effort ended
    // first; the list is then of no use.
    HalfList(std::vector<Group> const& half, std::vector<std::int64_t> const& start, int most_moves, Effort& effort);

    std::size_t size() const { return size_; }
    bool empty() const { return nodes_.empty(); }
    std::size_t situations() const { return width_; }

    static constexpr std::uint32_t kLeaf = 12; // most points of a leaf

    // Columns: D of each situation, then singles on leg A, then moves. A node is a box over points: the least and the
    // most of each column.
    struct Node {
        std::uint32_t begin, end;
        std::int32_t right = 0; // of the lower half it is the next node; 0: a leaf
        std::uint32_t points() const { return end - begin; }
    };
    Node const& node(std::size_t i) const { return nodes_[i]; }
    std::int32_t const* least(std::size_t node) const { return &boxes_[node * 2 * columns()]; }
    std::int32_t const* most(std::size_t node) const { return &boxes_[(node * 2 + 1) * columns()]; }

    struct Point {
        std::size_t leaf, number;
    };
    // One column of all points of a leaf; kLeaf entries can be read, those past its points mean nothing.
    std::int32_t const* column(std::size_t leaf, std::size_t k) const {
        return &rows_[nodes_[leaf].begin * stride_ + k * nodes_[leaf].points()];
    }
    std::int32_t value(Point p, std::size_t k) const { return column(p.leaf, k)[p.number]; }
    // Sets the entries of the half's decisions.
    void write(Point p, Assignment& choice) const;

    static std::size_t bytes_of(std::uint64_t size, std::size_t situations);

private:
    std::size_t columns() const { return width_ + 2; }
    std::size_t grow(std::uint32_t begin, std::uint32_t end, Effort& effort);
    std::uint32_t split(std::uint32_t begin, std::uint32_t end);
    std::uint32_t partition(std::uint32_t begin, std::uint32_t end, std::size_t column, std::int32_t pivot);
    void box_of_points(std::size_t at);
    void turn(Node const& leaf);
    void box_of_halves(std::size_t at);

    std::vector<Group> half_;
    std::size_t width_ = 0, stride_ = 0, size_ = 0;
    // One row a choice: its columns, and how many of each group take -, as digits of mixed base in two words. All in
    // one place, so that sorting a list larger than the cache reads it in order. In a finished leaf column by column.
    std::vector<std::int32_t> rows_;
    std::vector<Node> nodes_;
    std::vector<std::int32_t> boxes_;
};

} // namespace legwork
