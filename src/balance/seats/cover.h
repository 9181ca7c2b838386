// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The cheapest way to match two sides of a graph with so many edges, some vertices being matched in any case.
//
// Method: one shortest augmenting path after the other (costs may be negative: Bellman and Ford's labels, from a
// queue). After each path the matching is the cheapest of its size, and what is matched stays matched; vertices that
// must be matched come first because their edges are cheaper than all others together. Polynomial and exact: a few
// thousand steps for a panel.
#pragma once

#include "balance/effort.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace legwork {

class EdgeCover {
public:
    EdgeCover(int left, int right);

    void must_left(int vertex) { must_left_[static_cast<std::size_t>(vertex)] = true; }
    void must_right(int vertex) { must_right_[static_cast<std::size_t>(vertex)] = true; }
    // Costs below 2^40 in size. Returns the number of the edge, from 0.
    int add(int left, int right, std::int64_t cost);

    enum class Answer { yes, no, gave_up }; // gave_up: the effort ended first
    Answer run(int edges, Effort& effort);

    // Of what was found.
    std::int64_t cost() const;
    std::vector<int> const& edge_of_left() const { return left_edge_; } // -1: not matched
    std::vector<int> const& edge_of_right() const { return right_edge_; }

private:
    struct Edge {
        int left, right;
        std::int64_t cost;
    };
    std::optional<int> shortest(Effort& effort); // the free vertex on the right at its end
    void augment(int right);
    std::int64_t price(Edge const& e) const;

    std::vector<Edge> edges_;
    std::vector<std::vector<int>> of_left_; // edges by their left vertex
    std::vector<bool> must_left_, must_right_;
    std::vector<int> left_edge_, right_edge_;
    std::vector<std::int64_t> prices_;
    // Of the paths of one round.
    std::vector<std::int64_t> to_left_, to_right_;
    std::vector<int> by_; // the edge by which a right vertex is reached
    std::vector<int> queue_;
    std::vector<bool> queued_;
};

} // namespace legwork
