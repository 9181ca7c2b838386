// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/legs.h"

#include <algorithm>
#include <cstdlib>

namespace legwork {

namespace {

std::size_t at(int i) { return static_cast<std::size_t>(i); }

class Builder {
public:
    explicit Builder(PanelModel const& m) : m_(m) {
        problem_.constant.assign(m.minimised.size(), 0);
        for (std::size_t c = 0; c < m.wall.size(); ++c)
            if (!m.wall[c]) ++(m.leg[c] == Leg::a ? free_a_ : free_b_);
    }

    LegProblem build() {
        for (std::size_t i = 0; i < m_.units.size(); ++i) add(static_cast<int>(i), m_.units[i]);
        auto const singles = static_cast<int>(std::ranges::count_if(problem_.decisions, &Decision::is_single));
        if (m_.legs == Legs::two) {
            problem_.most_on_a = std::min(singles, free_a_);
            problem_.least_on_a = std::max(0, singles - free_b_);
            // Pairs and two-pole breakers alone take more than there is: an empty range says so.
            if (free_a_ < 0 || free_b_ < 0) problem_.least_on_a = problem_.most_on_a + 1;
        } else if (free_a_ + free_b_ - in_phase_singles_ < 0) {
            problem_.least_on_a = problem_.most_on_a + 1;
        }
        return std::move(problem_);
    }

private:
    std::int64_t va(int circuit, std::size_t k) const { return m_.loads[at(circuit)].loads.va[m_.minimised[k]].a; }

    void add_constant(int circuit, Leg leg) {
        auto const& load = m_.loads[at(circuit)];
        for (std::size_t k = 0; k < m_.minimised.size(); ++k) {
            auto const& [a, b] = load.loads.va[m_.minimised[k]];
            problem_.constant[k] += !load.on_one_leg ? a - b : leg == Leg::a ? a : -a;
        }
    }

    Leg leg_today(int circuit) const { return m_.leg[at(m_.cell_of_space[at(m_.today[at(circuit)].front().space)])]; }

    void add(int index, Unit const& u) {
        if (u.held) {
            add_constant(u.a, leg_today(u.a));
            if (u.b >= 0) add_constant(u.b, leg_today(u.b));
            return;
        }
        switch (u.kind) {
        case Unit::Kind::two_pole: return add_two_pole(u);
        case Unit::Kind::single: return add_single(index, u);
        case Unit::Kind::pair: break;
        }
        if (u.half_held()) return add_half_held(u);
        add_pair(index, u);
    }

    void add_two_pole(Unit const& u) {
        --free_a_, --free_b_;
        add_constant(u.a, Leg::a);
        problem_.fixed_moves += unit_moves(m_, u, 0).least();
    }

    void add_half_held(Unit const& u) {
        Leg const held = leg_today(u.a_held ? u.a : u.b);
        add_constant(u.a, u.a_held ? held : other(held));
        add_constant(u.b, u.b_held ? held : other(held));
        --(held == Leg::a ? free_b_ : free_a_);
        problem_.fixed_moves += unit_moves(m_, u, 0).least();
    }

    void add_single(int index, Unit const& u) {
        ++in_phase_singles_;
        if (m_.legs != Legs::two) return void(problem_.fixed_moves += unit_moves(m_, u, 0).least());
        Decision d{index, {}, true, unit_moves(m_, u, 1).least(), unit_moves(m_, u, -1).least()};
        for (std::size_t k = 0; k < m_.minimised.size(); ++k) d.d.push_back(va(u.a, k));
        add(std::move(d));
    }

    void add(Decision d) {
        // What both ways cost is no choice: the search sees only the difference.
        int const either_way = std::min(d.plus_moves, d.minus_moves);
        problem_.fixed_moves += either_way;
        d.plus_moves -= either_way;
        d.minus_moves -= either_way;
        problem_.decisions.push_back(std::move(d));
    }

    void add_pair(int index, Unit const& u) {
        --free_a_, --free_b_;
        if (m_.legs != Legs::two) return void(problem_.fixed_moves += unit_moves(m_, u, 0).least());
        Decision d{index, {}, false, unit_moves(m_, u, 1).least(), unit_moves(m_, u, -1).least()};
        for (std::size_t k = 0; k < m_.minimised.size(); ++k) d.d.push_back(va(u.a, k) - va(u.b, k));
        add(std::move(d));
    }

