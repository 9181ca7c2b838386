// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/half_list.h"

#include <algorithm>
#include <array>
#include <functional>
#include <limits>
#include <utility>

namespace legwork {

namespace {

constexpr std::int64_t kStepsListed = 30; // of the steps of a point

constexpr std::uint64_t kHuge = std::uint64_t{1} << 62;

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
    // The largest first, each to the smaller half: near enough to even.
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

std::uint64_t size_of(std::vector<Group> const& half, int most_moves) {
    // Choices by moves; those of more are not counted.
    std::vector<std::uint64_t> by_moves{1};
    for (Group const& g : half) {
        auto const n = static_cast<int>(g.members.size());
        auto const before = std::exchange(by_moves, {});
        for (std::size_t m = 0; m < before.size(); ++m)
            for (int minus = 0; minus <= n; ++minus) {
                auto const to = m + static_cast<std::size_t>(minus * g.minus_moves + (n - minus) * g.plus_moves);
                if (to > static_cast<std::size_t>(most_moves)) continue;
                if (to >= by_moves.size()) by_moves.resize(to + 1, 0);
                by_moves[to] = std::min(kHuge, by_moves[to] + before[m]);
            }
    }
    std::uint64_t n = 0;
    for (auto const m : by_moves) n = std::min(kHuge, n + m);
    return n;
}

namespace {

// Writes the rows of a half, one group after the other.
class Lister {
public:
    Lister(std::vector<Group> const& half, std::vector<std::int64_t> const& start, int most_moves,
           std::vector<std::int32_t>& rows, Effort& effort)
        : half_(half), most_moves_(most_moves), rows_(rows), effort_(effort), least_(half.size() + 1, 0) {
        for (std::size_t i = half.size(); i-- > 0;)
            least_[i] = least_[i + 1] +
                        static_cast<int>(half[i].members.size()) * std::min(half[i].plus_moves, half[i].minus_moves);
        for (auto const d : start) d_.push_back(static_cast<std::int32_t>(d));
        for (Group const& g : half) {
            steps_.emplace_back();
            for (auto const d : g.d) steps_.back().push_back(static_cast<std::int32_t>(d));
        }
        go(0, 0, 0, 0, 1);
    }

private:
    void go(std::size_t i, int moves, int on_a, std::uint64_t code, std::uint64_t base) {
        if (moves > most_moves_ - least_[i]) return;
        if (i == half_.size()) {
            if (!effort_.spend(kStepsListed)) return;
            rows_.insert(rows_.end(), d_.begin(), d_.end());
            // 31 bits of the code a word, since the numbers of a row have a sign.
            rows_.insert(rows_.end(), {on_a, moves, static_cast<std::int32_t>(code & 0x7fffffff),
                                       static_cast<std::int32_t>(code >> 31)});
            return;
        }
        Group const& g = half_[i];
        auto const n = static_cast<int>(g.members.size());
        add(i, n);
        for (int minus = 0; minus <= n && !effort_.is_over(); ++minus) {
            go(i + 1, moves + minus * g.minus_moves + (n - minus) * g.plus_moves, on_a + (g.is_single ? n - minus : 0),
               code + base * static_cast<std::uint64_t>(minus), base * g.ways());
            add(i, -2);
        }
        add(i, n + 2);
    }
    void add(std::size_t group, std::int32_t times) {
        for (std::size_t k = 0; k < d_.size(); ++k) d_[k] += times * steps_[group][k];
    }

