// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/seats/line_room.h"

#include "balance/seats/line_pass.h"

#include <algorithm>
#include <utility>

namespace legwork {

namespace {

std::size_t at(int i) { return static_cast<std::size_t>(i); }

// Many pairs that stand apart today are rare: up to so many cases are looked at.
constexpr std::size_t kMostCases = 64;
constexpr std::int64_t kStepsAVisit = 4; // measured: some 8 ns

enum class Apart { home, keep_a, keep_b, lift };

// How a unit that has no block of its own may be treated, one case each; empty for all others.
std::vector<Apart> ways_apart(Unit const& u) {
    if (u.held || u.kind != Unit::Kind::pair || u.is_block) return {};
    std::vector<Apart> ways;
    if (u.home_ok) ways.push_back(Apart::home);
    if (u.keep_a) ways.push_back(Apart::keep_a);
    if (u.keep_b) ways.push_back(Apart::keep_b);
    if (ways.empty()) ways.push_back(Apart::lift);
    return ways;
}

class CaseBuilder {
public:
    explicit CaseBuilder(PanelModel const& m) : m_(m) {
        auto const n = at(m.cells());
        c_.singles.resize(n);
        c_.tiles.resize(n);
        c_.block.assign(n, -1);
        c_.payer.assign(n, -1);
        c_.must.assign(n, -1);
        c_.wall = m.wall;
    }

    void add(int index, Unit const& u, Apart way) {
        if (u.held) return;
        if (u.kind == Unit::Kind::single) {
            if (u.home_ok) c_.singles[at(u.cell_a)].push_back(index);
        } else if (u.is_block) {
            add_block(index, u);
        } else if (u.kind == Unit::Kind::two_pole) {
            ++c_.asked;
        } else {
            add_apart(index, u, way);
        }
    }

    LineRoom::LineCase build() { return std::move(c_); }

private:
    void add_block(int index, Unit const& u) {
        int const upper = std::min(u.cell_a, u.cell_b);
        c_.block[at(upper)] = index;
        if (u.half_held()) return hold_half(index, u);
        c_.payer[at(upper)] = index;
        if (u.keep_a) add_tiles(index, u.cell_a, Fate::keep_a, u.cell_b);
        if (u.keep_b) add_tiles(index, u.cell_b, Fate::keep_b, u.cell_a);
    }

    void add_apart(int index, Unit const& u, Apart way) {
        switch (way) {
        case Apart::lift: ++c_.asked; return;
        case Apart::home:
            c_.wall[at(u.cell_a)] = c_.wall[at(u.cell_b)] = true;
            c_.stay_put.push_back(index);
            return;
        case Apart::keep_a:
        case Apart::keep_b: break;
        }
        if (u.half_held()) return hold_half(index, u);
        bool const a = way == Apart::keep_a;
        c_.payer[at(a ? u.cell_a : u.cell_b)] = index;
        add_tiles(index, a ? u.cell_a : u.cell_b, a ? Fate::keep_a : Fate::keep_b, -1);
    }

    void hold_half(int index, Unit const& u) {
        int const cell = u.a_held ? u.cell_a : u.cell_b;
        // Two half-held pairs on one space (its two halves): each would need its own neighbour; not looked at.
        if (cell < 0 || c_.must[at(cell)] >= 0) return void(c_.asked += kMostPairs);
        c_.must[at(cell)] = index;
        add_tiles(index, cell, u.a_held ? Fate::keep_a : Fate::keep_b,
                  u.home_ok ? (u.a_held ? u.cell_b : u.cell_a) : -1);
    }

    // Both neighbours of the half that stays, but not the place the other has today.
    void add_tiles(int index, int cell, Fate fate, int not_here) {
        Unit const& u = m_.units[at(index)];
        int const other = fate == Fate::keep_a ? u.b : u.a;
        auto const fits = [&](int c) { return c != not_here && !c_.wall[at(c)] && m_.reaches(other, c); };
        if (cell > 0 && m_.joined(cell - 1, cell) && fits(cell - 1))
            c_.tiles[at(cell - 1)].push_back({index, cell - 1, cell, fate});
        if (m_.joined(cell, cell + 1) && fits(cell + 1)) c_.tiles[at(cell)].push_back({index, cell, cell, fate});
    }