    PanelModel const& m_;
    LegProblem problem_;
    int free_a_ = 0, free_b_ = 0, in_phase_singles_ = 0;
};

} // namespace

LegProblem leg_problem(PanelModel const& model) { return Builder(model).build(); }

std::vector<bool> LegProblem::of_units(std::vector<int> const& units) const {
    std::vector<bool> found;
    for (Decision const& d : decisions) found.push_back(std::ranges::count(units, d.unit) > 0);
    return found;
}

OpenLegs open_legs(LegProblem const& p, std::vector<signed char> const& made) {
    OpenLegs legs{p, {}, Assignment(p.decisions.size())};
    legs.problem.decisions.clear();
    for (std::size_t i = 0; i < p.decisions.size(); ++i) {
        Decision const& d = p.decisions[i];
        if (made[i] == 0) {
            legs.open.push_back(i);
            legs.problem.decisions.push_back(d);
            continue;
        }
        legs.choice[i] = made[i] > 0;
        legs.problem.settled.emplace_back(d.unit, made[i]);
        legs.problem.fixed_moves += made[i] > 0 ? d.plus_moves : d.minus_moves;
        for (std::size_t k = 0; k < p.situations(); ++k) legs.problem.constant[k] += made[i] * d.d[k];
        if (made[i] > 0 && d.is_single) --legs.problem.least_on_a, --legs.problem.most_on_a;
    }
    return legs;
}

Assignment OpenLegs::with(Assignment const& rest) const {
    auto whole = choice;
    for (std::size_t i = 0; i < open.size(); ++i) whole[open[i]] = rest[i];
    return whole;
}

LegProblem relaxed_leg_problem(PanelModel const& m) {
    LegProblem p;
    p.constant.assign(m.minimised.size(), 0);
    for (std::size_t i = 0; i < m.units.size(); ++i) {
        Unit const& u = m.units[i];
        auto const fixed = [&](int c) { return c >= 0 && m.circuits[at(c)]->fixed && !m.today[at(c)].empty(); };
        auto const d_of = [&](int c, std::size_t k) {
            auto const& load = m.loads[at(c)];
            auto const& [a, b] = load.loads.va[m.minimised[k]];
            return load.on_one_leg ? a : a - b;
        };
        bool const choosable = u.kind != Unit::Kind::two_pole && !fixed(u.a) && !fixed(u.b);
        Decision d{static_cast<int>(i), {}, false, 0, 0};
        for (std::size_t k = 0; k < m.minimised.size(); ++k)
            d.d.push_back(d_of(u.a, k) - (u.b >= 0 ? d_of(u.b, k) : 0));
        if (choosable) {
            p.decisions.push_back(std::move(d));
            continue;
        }
        int sign = 1;
        if (u.kind != Unit::Kind::two_pole) {
            int const known = fixed(u.a) ? u.a : u.b;
            int const cell = m.cell_of_space[at(m.today[at(known)].front().space)];
            sign = ((cell >= 0 && m.leg[at(cell)] == Leg::b) ? -1 : 1) * (known == u.a ? 1 : -1);
        }
        for (std::size_t k = 0; k < m.minimised.size(); ++k) p.constant[k] += sign * d.d[k];
    }
    return p;
}

Signs signs_of(PanelModel const& model, LegProblem const& problem, Assignment const& choice) {
    Signs signs(model.units.size(), 0);
    for (auto const& [unit, sign] : problem.settled) signs[at(unit)] = sign;
    for (std::size_t i = 0; i < choice.size(); ++i) signs[at(problem.decisions[i].unit)] = choice[i] ? 1 : -1;
    return signs;
}

std::vector<std::int64_t> differences(LegProblem const& problem, Assignment const& choice) {
    auto sum = problem.constant;
    for (std::size_t i = 0; i < choice.size(); ++i)
        for (std::size_t k = 0; k < sum.size(); ++k) sum[k] += (choice[i] ? 1 : -1) * problem.decisions[i].d[k];
    return sum;
}

std::int64_t worst_difference(LegProblem const& problem, Assignment const& choice) {
    std::int64_t worst = 0;
    for (auto const d : differences(problem, choice)) worst = std::max(worst, std::abs(d));
    return worst;
}

int count_on_a(LegProblem const& problem, Assignment const& choice) {
    int n = 0;
    for (std::size_t i = 0; i < choice.size(); ++i) n += choice[i] && problem.decisions[i].is_single;
    return n;
}

int moves_of(LegProblem const& problem, Assignment const& choice) {
    int n = problem.fixed_moves;
    for (std::size_t i = 0; i < choice.size(); ++i)
        n += choice[i] ? problem.decisions[i].plus_moves : problem.decisions[i].minus_moves;
    return n;
}

} // namespace legwork