    std::vector<Group> const& half_;
    int most_moves_;
    std::vector<std::int32_t>& rows_;
    Effort& effort_;
    std::vector<int> least_; // moves that the groups from here on must spend
    std::vector<std::int32_t> d_;
    std::vector<std::vector<std::int32_t>> steps_;
};

constexpr std::uint32_t kSample = 32;

} // namespace

HalfList::HalfList(std::vector<Group> const& half, std::vector<std::int64_t> const& start, int most_moves,
                   Effort& effort)
    : half_(half), width_(start.size()), stride_(start.size() + 4) {
    rows_.reserve(size_of(half_, most_moves) * stride_ + kLeaf);
    Lister const listed(half_, start, most_moves, rows_, effort);
    size_ = rows_.size() / stride_;
    rows_.resize(rows_.size() + kLeaf); // so that a leaf's columns can be read past their end
    if (size_ == 0) return;
    nodes_.reserve(size_ / 3 + 4);
    boxes_.reserve((size_ / 3 + 4) * 2 * columns());
    grow(0, static_cast<std::uint32_t>(size_), effort);
    if (!effort.is_over()) return;
    nodes_.clear();
    size_ = 0;
}

// Rows with less than the pivot first; where the others begin. The order within each part depends on the rows alone.
std::uint32_t HalfList::partition(std::uint32_t begin, std::uint32_t end, std::size_t column, std::int32_t pivot) {
    auto* const rows = rows_.data();
    while (true) {
        while (begin < end && rows[begin * stride_ + column] < pivot) ++begin;
        while (begin < end && rows[(end - 1) * stride_ + column] >= pivot) --end;
        if (begin == end) return begin;
        std::swap_ranges(rows + begin * stride_, rows + begin * stride_ + stride_, rows + (end - 1) * stride_);
        ++begin, --end;
    }
}

// Parts the rows about in the middle of the widest situation, as a sample of evenly spaced rows shows it.
std::uint32_t HalfList::split(std::uint32_t begin, std::uint32_t end) {
    auto const count = end - begin;
    auto const taken = std::clamp<std::uint32_t>(count / 8, 5, kSample);
    std::array<std::int32_t, kSample> sample, widest;
    std::int64_t spread = 0;
    std::size_t column = 0;
    for (std::size_t k = 0; k < columns(); ++k) {
        if (k == width_ && spread > 0) break; // by counts and moves only when no D tells them apart: tried, and slower
        auto low = std::numeric_limits<std::int32_t>::max(), high = std::numeric_limits<std::int32_t>::min();
        for (std::uint32_t i = 0; i < taken; ++i) {
            sample[i] = rows_[(begin + static_cast<std::size_t>(std::uint64_t{i} * count / taken)) * stride_ + k];
            low = std::min(low, sample[i]);
            high = std::max(high, sample[i]);
        }
        if (std::int64_t{high} - low <= spread) continue;
        spread = std::int64_t{high} - low;
        column = k;
        widest = sample;
    }
    if (spread == 0) return begin + count / 2;
    auto const middle = widest.begin() + taken / 2;
    std::nth_element(widest.begin(), middle, widest.begin() + taken);
    auto const least = *std::min_element(widest.begin(), widest.begin() + taken);
    return partition(begin, end, column, *middle > least ? *middle : least + 1);
}

std::size_t HalfList::grow(std::uint32_t begin, std::uint32_t end, Effort& effort) {
    auto const at = nodes_.size();
    nodes_.push_back({begin, end});
    boxes_.resize(boxes_.size() + 2 * columns());
    if (end - begin <= kLeaf) {
        effort.spend((kStepsAPoint - kStepsListed) * (end - begin));
        box_of_points(at);
        turn(nodes_[at]);
        return at;
    }
    auto const middle = split(begin, end);
    if (effort.is_over()) return at;
    grow(begin, middle, effort);
    auto const right = grow(middle, end, effort);
    nodes_[at].right = static_cast<std::int32_t>(right);
    box_of_halves(at);
    return at;
}

void HalfList::box_of_points(std::size_t at) {
    Node const& n = nodes_[at];
    auto* const low = &boxes_[at * 2 * columns()];
    auto* const high = low + columns();
    auto const* first = &rows_[n.begin * stride_];
    std::copy_n(first, columns(), low);
    std::copy_n(first, columns(), high);
    for (auto i = n.begin + 1; i < n.end; ++i) {
        auto const* p = &rows_[i * stride_];
        for (std::size_t k = 0; k < columns(); ++k) {
            low[k] = std::min(low[k], p[k]);
            high[k] = std::max(high[k], p[k]);
        }
    }
}

void HalfList::box_of_halves(std::size_t at) {
    auto const upper = at + 1, lower = static_cast<std::size_t>(nodes_[at].right);
    auto* const low = &boxes_[at * 2 * columns()];
    for (std::size_t k = 0; k < columns(); ++k) {
        low[k] = std::min(least(upper)[k], least(lower)[k]);
        low[columns() + k] = std::max(most(upper)[k], most(lower)[k]);
    }
}

// From rows to columns.
void HalfList::turn(Node const& leaf) {
    auto* const rows = &rows_[leaf.begin * stride_];
    std::size_t const points = leaf.points();
    std::vector<std::int32_t> const before(rows, rows + points * stride_);
    for (std::size_t i = 0; i < points; ++i)
        for (std::size_t k = 0; k < stride_; ++k) rows[k * points + i] = before[i * stride_ + k];
}

void HalfList::write(Point p, Assignment& choice) const {
    auto rest = static_cast<std::uint64_t>(value(p, columns())) | static_cast<std::uint64_t>(value(p, columns() + 1))
                                                                      << 31;
    for (Group const& g : half_) {
        auto const minus = static_cast<std::size_t>(rest % g.ways());
        rest /= g.ways();
        for (std::size_t k = 0; k < g.members.size(); ++k)
            choice[static_cast<std::size_t>(g.members[k])] = k + minus < g.members.size();
    }
}

std::size_t HalfList::bytes_of(std::uint64_t size, std::size_t situations) {
    auto const row = 4 * (situations + 4);
    auto const node = sizeof(Node) + 8 * (situations + 2);
    return size > kHuge / 1000 ? kHuge : static_cast<std::size_t>(size * (row + node / 3) + 4 * node);
}

} // namespace legwork
