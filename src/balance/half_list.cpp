// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/half_list.h"

#include <algorithm>
#include <functional>
#include <numeric>
#include <utility>

namespace legwork {

namespace {

constexpr std::uint64_t kHuge = std::uint64_t{1} << 62;
constexpr std::uint32_t kLeaf = 12;

std::uint64_t times(std::uint64_t a, std::uint64_t b) { return b && a > kHuge / b ? kHuge : a * b; }

} // namespace

std::vector<Group> groups(LegProblem const& problem, bool together, bool with_moves) {
    std::vector<Group> found;
    for (std::size_t i = 0; i < problem.decisions.size(); ++i) {
        Decision const& d = problem.decisions[i];
        int const plus = with_moves ? d.plus_moves : 0, minus = with_moves ? d.minus_moves : 0;
        auto const same = std::ranges::find_if(found, [&](Group const& g) {
            return together && g.d == d.d && g.is_single == d.is_single && g.plus_moves == plus &&
                   g.minus_moves == minus;
        });
        if (same != found.end())
            same->members.push_back(static_cast<int>(i));
        else
            found.push_back({{static_cast<int>(i)}, d.d, d.is_single, plus, minus});
    }
    return found;
}

Halves halves(std::vector<Group> all) {
    std::ranges::stable_sort(all, std::greater{}, &Group::ways);
    Halves h;
    std::uint64_t left = 1, right = 1;
    for (Group& g : all) {
        auto const ways = g.ways();
        bool const to_left = left <= right;
        (to_left ? left : right) = times(to_left ? left : right, ways);
        (to_left ? h.left : h.right).push_back(std::move(g));
    }
    return h;
}

std::uint64_t size_of(std::vector<Group> const& half, int moves) {
    if (moves < 0) {
        std::uint64_t n = 1;
        for (Group const& g : half) n = times(n, g.ways());
        return n;
    }
    std::vector<std::uint64_t> by_moves(static_cast<std::size_t>(moves) + 1, 0);
    by_moves[0] = 1;
    for (Group const& g : half) {
        auto const before = std::exchange(by_moves, std::vector<std::uint64_t>(by_moves.size(), 0));
        auto const n = static_cast<int>(g.members.size());
        for (int minus = 0; minus <= n; ++minus) {
            auto const cost = static_cast<std::size_t>(minus * g.minus_moves + (n - minus) * g.plus_moves);
            for (std::size_t m = 0; m + cost < by_moves.size(); ++m)
                by_moves[m + cost] = std::min(kHuge, by_moves[m + cost] + before[m]);
        }
    }
    return by_moves.back();
}

HalfList::HalfList(std::vector<Group> const& half, std::vector<std::int64_t> const& start, int moves)
    : half_(half), width_(start.size()) {
    list(half, start, moves);
    plant();
}

void HalfList::list(std::vector<Group> const& half, std::vector<std::int64_t> const& start, int moves) {
    // Moves that the groups from here on may and must spend.
    std::vector<int> least(half.size() + 1, 0), most(half.size() + 1, 0);
    for (std::size_t i = half.size(); i-- > 0;) {
        auto const n = static_cast<int>(half[i].members.size());
        least[i] = least[i + 1] + n * std::min(half[i].plus_moves, half[i].minus_moves);
        most[i] = most[i + 1] + n * std::max(half[i].plus_moves, half[i].minus_moves);
    }
    auto const expected = size_of(half, moves);
    points_.reserve(expected * width_);
    on_a_.reserve(expected);
    code_.reserve(expected);
    std::vector<std::int64_t> d = start;
    std::function<void(std::size_t, int, int, std::uint64_t, std::uint64_t)> const go =
        [&](std::size_t i, int left, int on_a, std::uint64_t code, std::uint64_t base) {
            if (moves >= 0 && (left < least[i] || left > most[i])) return;
            if (i == half.size()) {
                for (auto const v : d) points_.push_back(static_cast<std::int32_t>(v));
                on_a_.push_back(static_cast<std::int16_t>(on_a));
                code_.push_back(code);
                return;
            }
            Group const& g = half[i];
            auto const n = static_cast<int>(g.members.size());
            auto const add = [&](std::int64_t times) {
                for (std::size_t k = 0; k < width_; ++k) d[k] += times * g.d[k];
            };
            add(n);
            for (int minus = 0; minus <= n; ++minus) {
                go(i + 1, left - minus * g.minus_moves - (n - minus) * g.plus_moves,
                   on_a + (g.is_single ? n - minus : 0), code + base * static_cast<std::uint64_t>(minus),
                   base * g.ways());
                add(-2);
            }
            add(n + 2);
        };
    go(0, moves, 0, 0, 1);
}

void HalfList::plant() {
    if (empty()) return;
    order_.resize(size());
    std::iota(order_.begin(), order_.end(), 0U);
    nodes_.reserve(size() / 4 + 4);
    grow(0, static_cast<std::uint32_t>(size()));
    // Points in the order of the leaves: a leaf is read in one go.
    auto const gather = [&](auto& values, std::size_t width) {
        std::remove_reference_t<decltype(values)> sorted(values.size());
        for (std::size_t i = 0; i < order_.size(); ++i)
            std::copy_n(&values[order_[i] * width], width, &sorted[i * width]);
        values = std::move(sorted);
    };
    if (width_) gather(points_, width_);
    gather(on_a_, 1);
    gather(code_, 1);
    order_ = {};
}

std::size_t HalfList::box(std::uint32_t begin, std::uint32_t end) {
    auto const at = nodes_.size();
    nodes_.push_back({begin, end, 0, on_a_[order_[begin]], on_a_[order_[begin]]});
    auto const first = point(order_[begin]);
    boxes_.insert(boxes_.end(), first, first + width_);
    boxes_.insert(boxes_.end(), first, first + width_);
    auto* const low = &boxes_[at * 2 * width_];
    auto* const high = low + width_;
    for (auto i = begin; i < end; ++i) {
        auto const p = point(order_[i]);
        for (std::size_t k = 0; k < width_; ++k) {
            low[k] = std::min(low[k], p[k]);
            high[k] = std::max(high[k], p[k]);
        }
        nodes_[at].least_on_a = std::min(nodes_[at].least_on_a, on_a_[order_[i]]);
        nodes_[at].most_on_a = std::max(nodes_[at].most_on_a, on_a_[order_[i]]);
    }
    return at;
}

std::size_t HalfList::grow(std::uint32_t begin, std::uint32_t end) {
    auto const at = box(begin, end);
    auto const first = order_.begin() + begin, last = order_.begin() + end;
    std::size_t widest = 0;
    std::int64_t spread = -1;
    for (std::size_t k = 0; k < width_; ++k)
        if (auto const s = std::int64_t{most(at)[k]} - least(at)[k]; s > spread) spread = s, widest = k;
    if (end - begin <= kLeaf) {
        std::sort(first, last);
        return at;
    }
    auto const middle = begin + (end - begin) / 2;
    // Equal values by number, so that the halves are the same on every machine.
    auto const split = [&](auto value) {
        std::nth_element(first, order_.begin() + middle, last, [&](std::uint32_t a, std::uint32_t b) {
            auto const x = value(a), y = value(b);
            return x != y ? x < y : a < b;
        });
    };
    if (spread > 0)
        split([&](std::uint32_t i) { return point(i)[widest]; });
    else
        split([&](std::uint32_t i) { return on_a_[i]; });
    grow(begin, middle);
    auto const right = grow(middle, end);
    nodes_[at].right = static_cast<std::int32_t>(right);
    return at;
}

void HalfList::write(std::size_t i, Assignment& choice) const {
    auto code = code_[i];
    for (Group const& g : half_) {
        auto const minus = static_cast<std::size_t>(code % g.ways());
        code /= g.ways();
        for (std::size_t k = 0; k < g.members.size(); ++k)
            choice[static_cast<std::size_t>(g.members[k])] = k + minus < g.members.size();
    }
}

std::size_t HalfList::bytes_of(std::uint64_t size, std::size_t situations) {
    // Points, counts and codes, once more while they are put in order; a node for every four or so points.
    auto const one = situations * 4 + 14;
    auto const node = sizeof(Node) + situations * 8;
    return size > kHuge / 1000 ? kHuge : static_cast<std::size_t>(size * (one + situations * 4 + node / 3));
}

} // namespace legwork
