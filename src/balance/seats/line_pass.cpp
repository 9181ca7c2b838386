// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/seats/line_pass.h"

#include <algorithm>
#include <utility>

namespace legwork {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }
} // namespace

int FateCost::of(Fate f) const {
    switch (f) {
    case Fate::home: return home;
    case Fate::keep_a: return keep_a;
    case Fate::keep_b: return keep_b;
    case Fate::lift: break;
    }
    return lift;
}

LinePass::PairRange LinePass::pair_range(PanelModel const& model, LineRoom::LineCase const& c) {
    int payers = 0, held = 0;
    for (int i = 0; i < model.cells(); ++i) {
        payers += c.payer[at(i)] >= 0;
        held += c.must[at(i)] >= 0;
    }
    // More than this is never needed: what is asked, what must leave, and what half-held pairs may push out.
    return {-payers, c.asked + payers + 2 * held};
}

std::int64_t LinePass::size(PanelModel const& model, LineRoom::LineCase const& c) {
    auto const range = pair_range(model, c);
    return std::int64_t{4} * (range.most - range.least + 1) * model.cells();
}

LinePass::LinePass(PanelModel const& model, LineRoom::LineCase const& c, std::vector<FateCost> const& costs,
                   bool open_legs, bool traced)
    : model_(model), case_(c), unit_cost_(costs), traced_(traced) {
    int singles = 0;
    for (int i = 0; i < model.cells(); ++i) {
        options_.push_back(options(i, open_legs));
        singles += static_cast<int>(c.singles[at(i)].size());
    }
    auto const range = pair_range(model, c);
    least_pairs_ = range.least;
    most_pairs_ = range.most;
    if (open_legs) counts_ = singles + 1;
    run();
}

int LinePass::index(State const& s) const {
    // A state as one number, its parts as digits of mixed base.
    return ((s.odd * 2 + s.after_upper) * (most_pairs_ - least_pairs_ + 1) + s.pairs - least_pairs_) * counts_ + s.on_a;
}

LinePass::State LinePass::state(int index) const {
    State s{};
    s.on_a = index % counts_;
    index /= counts_;
    int const width = most_pairs_ - least_pairs_ + 1;
    s.pairs = index % width + least_pairs_;
    index /= width;
    s.after_upper = index % 2;
    s.odd = index / 2;
    return s;
}

std::vector<CellOption> LinePass::options(int cell, bool open_legs) const {
    std::vector<CellOption> found;
    auto const& here = case_.singles[at(cell)];
    int const home_on_a = open_legs && model_.leg[at(cell)] == Leg::a;
    auto const others = [&](int stays) {
        std::vector<CellOption> some{
            {stays < 0 ? 0 : unit_cost_[at(stays)].home, stays < 0 ? 0 : home_on_a, stays, {}}};
        for (int const u : here) {
            if (u == stays) continue;
            auto const so_far = std::exchange(some, {});
            for (CellOption const& o : so_far)
                for (int on_a = 0; on_a <= (open_legs ? 1 : 0); ++on_a) {
                    some.push_back(o);
                    some.back().cost += unit_cost_[at(u)].lift;
                    some.back().on_a += on_a;
                    if (open_legs) some.back().signs.emplace_back(u, static_cast<signed char>(on_a ? 1 : -1));
                }
        }
        found.insert(found.end(), some.begin(), some.end());
    };
    others(-1);
    for (int const u : here)
        if (unit_cost_[at(u)].home < kNoWay) others(u);
    return found;
}

// Of the unit that has its place here and does not get it.
int LinePass::payment(int cell, int& pairs) const {
    int const u = case_.payer[at(cell)];
    if (u < 0) return 0;
    --pairs;
    return unit_cost_[at(u)].lift;
}

void LinePass::reach(int from_cell, int from_index, int cell, State s, int cost, Step step, int choice, int second) {
    if (cost >= kNoWay || s.pairs < least_pairs_ || s.on_a >= counts_) return;
    s.pairs = std::min(s.pairs, most_pairs_);
    // A run of empty cells ends with its line.
    if (model_.line_end[at(cell - 1)]) s.odd = s.after_upper = 0;
    int const i = index(s);
    int& best = best_[row(cell) + at(i)];
    if (cost >= best) return;
    best = cost;
    if (!traced_) return;
    from_[row(cell) + at(i)] = {from_index, static_cast<short>(from_cell), static_cast<short>(choice),
                                static_cast<short>(second), step};
}

void LinePass::lay_tiles(int cell, int index, State const& s, int cost) {
    auto const& tiles = case_.tiles[at(cell)];
    for (std::size_t t = 0; t < tiles.size(); ++t) {
        auto const& tile = tiles[t];
        // The block's upper half has just stayed with the other above it; its lower half cannot stay too.
        if (s.after_upper && case_.block[at(cell - 1)] == tile.unit) continue;
        auto const& unit = unit_cost_[at(tile.unit)];
        int const keep = unit.of(tile.fate);
        if (keep >= kNoWay) continue;
        int pairs = s.pairs, paid = cost + keep;
        paid += payment(cell, pairs) + payment(cell + 1, pairs);
        bool const held = case_.must[at(tile.anchor)] >= 0;
        if (!held) ++pairs, paid -= unit.lift; // it was counted as lifted at its first cell
        bool const upper_of_block = tile.anchor == cell + 1 && case_.block[at(cell + 1)] == tile.unit && !held;
        auto const& first = options_[at(cell)];
        auto const& second = options_[at(cell + 1)];
        // Whoever stands on either cell has to leave it. Which tile, and which option of its first cell, are one
        // number.
        for (std::size_t i = 0; i < first.size(); ++i)
            for (std::size_t j = 0; j < second.size(); ++j)
                if (first[i].stays < 0 && second[j].stays < 0)
                    reach(cell, index, cell + 2, {0, upper_of_block, pairs, s.on_a + first[i].on_a + second[j].on_a},
                          paid + first[i].cost + second[j].cost, Step::tile, static_cast<int>(t * 64 + i),
                          static_cast<int>(j));
    }
}

