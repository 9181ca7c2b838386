// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/front.h"

#include "balance/legs/bounds.h"
#include "balance/legs/descent.h"
#include "balance/legs/front_joins.h"
#include "balance/legs/sum_table.h"

#include <algorithm>

namespace legwork {

namespace {

constexpr std::int64_t kFewMovesSteps = 1'000'000'000;
// For a first layout, even when the time is out: some ten milliseconds.
constexpr std::int64_t kOwedSteps = 5'000'000;

// Pairs that can take their cheapest leg only where there is room beside a half that stays.
bool needs_a_side(Unit const& u) {
    return u.kind == Unit::Kind::pair && !u.held && !u.half_held() && !u.home_ok && (u.keep_a || u.keep_b);
}

// True when every assignment has room for its pairs with no further move: then it has when nothing leaves its place,
// whichever way the pairs go that stand with one half or illegally today; lifting and swapping in place only help.
bool is_roomy(PanelModel const& model, LegProblem const& p, Room const& room, Effort& effort) {
    if (!room.bound_units().empty()) return false;
    Assignment choice;
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < p.decisions.size(); ++i) {
        choice.push_back(p.decisions[i].plus_moves <= p.decisions[i].minus_moves);
        if (needs_a_side(model.units[static_cast<std::size_t>(p.decisions[i].unit)])) open.push_back(i);
    }
    // Each doubles the looks: past 32 of them this short cut is not worth its price.
    if (open.size() > 5) return false;
    for (std::size_t ways = 0; ways < std::size_t{1} << open.size(); ++ways) {
        for (std::size_t k = 0; k < open.size(); ++k) choice[open[k]] = (ways >> k) & 1;
        if (room.extra_moves(signs_of(model, p, choice), effort).moves > 0) return false;
    }
    return true;
}

// T(k) read off the table of sums, for half as many moves again each time until the least is reached.
bool table_steps(LegProblem const& p, Front& f, bool to_read, Effort& effort) {
    int possible = 0;
    for (Decision const& d : p.decisions) possible += std::max(d.plus_moves, d.minus_moves);
    SumTable const table(p, 0);
    for (int most = std::min(2, possible);; most = std::min(most + most / 2 + 1, possible)) {
        auto const least = table.by_moves(most, to_read, effort);
        if (!least) return false;
        if (least->back() != f.least && most < possible) continue;
        for (int m = 0; m <= most; ++m) {
            auto const worst = (*least)[static_cast<std::size_t>(m)];
            if (worst == SumTable::kUnreachable || (!f.steps.empty() && worst >= f.steps.back().worst)) continue;
            f.steps.push_back({p.fixed_moves + m, worst, {}});
        }
        f.proven_to = f.steps.back().moves;
        return true;
    }
}

// An assignment with the signs of a plan with the fewest moves; the open ones as the counts need.
Assignment with_signs(LegProblem const& p, Signs const& signs, Effort& effort) {
    std::vector<signed char> made;
    for (Decision const& d : p.decisions) {
        auto sign = signs[static_cast<std::size_t>(d.unit)];
        if (sign == 0 && d.plus_moves != d.minus_moves) sign = d.plus_moves < d.minus_moves ? 1 : -1;
        made.push_back(sign);
    }
    auto const legs = open_legs(p, made);
    auto const rest = descend(legs.problem, 1, 0, effort);
    return rest ? legs.with(*rest) : legs.choice;
}

} // namespace

namespace {

Room::Fewest fewest_moves(LegProblem const& problem, Room const& room, Effort& effort) {
    auto owed = effort.owed(kOwedSteps);
    auto fewest = room.fewest_moves(problem.least_on_a, problem.most_on_a, owed);
    effort.settle(owed);
    return fewest;
}

} // namespace

Front front(PanelModel const& model, LegProblem const& problem, Room const& room, bool to_read, Effort& effort) {
    Front f;
    if (!problem.has_room()) return f;
    auto const fewest = fewest_moves(problem, room, effort);
    f.is_certain = fewest.is_certain;
    f.fewest_moves = fewest.moves;
    if (!fewest.moves) return f;
    auto const p = without_idle_situations(problem);
    // Nothing is to be evened out here (one bus, legs in phase): any layout will do, so the one of the fewest moves.
    if (p.situations() == 0) {
        f.steps.push_back({*fewest.moves, 0, Assignment(p.decisions.size())});
        f.proven_to = f.is_certain ? *fewest.moves : -1;
        return f;
    }
    bool const roomy = is_roomy(model, p, room, effort);
    FrontJoins joins(model, p, room, roomy);
    bool const by_joins = p.situations() > 1 && joins.can_finish(effort);
    // A third is left for what comes after: the least by itself says nothing of moves.
    auto part = effort.part(effort.left() / 3 * 2);
    auto const least = by_joins ? quick_least(p, part) : least_worst(p, part);
    effort.charge(part);
    f.least = least.worst;
    f.lower_bound = least.lower_bound;
    if (p.situations() == 1 && roomy && least.is_proven() && table_steps(p, f, to_read, effort)) return f;
    // Whatever becomes of the search, the panel then has a plan.
    joins.offer_first(with_signs(p, fewest.signs, effort), effort);
    // The table tells how even the legs can be, not how: where that is too dear to read back, a plan near it will do.
    if (least.choice)
        joins.offer(*least.choice, effort);
    else if (auto const choice = SumTable(p, 0).assignment({}, least.worst, effort))
        joins.offer(*choice, effort);
    else if (auto const some = descend(p, 12, least.lower_bound, effort))
        joins.offer(*some, effort);
    if (p.situations() == 1 && least.is_proven()) joins.use_table(least.worst, effort);
    if (!room.bound_units().empty()) joins.use_standing(least.lower_bound, effort);
    // Where the least cannot be proven, the proof for few moves is worth a second or two, not more.
    part = effort.part(least.is_proven() || by_joins ? effort.left() : std::min(effort.left(), kFewMovesSteps));
    joins.run(f, part);
    effort.charge(part);
    return f;
}

std::optional<Assignment> assignment_of(LegProblem const& problem, Front::Step const& step, Effort& effort) {
    if (step.choice) return step.choice;
    auto const p = without_idle_situations(problem);
    return SumTable(p, 0).assignment(step.moves - p.fixed_moves, step.worst, effort);
}

} // namespace legwork
