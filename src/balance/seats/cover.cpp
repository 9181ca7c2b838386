// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/seats/cover.h"

#include <limits>

namespace legwork {

namespace {

constexpr std::int64_t kMust = std::int64_t{1} << 50;
constexpr std::int64_t kFar = std::numeric_limits<std::int64_t>::max() / 4;
constexpr std::int64_t kStepsAnEdge = 2, kStepsARound = 100; // measured

std::size_t at(int i) { return static_cast<std::size_t>(i); }

} // namespace

EdgeCover::EdgeCover(int left, int right)
    : of_left_(at(left)),
      must_left_(at(left)),
      must_right_(at(right)),
      left_edge_(at(left), -1),
      right_edge_(at(right), -1),
      to_left_(at(left)),
      to_right_(at(right)),
      by_(at(right)),
      queued_(at(left)) {}

int EdgeCover::add(int left, int right, std::int64_t cost) {
    of_left_[at(left)].push_back(static_cast<int>(edges_.size()));
    edges_.push_back({left, right, cost});
    return static_cast<int>(edges_.size()) - 1;
}

std::int64_t EdgeCover::price(Edge const& e) const {
    return e.cost - (must_left_[at(e.left)] ? kMust : 0) - (must_right_[at(e.right)] ? kMust : 0);
}

EdgeCover::Answer EdgeCover::run(int edges, Effort& effort) {
    prices_.clear();
    for (Edge const& e : edges_) prices_.push_back(price(e));
    for (int n = 0; n < edges; ++n) {
        auto const end = shortest(effort);
        if (effort.is_over()) return Answer::gave_up;
        if (!end) return Answer::no;
        augment(*end);
    }
    for (std::size_t l = 0; l < must_left_.size(); ++l)
        if (must_left_[l] && left_edge_[l] < 0) return Answer::no;
    for (std::size_t r = 0; r < must_right_.size(); ++r)
        if (must_right_[r] && right_edge_[r] < 0) return Answer::no;
    return Answer::yes;
}

std::optional<int> EdgeCover::shortest(Effort& effort) {
    to_left_.assign(to_left_.size(), kFar);
    to_right_.assign(to_right_.size(), kFar);
    queue_.clear();
    for (std::size_t l = 0; l < left_edge_.size(); ++l) {
        queued_[l] = left_edge_[l] < 0 && !of_left_[l].empty();
        if (!queued_[l]) continue;
        to_left_[l] = 0;
        queue_.push_back(static_cast<int>(l));
    }
    std::int64_t looked = 0;
    // The matching so far is the cheapest of its size, so no circle is of negative length, and the labels come to rest.
    for (std::size_t head = 0; head < queue_.size(); ++head) {
        auto const l = at(queue_[head]);
        queued_[l] = false;
        looked += static_cast<std::int64_t>(of_left_[l].size());
        for (int const n : of_left_[l]) {
            if (n == left_edge_[l]) continue;
            auto const r = at(edges_[at(n)].right);
            auto const length = to_left_[l] + prices_[at(n)];
            if (length >= to_right_[r]) continue;
            to_right_[r] = length;
            by_[r] = n;
            int const back = right_edge_[r];
            if (back < 0) continue;
            auto const next = at(edges_[at(back)].left);
            to_left_[next] = length - prices_[at(back)];
            if (queued_[next]) continue;
            queued_[next] = true;
            queue_.push_back(static_cast<int>(next));
        }
    }
    effort.spend(kStepsARound + kStepsAnEdge * looked);
    std::optional<int> nearest;
    for (std::size_t r = 0; r < right_edge_.size(); ++r)
        if (right_edge_[r] < 0 && to_right_[r] < kFar && (!nearest || to_right_[r] < to_right_[at(*nearest)]))
            nearest = static_cast<int>(r);
    return nearest;
}

void EdgeCover::augment(int right) {
    for (int r = right;;) {
        int const n = by_[at(r)];
        int const l = edges_[at(n)].left;
        int const before = left_edge_[at(l)];
        left_edge_[at(l)] = right_edge_[at(r)] = n;
        if (before < 0) return;
        r = edges_[at(before)].right;
    }
}

std::int64_t EdgeCover::cost() const {
    std::int64_t sum = 0;
    for (int const n : left_edge_)
        if (n >= 0) sum += edges_[at(n)].cost;
    return sum;
}

} // namespace legwork