void LinePass::advance(int cell, int index) {
    int const cost = best_[row(cell) + at(index)];
    State const s = state(index);
    int const block = case_.block[at(cell)], must = case_.must[at(cell)];
    if (block >= 0 && unit_cost_[at(block)].home < kNoWay)
        reach(cell, index, cell + 2, {0, 0, s.pairs, s.on_a}, cost + unit_cost_[at(block)].home, Step::block, 0, 0);
    lay_tiles(cell, index, s, cost);
    // A half that is held stands here: only a tile, with its other half, lies on this cell.
    if (must >= 0) return;
    if (case_.wall[at(cell)]) return reach(cell, index, cell + 1, {0, 0, s.pairs, s.on_a}, cost, Step::wall, 0, 0);
    int pairs = s.pairs;
    int const paid = cost + payment(cell, pairs);
    auto const& here = options_[at(cell)];
    for (std::size_t i = 0; i < here.size(); ++i) {
        bool const empty = here[i].stays < 0;
        State const next{empty ? 1 - s.odd : 0, 0, pairs + (empty && s.odd), s.on_a + here[i].on_a};
        reach(cell, index, cell + 1, next, paid + here[i].cost, empty ? Step::empty : Step::home, static_cast<int>(i),
              0);
    }
}

void LinePass::run() {
    int const states = 4 * (most_pairs_ - least_pairs_ + 1) * counts_;
    states_ = at(states);
    // No step goes further than two cells: untraced, three rows in turn are enough.
    auto const rows = at(traced_ ? model_.cells() + 2 : 3);
    best_.assign(rows * states_, kNoWay);
    if (traced_) from_.assign(rows * states_, From{});
    best_[row(0) + at(index({0, 0, 0, 0}))] = 0;
    for (int c = 0; c < model_.cells(); ++c) {
        for (int i = 0; i < states; ++i)
            if (best_[row(c) + at(i)] < kNoWay) ++visits_, advance(c, i);
        auto const done = best_.begin() + static_cast<std::ptrdiff_t>(row(c));
        if (!traced_) std::fill_n(done, states_, kNoWay); // the row of cell c + 3 from now on
    }
    final_.assign(at(counts_), kNoWay);
    for (int i = 0; i < states; ++i)
        if (State const s = state(i); s.pairs >= case_.asked)
            final_[at(s.on_a)] = std::min(final_[at(s.on_a)], best_[row(model_.cells()) + at(i)]);
}

Rooming LinePass::trace(int on_a, Signs* signs) const {
    Rooming r{std::vector<Fate>(model_.units.size(), Fate::lift),
              std::vector<int>(model_.units.size(), -1),
              std::vector<bool>(at(model_.cells()), false),
              {}};
    for (std::size_t u = 0; u < model_.units.size(); ++u)
        if (model_.units[u].held) r.fate[u] = Fate::home;
    for (int const u : case_.stay_put) r.fate[at(u)] = Fate::home;
    int cell = model_.cells(), i = 0;
    while (best_[row(cell) + at(i)] != final_[at(on_a)] || state(i).on_a != on_a || state(i).pairs < case_.asked) ++i;
    auto const settle = [&](int c, CellOption const& o) {
        if (o.stays >= 0)
            r.fate[at(o.stays)] = Fate::home;
        else
            r.empty[at(c)] = true;
        if (signs)
            for (auto const& [u, sign] : o.signs) (*signs)[at(u)] = sign;
        if (signs && o.stays >= 0) (*signs)[at(o.stays)] = model_.leg[at(c)] == Leg::a ? 1 : -1;
    };
    while (cell > 0) {
        From const f = from_[row(cell) + at(i)];
        auto const c = static_cast<int>(f.cell);
        switch (f.step) {
        case Step::block: r.fate[at(case_.block[at(c)])] = Fate::home; break;
        case Step::tile: {
            auto const& tile = case_.tiles[at(c)][at(f.choice / 64)];
            settle(c, options_[at(c)][at(f.choice % 64)]);
            settle(c + 1, options_[at(c + 1)][at(f.second)]);
            r.empty[at(c)] = r.empty[at(c + 1)] = false;
            r.fate[at(tile.unit)] = tile.fate;
            r.other_cell[at(tile.unit)] = tile.anchor == c ? c + 1 : c;
            break;
        }
        case Step::empty:
        case Step::home: settle(c, options_[at(c)][at(f.choice)]); break;
        case Step::wall:
        case Step::none: break;
        }
        i = f.state;
        cell = c;
    }
    return r;
}

} // namespace legwork
