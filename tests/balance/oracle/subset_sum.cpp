// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// sums[count on A][moves] holds the reachable values of the sum of |d| over the decisions with +|d|. A decision either
// adds its |d| or does not; that is one shift and one OR.

#include "balance/oracle/subset_sum.h"

#include <bitset>
#include <cstdlib>
#include <limits>
#include <stdexcept>

namespace legwork::oracle {

namespace {
using Sums = std::bitset<131'072>;
using Table = std::vector<std::vector<Sums>>; // [count on A][moves]

Table empty(std::size_t counts, std::size_t moves) { return Table(counts, std::vector<Sums>(moves)); }

struct Way {
    std::size_t count, moves, sum; // what it adds
};

void choose(Table const& from, Table& to, Way const& way) {
    for (std::size_t c = 0; c + way.count < to.size(); ++c)
        for (std::size_t k = 0; k + way.moves < to[c].size(); ++k)
            if (from[c][k].any()) to[c + way.count][k + way.moves] |= from[c][k] << way.sum;
}

std::int64_t nearest(Sums const& sums, std::int64_t constant, std::int64_t total) {
    auto least = std::numeric_limits<std::int64_t>::max();
    for (auto s = sums._Find_first(); s < sums.size(); s = sums._Find_next(s))
        least = std::min(least, std::abs(constant + 2 * static_cast<std::int64_t>(s) - total));
    return least;
}

// The least imbalance with exactly k moves, for each k; moves are not told apart when there is only one column.
std::vector<std::int64_t> by_moves(Legs const& legs, std::size_t columns) {
    if (legs.constant.size() != 1) throw std::invalid_argument("one situation only");
    Table sums = empty(legs.decisions.size() + 1, columns);
    sums[0][0].set(0);
    std::int64_t total = 0;
    for (Decision const& d : legs.decisions) {
        auto const size = static_cast<std::size_t>(std::abs(d.d[0]));
        total += std::abs(d.d[0]);
        Table next = empty(sums.size(), columns);
        for (bool on_a : {true, false}) {
            bool const plus = on_a == (d.d[0] >= 0);
            std::size_t const cost = columns > 1 && on_a != d.on_a ? static_cast<std::size_t>(d.cost) : 0;
            choose(sums, next, {d.counts && on_a ? std::size_t{1} : 0, cost, plus ? size : 0});
        }
        sums = std::move(next);
    }
    if (total >= static_cast<std::int64_t>(Sums().size())) throw std::invalid_argument("loads too large");
    std::vector<std::int64_t> least(columns, std::numeric_limits<std::int64_t>::max());
    for (int c = legs.least_on_a; c <= legs.most_on_a; ++c)
        for (std::size_t k = 0; k < columns; ++k)
            least[k] = std::min(least[k], nearest(sums[static_cast<std::size_t>(c)][k], legs.constant[0], total));
    return least;
}
} // namespace

std::vector<Step> subset_sum(Legs const& legs, int moves) {
    std::vector<Step> front;
    auto const least = by_moves(legs, static_cast<std::size_t>(moves) + 1);
    for (std::size_t k = 0; k < least.size(); ++k)
        if (least[k] < std::numeric_limits<std::int64_t>::max() && (front.empty() || least[k] < front.back().imbalance))
            front.push_back({static_cast<int>(k), least[k]});
    return front;
}

std::int64_t subset_sum_least(Legs const& legs) { return by_moves(legs, 1)[0]; }

} // namespace legwork::oracle
