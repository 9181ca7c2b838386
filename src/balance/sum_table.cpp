// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/sum_table.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numeric>
#include <utility>

namespace legwork {

namespace {

std::size_t at(int i) { return static_cast<std::size_t>(i); }

void or_shifted(std::uint64_t* to, std::uint64_t const* from, std::size_t words, std::size_t up) {
    std::size_t const whole = up / 64, bits = up % 64;
    if (bits == 0) {
        for (std::size_t i = whole; i < words; ++i) to[i] |= from[i - whole];
        return;
    }
    if (whole < words) to[whole] |= from[0] << bits;
    for (std::size_t i = whole + 1; i < words; ++i)
        to[i] |= (from[i - whole] << bits) | (from[i - whole - 1] >> (64 - bits));
}

std::optional<std::size_t> first_set(std::uint64_t const* row, std::size_t words, std::size_t from) {
    for (auto w = from / 64; w < words; ++w) {
        auto const bits = w == from / 64 ? row[w] & (~std::uint64_t{0} << (from % 64)) : row[w];
        if (bits) return w * 64 + at(__builtin_ctzll(bits));
    }
    return {};
}

std::optional<std::size_t> last_set_before(std::uint64_t const* row, std::size_t words, std::size_t end) {
    end = std::min(end, words * 64);
    for (auto w = (end + 63) / 64; w-- > 0;) {
        auto bits = row[w];
        if (w == end / 64) bits &= (std::uint64_t{1} << (end % 64)) - 1;
        if (bits) return w * 64 + 63 - at(__builtin_clzll(bits));
    }
    return {};
}

} // namespace

SumTable::SumTable(LegProblem const& problem, std::size_t situation) : problem_(problem), situation_(situation) {
    std::int64_t divisor = 0, sum = 0;
    for (Decision const& d : problem.decisions) {
        divisor = std::gcd(divisor, d.d[situation]);
        sum += std::abs(d.d[situation]);
    }
    grain_ = std::max<std::int64_t>(1, divisor);
    most_up_ = static_cast<std::size_t>(sum / grain_);
}

std::vector<SumTable::Item> SumTable::items(bool with_moves) const {
    std::vector<Item> all;
    for (Decision const& d : problem_.decisions) {
        auto const v = d.d[situation_];
        auto const size = static_cast<std::size_t>(std::abs(v) / grain_);
        Choice plus{true, with_moves ? d.plus_moves : 0, d.is_single, v > 0 ? size : 0};
        Choice minus{false, with_moves ? d.minus_moves : 0, 0, v < 0 ? size : 0};
        Item item{plus, minus};
        if (minus.moves < plus.moves) std::swap(item.first, item.second);
        all.push_back(item);
    }
    for (Item& i : all) { // count from the preferred choice, so that few moves span few counts
        if (i.first.moves == i.second.moves) continue;
        i.second.on_a -= i.first.on_a;
        i.first.on_a = 0;
    }
    return all;
}

SumTable::Shape SumTable::shape(std::vector<Item> const& items, int moves) const {
    Shape s;
    auto const singles = static_cast<int>(std::ranges::count_if(problem_.decisions, &Decision::is_single));
    s.moves = moves;
    s.words = most_up_ / 64 + 1;
    if (problem_.least_on_a <= 0 && problem_.most_on_a >= singles) return s; // the counts forbid nothing
    int down = 0, up = 0, open = 0;
    for (Item const& i : items) {
        if (i.first.moves == i.second.moves)
            open += i.first.on_a != i.second.on_a;
        else
            (i.second.on_a < 0 ? down : up) += i.second.on_a != 0;
    }
    s.low = std::min(down, moves);
    s.counts = s.low + std::min(up, moves) + open + 1;
    return s;
}

bool SumTable::fits(Shape const& s, std::size_t tables, Effort const& effort) const {
    return s.bytes() / 1024 * tables < effort.bytes() / 1024 && s.words < effort.bytes();
}

// table := all states after one more decision.
void SumTable::add(Words& table, Words& scratch, Item const& item, Shape const& s) const {
    std::ranges::fill(scratch, 0);
    for (Choice const& c : {item.first, item.second})
        for (int m = 0; m + c.moves <= s.moves; ++m)
            for (int n = -s.low; n < s.counts - s.low; ++n) {
                int const to = s.counts == 1 ? 0 : n + c.on_a;
                if (to < -s.low || to >= s.counts - s.low) continue;
                or_shifted(&scratch[s.row(m + c.moves, to)], &table[s.row(m, n)], s.words, c.up);
            }
    std::swap(table, scratch);
}

std::optional<SumTable::Words> SumTable::table(std::vector<Item> const& items, Shape const& s, Effort& effort) const {
    if (!fits(s, 2, effort)) return {};
    auto const size = s.bytes() / 8;
    Words table(size, 0), scratch(size, 0);
    table[s.row(0, 0)] = 1;
    for (auto i = items.rbegin(); i != items.rend(); ++i) {
        if (!effort.spend(static_cast<std::int64_t>(size))) return {};
        add(table, scratch, *i, s);
    }
    return table;
}

// The least |D| among the states with exactly `moves` moves and a count in range, and where it is.
std::int64_t SumTable::nearest(Words const& table, Shape const& s, int moves, std::vector<Item> const& items, int* on_a,
                               std::size_t* up) const {
    int base = 0; // singles on leg A when all take the preferred choice
    for (std::size_t i = 0; i < items.size(); ++i)
        if (items[i].first.moves != items[i].second.moves && problem_.decisions[i].is_single)
            base += items[i].first.plus;
    // D = difference(0) + 2 grain u; the first sum that leaves A not lighter.
    auto const lowest = problem_.constant[situation_] - static_cast<std::int64_t>(most_up_) * grain_;
    auto const even = lowest >= 0 ? 0 : static_cast<std::size_t>((-lowest + 2 * grain_ - 1) / (2 * grain_));
    auto const size = [&](std::size_t u) { return std::abs(lowest + 2 * grain_ * static_cast<std::int64_t>(u)); };
    std::int64_t best = kUnreachable;
    for (int n = -s.low; n < s.counts - s.low; ++n) {
        if (s.counts > 1 && (base + n < problem_.least_on_a || base + n > problem_.most_on_a)) continue;
        auto const* row = &table[s.row(moves, n)];
        auto const consider = [&](std::optional<std::size_t> u) {
            if (!u || size(*u) >= best) return;
            best = size(*u);
            *on_a = n;
            *up = *u;
        };
        consider(first_set(row, s.words, even));
        consider(last_set_before(row, s.words, even));
    }
    return best;
}

std::optional<std::int64_t> SumTable::least(Effort& effort) const {
    auto const all = items(false);
    auto const s = shape(all, 0);
    auto const finished = table(all, s, effort);
    if (!finished) return {};
    int n = 0;
    std::size_t up = 0;
    return nearest(*finished, s, 0, all, &n, &up);
}

std::optional<std::vector<std::int64_t>> SumTable::by_moves(int most, Effort& effort) const {
    auto const all = items(true);
    auto const s = shape(all, most);
    if (!fits(s, 2 * stride() + 4, effort)) return {};
    auto const finished = table(all, s, effort);
    if (!finished) return {};
    std::vector<std::int64_t> least;
    for (int m = 0; m <= most; ++m) {
        int n = 0;
        std::size_t up = 0;
        auto const here = nearest(*finished, s, m, all, &n, &up);
        least.push_back(least.empty() ? here : std::min(here, least.back()));
    }
    return least;
}

// Every so-many-th table is kept while an assignment is read back; those between are made again from the one before.
std::size_t SumTable::stride() const {
    return std::max<std::size_t>(1,
                                 static_cast<std::size_t>(std::sqrt(static_cast<double>(problem_.decisions.size()))));
}

std::optional<Assignment> SumTable::assignment(std::optional<int> most, std::int64_t worst, Effort& effort) const {
    int const moves = most.value_or(0);
    auto const all = items(most.has_value());
    auto const s = shape(all, moves);
    auto const stride = this->stride();
    if (!fits(s, 2 * stride + 4, effort)) return {};
    auto const size = s.bytes() / 8;
    std::vector<Words> kept;
    Words current(size, 0), scratch(size, 0);
    current[s.row(0, 0)] = 1;
    for (std::size_t done = 0;; ++done) { // table `done` holds the last `done` decisions
        if (done % stride == 0) kept.push_back(current);
        if (done == all.size()) break;
        if (!effort.spend(static_cast<std::int64_t>(size))) return {};
        add(current, scratch, all[all.size() - 1 - done], s);
    }
    int m = 0, n = 0;
    std::size_t up = 0;
    while (m <= moves && nearest(current, s, m, all, &n, &up) != worst) ++m;
    if (m > moves) return {};
    Assignment choice(all.size());
    std::vector<Words> block;
    for (std::size_t i = 0; i < all.size(); ++i) {
        std::size_t const before = all.size() - 1 - i; // decisions after this one
        if (block.empty()) {
            for (block.push_back(std::exchange(kept[before / stride], {})); block.size() <= before % stride;) {
                Words next = block.back();
                if (!effort.spend(static_cast<std::int64_t>(size))) return {};
                add(next, scratch, all[all.size() - 1 - (before / stride * stride + block.size() - 1)], s);
                block.push_back(std::move(next));
            }
        }
        auto const& table = block.back();
        for (Choice const& c : {all[i].first, all[i].second}) {
            int const count = s.counts == 1 ? 0 : n - c.on_a;
            if (m < c.moves || up < c.up || count < -s.low || count >= s.counts - s.low) continue;
            if (auto const from = up - c.up; !(table[s.row(m - c.moves, count) + from / 64] >> (from % 64) & 1))
                continue;
            choice[i] = c.plus;
            m -= c.moves;
            n = count;
            up -= c.up;
            break;
        }
        block.pop_back();
    }
    return choice;
}

} // namespace legwork
