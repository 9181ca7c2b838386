// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// All choices for one half of the decisions, as points (D per situation, singles on leg A), and a tree over them.
#pragma once

#include "balance/legs.h"

#include <cstdint>
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
Halves halves(std::vector<Group> groups);

// How many choices a half has; more than 2^62: 2^62. With `moves` >= 0 only those of exactly so many moves.
std::uint64_t size_of(std::vector<Group> const& half, int moves = -1);

class HalfList {
public:
    // Every choice of the groups; with `moves` >= 0 those of exactly so many moves. The values must fit 31 bits.
    HalfList(std::vector<Group> const& half, std::vector<std::int64_t> const& start, int moves = -1);

    std::size_t size() const { return on_a_.size(); }
    bool empty() const { return on_a_.empty(); }
    std::size_t situations() const { return width_; }
    std::int32_t const* point(std::size_t i) const { return &points_[i * width_]; }
    int on_a(std::size_t i) const { return on_a_[i]; }
    // Sets the entries of the half's decisions.
    void write(std::size_t i, Assignment& choice) const;

    struct Node {
        std::uint32_t begin, end;
        std::int32_t right = 0; // of the lower half it is the next node; 0: a leaf
        std::int16_t least_on_a, most_on_a;
    };
    Node const& node(std::size_t i) const { return nodes_[i]; }
    std::int32_t const* least(std::size_t node) const { return &boxes_[node * 2 * width_]; }
    std::int32_t const* most(std::size_t node) const { return &boxes_[node * 2 * width_ + width_]; }

    static std::size_t bytes_of(std::uint64_t size, std::size_t situations);

private:
    void list(std::vector<Group> const& half, std::vector<std::int64_t> const& start, int moves);
    void plant();
    std::size_t grow(std::uint32_t begin, std::uint32_t end);
    std::size_t box(std::uint32_t begin, std::uint32_t end);

    std::vector<Group> half_;
    std::size_t width_ = 0;
    std::vector<std::int32_t> points_;
    std::vector<std::int16_t> on_a_;
    std::vector<std::uint64_t> code_; // how many of each group take -, as digits of mixed base
    std::vector<std::uint32_t> order_;
    std::vector<Node> nodes_;
    std::vector<std::int32_t> boxes_;
};

} // namespace legwork
