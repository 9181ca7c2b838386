// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/sum_table.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <numeric>
#include <utility>

namespace legwork {

namespace {

std::size_t at(std::int64_t i) { return static_cast<std::size_t>(i); }

// The most that items can add with so many moves: the best for their moves first, the last one whole.
template <class Items, class Amount>
std::int64_t most_with(Items const& items, int moves, Amount amount) {
    std::vector<std::pair<std::int64_t, int>> going;
    for (auto const& i : items)
        if (amount(i) > 0) going.push_back({amount(i), i.moves});
    // By what each adds a move, compared crosswise: so what costs no move comes first.
    std::ranges::stable_sort(going,
                             [](auto const& a, auto const& b) { return a.first * b.second > b.first * a.second; });
    std::int64_t sum = 0;
    for (auto const& [add, cost] : going) {
        if (cost > 0 && moves <= 0) continue;
        sum += add;
        moves -= cost;
    }
    return sum;
}

} // namespace

SumTable::SumTable(LegProblem const& problem, std::size_t situation) : problem_(problem), situation_(situation) {
    std::int64_t divisor = 0;
    for (Decision const& d : problem.decisions) divisor = std::gcd(divisor, d.d[situation]);
    grain_ = std::max<std::int64_t>(1, divisor);
}

std::vector<SumTable::Item> SumTable::items(bool with_moves) const {
    std::vector<Item> all;
    for (Decision const& d : problem_.decisions) {
        int const to_minus = with_moves ? d.minus_moves - d.plus_moves : 0;
        bool const plus = to_minus >= 0;
        // The other side changes D by twice d: that is one step of double grains.
        auto const step = d.d[situation_] / grain_;
        all.push_back({plus, std::abs(to_minus), d.is_single ? (plus ? -1 : 1) : 0, plus ? -step : step});
    }
    return all;
}

std::int64_t SumTable::preferred_difference(std::vector<Item> const& items) const {
    auto d = problem_.constant[situation_];
    for (std::size_t i = 0; i < items.size(); ++i)
        d += (items[i].prefers_plus ? 1 : -1) * problem_.decisions[i].d[situation_];
    return d;
}

int SumTable::preferred_count(std::vector<Item> const& items) const {
    int n = 0;
    for (std::size_t i = 0; i < items.size(); ++i) n += problem_.decisions[i].is_single && items[i].prefers_plus;
    return n;
}

void SumTable::set_counts(Shape& s, std::vector<Item> const& items, int moves) const {
    auto const singles = static_cast<int>(std::ranges::count_if(problem_.decisions, &Decision::is_single));
    if (problem_.least_on_a <= 0 && problem_.most_on_a >= singles) return;
    int const base = preferred_count(items);
    auto low = static_cast<int>(most_with(items, moves, [](Item const& i) { return std::int64_t{-i.on_a}; }));
    auto high = static_cast<int>(most_with(items, moves, [](Item const& i) { return std::int64_t{i.on_a}; }));
    // Counts that go one way only need not go past the range.
    bool const falls = high == 0, rises = low == 0;
    if (falls) low = std::min(low, std::max(0, base - problem_.least_on_a));
    if (rises) high = std::min(high, std::max(0, problem_.most_on_a - base));
    s.counted = true;
    s.low = low;
    s.counts = low + high + 1;
}

SumTable::Shape SumTable::shape(std::vector<Item> const& items, int moves) const {
    Shape s;
    set_counts(s, items, moves);
    std::vector<std::int64_t> up, down;
    for (int m = 0; m <= moves; ++m) {
        up.push_back(most_with(items, m, [](Item const& i) { return i.step; }));
        down.push_back(most_with(items, m, [](Item const& i) { return -i.step; }));
    }
    // Nobody needs to end further from even than where staying ends, if that is allowed.
    int const base = preferred_count(items);
    bool const can_stay = !s.counted || (base >= problem_.least_on_a && base <= problem_.most_on_a);
    auto const d = preferred_difference(items);
    // `even`: how far from the preferred sides D is nearest to nothing, in double grains.
    auto const even = -d / (2 * grain_), slack = std::abs(d) / (2 * grain_) + 2;
    for (int m = 0; m <= moves; ++m) {
        auto low = -down[at(m)], high = up[at(m)];
        if (can_stay) {
            low = std::max(low, even - slack - up[at(moves - m)]);
            high = std::min(high, even + slack + down[at(moves - m)]);
        }
        Band const band{low, at(std::max<std::int64_t>(0, high - low) / 64 + 1), s.size};
        s.size += band.words * at(s.counts);
        s.bands.push_back(band);
    }
    return s;
}

bool SumTable::fits(Shape const& s, std::size_t tables, Effort const& effort) {
    return s.size <= effort.bytes() / 8 / tables;
}

// Before any decision: all take their preferred side.
SumTable::Words SumTable::first_table(Shape const& s) {
    Words table(s.size, 0);
    auto const u = at(-s.bands[0].from);
    s.row(table, 0, 0).words[u / 64] = std::uint64_t{1} << (u % 64);
    return table;
}

// table := all states after one more decision. In place: rows are taken in the order that reads each before it grows.
void SumTable::add(Words& table, Item const& item, Shape const& s) {
    int const on_a = s.counted ? item.on_a : 0;
    for (int m = s.moves() - item.moves; m >= 0; --m) {
        auto const by = item.step + s.bands[at(m)].from - s.bands[at(m + item.moves)].from;
        for (int k = 0; k < s.counts; ++k) {
            int const n = on_a > 0 ? s.counts - s.low - 1 - k : k - s.low;
            if (s.holds(m, n + on_a)) or_shifted(s.row(table, m + item.moves, n + on_a), s.row(table, m, n), by);
        }
    }
}

std::optional<SumTable::Words> SumTable::table(std::vector<Item> const& items, Shape const& s, Effort& effort) const {
    if (!fits(s, 1, effort)) return {};
    auto table = first_table(s);
    // The last decision first, so that the reading back settles them in the file's order.
    for (auto i = items.rbegin(); i != items.rend(); ++i) {
        if (!effort.spend(static_cast<std::int64_t>(s.size))) return {};
        add(table, *i, s);
    }
    return table;
}

bool SumTable::reached(Words& table, Shape const& s, State const& state) {
    if (!s.holds(state.moves, state.on_a)) return false;
    auto const row = s.row(table, state.moves, state.on_a);
    auto const u = state.d - s.bands[at(state.moves)].from;
    if (u < 0 || at(u) >= row.count * 64) return false;
    return (row.words[u / 64] >> (u % 64) & 1) != 0;
}

// The least |D| among the states with exactly `state.moves` moves and a count in range; sets the state.
std::int64_t SumTable::nearest(Words& table, Shape const& s, std::vector<Item> const& items, State& state) const {
    int const base = preferred_count(items);
    auto const& band = s.bands[at(state.moves)];
    // Bit u stands for D = lowest + 2 grain u; the first that leaves A not lighter.
    auto const lowest = preferred_difference(items) + 2 * grain_ * band.from;
    auto const even = lowest >= 0 ? 0 : at((-lowest + 2 * grain_ - 1) / (2 * grain_));
    auto const size = [&](std::size_t u) { return std::abs(lowest + 2 * grain_ * static_cast<std::int64_t>(u)); };
    std::int64_t best = kUnreachable;
    for (int n = -s.low; n < s.counts - s.low; ++n) {
        if (s.counted && (base + n < problem_.least_on_a || base + n > problem_.most_on_a)) continue;
        auto const row = s.row(table, state.moves, n);
        auto const consider = [&](std::optional<std::size_t> u) {
            if (!u || size(*u) >= best) return;
            best = size(*u);
            state.on_a = n;
            state.d = static_cast<std::int64_t>(*u) + band.from;
        };
        consider(first_set(row, even));
        consider(last_set_before(row, even));
    }
    return best;
}

std::optional<std::int64_t> SumTable::least(Effort& effort) const {
    auto const all = items(false);
    auto const s = shape(all, 0);
    auto finished = table(all, s, effort);
    if (!finished) return {};
    State state;
    return nearest(*finished, s, all, state);
}

std::optional<std::vector<std::int64_t>> SumTable::by_moves(int most, bool to_read, Effort& effort) const {
    auto const all = items(true);
    auto const s = shape(all, most);
    if (to_read && !fits(s, 2 * stride() + 4, effort)) return {};
    auto finished = table(all, s, effort);
    if (!finished) return {};
    std::vector<std::int64_t> least;
    for (int m = 0; m <= most; ++m) {
        State state{m, 0, 0};
        auto const here = nearest(*finished, s, all, state);
        least.push_back(least.empty() ? here : std::min(here, least.back()));
    }
    return least;
}

// Every so-many-th table is kept while an assignment is read back; those between are made again from the one before.
std::size_t SumTable::stride() const {
    return std::max<std::size_t>(1,
                                 static_cast<std::size_t>(std::sqrt(static_cast<double>(problem_.decisions.size()))));
}

std::optional<Assignment> SumTable::assignment(std::optional<int> moves, std::int64_t worst, Effort& effort) const {
    auto const all = items(moves.has_value());
    auto const s = shape(all, moves.value_or(0));
    auto const stride = this->stride();
    if (!fits(s, 2 * stride + 4, effort)) return {};
    std::vector<Words> kept;
    auto current = first_table(s);
    for (std::size_t done = 0;; ++done) { // table `done` holds the last `done` decisions
        if (done % stride == 0) kept.push_back(current);
        if (done == all.size()) break;
        if (!effort.spend(static_cast<std::int64_t>(s.size))) return {};
        add(current, all[all.size() - 1 - done], s);
    }
    State state;
    while (state.moves <= s.moves() && nearest(current, s, all, state) != worst) ++state.moves;
    if (state.moves > s.moves()) return {};
    return read_back(all, s, state, std::move(kept), effort);
}

std::optional<Assignment> SumTable::read_back(std::vector<Item> const& items, Shape const& s, State state,
                                              std::vector<Words> kept, Effort& effort) const {
    auto const stride = this->stride();
    Assignment choice(items.size());
    std::vector<Words> block; // tables from a kept one up to the one of the decisions after this
    for (std::size_t i = 0; i < items.size(); ++i) {
        std::size_t const after = items.size() - 1 - i;
        if (block.empty()) block.push_back(std::exchange(kept[after / stride], {}));
        for (auto n = after / stride * stride + block.size() - 1; n < after; ++n) {
            if (!effort.spend(static_cast<std::int64_t>(s.size))) return {};
            block.push_back(block.back());
            add(block.back(), items[items.size() - 1 - n], s);
        }
        Item const& item = items[i];
        // An earlier decision comes before a later one: it keeps its preferred side wherever the rest can still get
        // there.
        bool const preferred = reached(block.back(), s, state);
        if (!preferred)
            state = {state.moves - item.moves, state.on_a - (s.counted ? item.on_a : 0), state.d - item.step};
        choice[i] = preferred == item.prefers_plus;
        block.pop_back();
    }
    return choice;
}

} // namespace legwork
