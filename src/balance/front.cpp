// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/front.h"

#include "balance/bounds.h"
#include "balance/descent.h"
#include "balance/join.h"
#include "balance/sum_table.h"

#include <algorithm>
#include <deque>
#include <map>

namespace legwork {

namespace {

constexpr std::int64_t kStepsAPoint = 150, kStepsARoom = 8000;

// Pairs that can take their cheapest leg only where there is room beside a half that stays.
bool needs_a_side(Unit const& u) {
    return u.kind == Unit::Kind::pair && !u.held && !u.half_held() && !u.home_ok && (u.keep_a || u.keep_b);
}

// True when every assignment has room for its pairs with no further move: then it has when nothing leaves its place,
// whichever way the pairs go that stand with one half or illegally today; lifting and swapping in place only help.
bool is_roomy(PanelModel const& model, LegProblem const& p, Room const& room) {
    Assignment choice;
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < p.decisions.size(); ++i) {
        choice.push_back(p.decisions[i].plus_moves <= p.decisions[i].minus_moves);
        if (needs_a_side(model.units[static_cast<std::size_t>(p.decisions[i].unit)])) open.push_back(i);
    }
    if (open.size() > 5) return false;
    for (std::size_t ways = 0; ways < std::size_t{1} << open.size(); ++ways) {
        for (std::size_t k = 0; k < open.size(); ++k) choice[open[k]] = (ways >> k) & 1;
        if (room.extra_moves(signs_of(model, p, choice)) > 0) return false;
    }
    return true;
}

// The best plan had for each number of moves.
class Best {
public:
    void offer(int moves, std::int64_t worst, Assignment const& choice) {
        auto const at = by_moves_.find(moves);
        if (at != by_moves_.end() && at->second.worst <= worst) return;
        by_moves_[moves] = {moves, worst, choice};
    }
    std::int64_t least(int most_moves) const {
        auto least = SumTable::kUnreachable;
        for (auto const& [moves, step] : by_moves_)
            if (moves <= most_moves) least = std::min(least, step.worst);
        return least;
    }
    std::vector<Front::Step> steps(int most_moves) const {
        std::vector<Front::Step> drops;
        for (auto const& [moves, step] : by_moves_)
            if (moves <= most_moves && (drops.empty() || step.worst < drops.back().worst)) drops.push_back(step);
        return drops;
    }

private:
    std::map<int, Front::Step> by_moves_;
};

class ClassJoins {
public:
    ClassJoins(PanelModel const& model, LegProblem const& p, Room const& room, Effort& effort, bool roomy)
        : model_(model), p_(p), room_(room), effort_(effort), roomy_(roomy), both_(halves(groups(p, roomy, true))) {}

    void offer(Assignment const& choice) {
        int extra = 0;
        if (!roomy_) {
            effort_.spend(kStepsARoom);
            extra = room_.extra_moves(signs_of(model_, p_, choice));
        }
        if (extra < kImpossible) best_.offer(moves_of(p_, choice) + extra, worst_difference(p_, choice), choice);
    }

    void run(Front& f) {
        bool const can_join = fits_join(p_);
        int most = 0;
        for (Decision const& d : p_.decisions) most += std::max(d.plus_moves, d.minus_moves);
        // More moves than all decisions take come from making room; those plans are found at fewer.
        for (int moves = 0; moves <= most; ++moves) {
            int const k = std::max(p_.fixed_moves + moves, *f.fewest_moves);
            if (best_.least(k) <= f.lower_bound) return finish(f, k, true);
            if (!can_join || !list(moves) || !join_classes(moves, k))
                return finish(f, std::numeric_limits<int>::max(), false);
            if (p_.fixed_moves + moves >= *f.fewest_moves) f.proven_to = p_.fixed_moves + moves;
        }
        finish(f, std::numeric_limits<int>::max(), true);
    }

private:
    void finish(Front& f, int most_moves, bool proven) {
        f.steps = best_.steps(most_moves);
        if (f.steps.empty()) return;
        f.least = f.steps.back().worst;
        if (!proven) return;
        f.proven_to = f.steps.back().moves;
        f.lower_bound = std::max(f.lower_bound, f.least); // every assignment was looked at
    }