    static constexpr int kMostPairs = 1000;
    PanelModel const& m_;
    LineRoom::LineCase c_;
};

std::vector<FateCost> costs_of(PanelModel const& m, Signs const* signs) {
    std::vector<FateCost> costs;
    for (std::size_t i = 0; i < m.units.size(); ++i) {
        auto const moves = unit_moves(m, m.units[i], signs ? (*signs)[i] : 0);
        int const base = signs ? moves.least() : 0;
        auto const cost = [&](int n) { return n >= kImpossible ? kNoWay : kMoveCost * (n - base); };
        bool const two_wires = m.units[i].kind == Unit::Kind::two_pole && moves.lift > 0;
        costs.push_back({cost(moves.home), cost(moves.keep_a), cost(moves.keep_b), cost(moves.lift) + two_wires});
    }
    return costs;
}

// A fate that the signs rule out makes the whole case impossible.
int stay_put_cost(LineRoom::LineCase const& c, std::vector<FateCost> const& costs) {
    int sum = 0;
    for (int const u : c.stay_put) {
        if (costs[at(u)].home >= kNoWay) return kNoWay;
        sum += costs[at(u)].home;
    }
    return sum;
}

} // namespace

LineRoom::LineRoom(PanelModel const& model) : model_(model) {
    std::vector<std::vector<Apart>> cases{{}};
    for (Unit const& u : model.units) {
        auto ways = ways_apart(u);
        if (ways.empty()) ways.push_back(Apart::lift); // not looked at
        if (ways.size() * cases.size() > kMostCases) {
            ways.resize(1);
            exact_ = false;
        }
        auto const so_far = std::exchange(cases, {});
        for (auto const& c : so_far)
            for (Apart const w : ways) {
                cases.push_back(c);
                cases.back().push_back(w);
            }
    }
    for (auto const& ways : cases) {
        CaseBuilder builder(model);
        // Walls of pairs that stay first, so that no tile lies on them.
        for (std::size_t i = 0; i < ways.size(); ++i)
            if (ways[i] == Apart::home) builder.add(static_cast<int>(i), model.units[i], ways[i]);
        for (std::size_t i = 0; i < ways.size(); ++i)
            if (ways[i] != Apart::home) builder.add(static_cast<int>(i), model.units[i], ways[i]);
        cases_.push_back(builder.build());
    }
}

Room::Extra LineRoom::extra_moves(Signs const& signs, Effort& effort) const {
    effort.spend(steps_a_look());
    auto const costs = costs_of(model_, &signs);
    int least = kNoWay;
    for (LineCase const& c : cases_) {
        int const put = stay_put_cost(c, costs);
        if (put >= least) continue;
        least = std::min(least, put + LinePass(model_, c, costs, false, false).costs()[0]);
        // No move at all: no other case has fewer.
        if (least < kMoveCost) break;
    }
    return {least >= kNoWay ? kImpossible : least / kMoveCost, exact_};
}

std::int64_t LineRoom::steps_a_look() const {
    std::int64_t visits = 0;
    for (LineCase const& c : cases_) visits += LinePass::size(model_, c);
    return visits * kStepsAVisit;
}

std::optional<Rooming> LineRoom::rooming(Signs const& signs, Effort& effort) const {
    effort.spend(steps_a_look());
    auto const costs = costs_of(model_, &signs);
    int least = kNoWay;
    std::optional<Rooming> best;
    for (LineCase const& c : cases_) {
        int const put = stay_put_cost(c, costs);
        if (put >= least) continue;
        LinePass const pass(model_, c, costs, false, true);
        if (put + pass.costs()[0] >= least) continue;
        least = put + pass.costs()[0];
        best = pass.trace(0, nullptr);
    }
    return best;
}

namespace {

// Units that stand in no cell of a case: their moves are the same whatever is done.
int moves_without_place(PanelModel const& m) {
    int n = 0;
    for (Unit const& u : m.units) {
        bool const placed = u.held || u.home_ok || u.keep_a || u.keep_b;
        if (!placed) n += unit_moves(m, u, 0).least();
    }
    return n;
}

// The sign of a pair that its fate asks for; 0 where both are as cheap.
signed char sign_by_fate(PanelModel const& m, Unit const& u, Fate fate) {
    if (u.kind != Unit::Kind::pair || fate == Fate::lift || u.half_held() || u.held) return 0;
    int const cell = fate == Fate::keep_b ? u.cell_b : u.cell_a;
    bool const on_a = m.leg[at(cell)] == Leg::a;
    return on_a == (fate != Fate::keep_b) ? 1 : -1;
}

} // namespace

Room::Fewest LineRoom::fewest_moves(int least, int most, Effort& effort) const {
    bool const two = model_.legs == Legs::two;
    int anywhere = 0; // singles without a place of today
    for (Unit const& u : model_.units) anywhere += two && u.kind == Unit::Kind::single && !u.held && !u.home_ok;
    auto const costs = costs_of(model_, nullptr);
    int best = kNoWay;
    Fewest found{{}, {}, exact_};
    for (LineCase const& c : cases_) {
        int const put = stay_put_cost(c, costs);
        if (put >= best) continue;
        LinePass const pass(model_, c, costs, two, true);
        effort.spend(pass.visits() * kStepsAVisit);
        for (int n = 0; n < static_cast<int>(pass.costs().size()); ++n) {
            // Singles without a place of today may make up for what leg A lacks.
            if (two && (n > most || n + anywhere < least)) continue;
            if (put + pass.costs()[at(n)] >= best) continue;
            best = put + pass.costs()[at(n)];
            Signs signs(model_.units.size(), 0);
            auto const r = pass.trace(n, two ? &signs : nullptr);
            for (std::size_t i = 0; two && i < signs.size(); ++i)
                if (auto const s = sign_by_fate(model_, model_.units[i], r.fate[i])) signs[i] = s;
            found = {best / kMoveCost + moves_without_place(model_), std::move(signs), exact_};
        }
    }
    return found;
}

int LineRoom::pairs_asked() const {
    return static_cast<int>(std::ranges::count_if(
        model_.units, [](Unit const& u) { return !u.held && !u.half_held() && u.kind != Unit::Kind::single; }));
}

int LineRoom::pairs_that_fit() const {
    int fit = 0, run = 0;
    for (int c = 0; c < model_.cells(); ++c) {
        run = model_.wall[at(c)] ? 0 : run + 1;
        if (run == 2) ++fit, run = 0;
        if (model_.line_end[at(c)]) run = 0;
    }
    return fit;
}

} // namespace legwork