    bool list(int moves) {
        for (auto const* half : {&both_.left, &both_.right}) {
            auto const size = size_of(*half, moves);
            bytes_ += HalfList::bytes_of(size, p_.situations());
            if (bytes_ > effort_.bytes() || static_cast<std::int64_t>(size) > effort_.left() / kStepsAPoint)
                return false;
            effort_.spend(static_cast<std::int64_t>(size) * kStepsAPoint);
            bool const is_left = half == &both_.left;
            auto const start = is_left ? p_.constant : std::vector<std::int64_t>(p_.situations(), 0);
            (is_left ? left_ : right_).emplace_back(*half, start, moves);
        }
        return true;
    }

    bool join_classes(int moves, int k) {
        for (int j = 0; j <= moves; ++j) {
            auto const& left = left_[static_cast<std::size_t>(j)];
            auto const& right = right_[static_cast<std::size_t>(moves - j)];
            Assignment choice(p_.decisions.size());
            bool const done = join({left, right, p_.least_on_a, p_.most_on_a, effort_}, best_.least(k),
                                   [&](std::int64_t, std::size_t l, std::size_t r) {
                                       left.write(l, choice);
                                       right.write(r, choice);
                                       offer(choice);
                                       return best_.least(k);
                                   });
            if (!done) return false;
        }
        return true;
    }

    PanelModel const& model_;
    LegProblem const& p_;
    Room const& room_;
    Effort& effort_;
    bool roomy_;
    Halves both_;
    std::deque<HalfList> left_, right_;
    std::uint64_t bytes_ = 0;
    Best best_;
};

// T(k) read off the table of sums, for twice as many moves each time until the least is reached.
bool table_steps(LegProblem const& p, Front& f, Effort& effort) {
    int possible = 0;
    for (Decision const& d : p.decisions) possible += std::max(d.plus_moves, d.minus_moves);
    SumTable const table(p, 0);
    for (int most = std::min(2, possible);; most = std::min(2 * most, possible)) {
        auto const least = table.by_moves(most, effort);
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
    LegProblem open = p;
    open.decisions.clear();
    Assignment choice(p.decisions.size());
    std::vector<std::size_t> at;
    for (std::size_t i = 0; i < p.decisions.size(); ++i) {
        Decision const& d = p.decisions[i];
        auto sign = signs[static_cast<std::size_t>(d.unit)];
        if (sign == 0 && d.plus_moves != d.minus_moves) sign = d.plus_moves < d.minus_moves ? 1 : -1;
        if (sign == 0) {
            at.push_back(i);
            open.decisions.push_back(d);
            continue;
        }
        choice[i] = sign > 0;
        for (std::size_t k = 0; k < p.situations(); ++k) open.constant[k] += sign * d.d[k];
        if (choice[i] && d.is_single) --open.least_on_a, --open.most_on_a;
    }
    if (auto const rest = descend(open, 1, 0, effort))
        for (std::size_t i = 0; i < at.size(); ++i) choice[at[i]] = (*rest)[i];
    return choice;
}

} // namespace

Front front(PanelModel const& model, LegProblem const& problem, Room const& room, Effort& effort) {
    Front f;
    if (!problem.has_room()) return f;
    auto const fewest = room.fewest_moves(problem.least_on_a, problem.most_on_a);
    if (!fewest) return f;
    f.fewest_moves = fewest->moves;
    auto const p = without_idle_situations(problem);
    if (p.situations() == 0) {
        f.steps.push_back({fewest->moves, 0, Assignment(p.decisions.size())});
        f.proven_to = fewest->moves;
        return f;
    }
    auto const given = effort.left() / 3 * 2;
    auto part = effort.part(given);
    auto const least = least_worst(p, part);
    effort.charge(part, given);
    f.least = least.worst;
    f.lower_bound = least.lower_bound;
    bool const roomy = is_roomy(model, p, room);
    if (p.situations() == 1 && roomy && least.is_proven() && table_steps(p, f, effort)) return f;
    ClassJoins joins(model, p, room, effort, roomy);
    joins.offer(with_signs(p, fewest->signs, effort));
    if (least.choice)
        joins.offer(*least.choice);
    else if (auto const choice = SumTable(p, 0).assignment({}, least.worst, effort))
        joins.offer(*choice);
    joins.run(f);
    return f;
}

std::optional<Assignment> assignment_of(LegProblem const& problem, Front::Step const& step, Effort& effort) {
    if (step.choice) return step.choice;
    auto const p = without_idle_situations(problem);
    return SumTable(p, 0).assignment(step.moves - p.fixed_moves, step.worst, effort);
}

} // namespace legwork
