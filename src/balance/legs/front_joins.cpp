// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/front_joins.h"

#include "balance/legs/join.h"
#include "balance/legs/sum_table.h"

#include <algorithm>

namespace legwork {

namespace {

constexpr std::uint64_t kFirstRound = 40'000;
constexpr std::int64_t kOwedSteps = 5'000'000;
constexpr int kStarts = 12;

} // namespace

void BestByMoves::offer(int moves, std::int64_t worst, Assignment const& choice) {
    auto const at = by_moves_.find(moves);
    if (at == by_moves_.end() || worst < at->second.worst) by_moves_[moves] = {moves, worst, choice};
}

std::int64_t BestByMoves::least(int most_moves) const {
    auto least = SumTable::kUnreachable;
    for (auto const& [moves, step] : by_moves_)
        if (moves <= most_moves) least = std::min(least, step.worst);
    return least;
}

std::vector<Front::Step> BestByMoves::steps(int most_moves) const {
    std::vector<Front::Step> drops;
    for (auto const& [moves, step] : by_moves_)
        if (moves <= most_moves && (drops.empty() || step.worst < drops.back().worst)) drops.push_back(step);
    return drops;
}

FrontJoins::FrontJoins(PanelModel const& model, LegProblem const& p, Room const& room, bool roomy)
    : model_(model), p_(p), room_(room), roomy_(roomy), both_(halves(groups(p, roomy, true))) {
    footing_ = {p.of_units(room.bound_units()), [this](Assignment const& choice, Effort& effort) {
                    return room_.stands(signs_of(model_, p_, choice), effort);
                }};
    for (Decision const& d : p.decisions) most_ += std::max(d.plus_moves, d.minus_moves);
}

void FrontJoins::offer(Assignment const& choice, Effort& effort) {
    auto const moves = moves_of(p_, choice);
    auto const worst = worst_difference(p_, choice);
    if (worst >= best_.least(moves)) return; // making room only adds moves
    auto const extra = roomy_ ? Room::Extra{0} : room_.extra_moves(signs_of(model_, p_, choice), effort);
    certain_ = certain_ && extra.is_certain;
    if (extra.moves < kImpossible) best_.offer(moves + extra.moves, worst, choice);
}

void FrontJoins::offer_first(Assignment const& choice, Effort& effort) {
    auto owed = effort.owed(kOwedSteps);
    offer(choice, owed);
    effort.settle(owed);
}

void FrontJoins::use_table(std::int64_t least, Effort& effort) {
    SumTable const table(p_, 0);
    for (int most = std::min(2, most_);; most = std::min(most + most / 2 + 1, most_)) {
        auto const floor = table.by_moves(most, true, effort);
        if (!floor) break;
        floor_ = *floor;
        if (floor_.back() == least || most == most_) break;
    }
    for (std::size_t m = 0; m < floor_.size(); ++m) {
        if (floor_[m] == SumTable::kUnreachable || (m > 0 && floor_[m] == floor_[m - 1])) continue;
        if (auto const choice = table.assignment(static_cast<int>(m), floor_[m], effort)) offer(*choice, effort);
    }
}

bool FrontJoins::fits(int moves, std::int64_t steps, Effort const& effort) const {
    auto const left = size_of(both_.left, moves), right = size_of(both_.right, moves);
    auto const bytes = HalfList::bytes_of(left, p_.situations()) + HalfList::bytes_of(right, p_.situations());
    return fits_join(p_) && bytes <= effort.bytes() &&
           static_cast<std::int64_t>(left + right) <= steps / HalfList::kStepsAPoint;
}

// T at so many moves is what it would be if there were room for all: no join can lower it.
bool FrontJoins::is_at_floor(int moves) const {
    auto const m = static_cast<std::size_t>(moves);
    return m < floor_.size() && best_.least(std::max(p_.fixed_moves + moves, fewest_)) <= floor_[m];
}

// A round takes up all choices of so many moves that its lists are several times those of the round before.
int FrontJoins::next_round(int done, Effort const& effort) const {
    auto const size = [&](int m) { return size_of(both_.left, m) + size_of(both_.right, m); };
    auto const wanted = std::max(kFirstRound, done < 0 ? 0 : 6 * size(done));
    int upto = done + 1;
    while (upto < most_ && size(upto) < wanted && fits(upto + 1, effort.left(), effort)) ++upto;
    return upto;
}

// The first number of moves, from fixed_moves, whose best plan cannot be bettered by any.
int FrontJoins::first_enough(Front const& f) const {
    for (int m = 0; m <= most_; ++m)
        if (best_.least(std::max(p_.fixed_moves + m, fewest_)) <= f.lower_bound) return m;
    return most_ + 1;
}

void FrontJoins::finish(Front& f, bool proven) {
    f.steps = best_.steps(std::numeric_limits<int>::max());
    if (f.steps.empty()) return;
    f.least = f.steps.back().worst;
    if (!certain_) f.proven_to = -1;
    if (!proven || !certain_) return;
    f.fewest_moves = f.steps.front().moves;
    f.is_certain = true;
    f.proven_to = f.steps.back().moves;
    f.lower_bound = std::max(f.lower_bound, f.least); // every assignment was looked at, or none can be better
}

// Good plans with at most k moves, so that the joins have less to look at; `spared`: moves left to making room.
void FrontJoins::descend_to(int k, int spared, Effort& effort) {
    auto const steps = best_.steps(k);
    if (steps.empty()) return;
    for (auto const n : {steps.size() - 1, std::size_t{0}})
        offer(descend_within(p_, *steps[n].choice, k - spared, &footing_, effort), effort);
}

bool FrontJoins::join_upto(int upto, int done, Effort& effort) {
    if (!fits(upto, effort.left(), effort)) return false;
    HalfList const left(both_.left, p_.constant, upto, effort);
    HalfList const right(both_.right, std::vector<std::int64_t>(p_.situations(), 0), upto, effort);
    if (effort.is_over()) return false;
    Limits limits{{}, done};
    auto const set_limits = [&] {
        limits.worst.clear();
        for (int m = 0; m <= upto; ++m) limits.worst.push_back(best_.least(std::max(p_.fixed_moves + m, fewest_)));
    };
    set_limits();
    Assignment choice(p_.decisions.size());
    return join({left, right, p_.least_on_a, p_.most_on_a, effort}, limits,
                [&](std::int64_t, int, HalfList::Point l, HalfList::Point r) {
                    left.write(l, choice);
                    right.write(r, choice);
                    offer(choice, effort);
                    set_limits();
                });
}

void FrontJoins::use_standing(std::int64_t enough, Effort& effort) {
    std::vector<Assignment> standing;
    for (auto const& step : best_.steps(std::numeric_limits<int>::max())) standing.push_back(*step.choice);
    auto const bound = [&](Assignment choice) {
        for (std::size_t i = 0; i < choice.size(); ++i) choice[i] = choice[i] && footing_.bound[i];
        return choice;
    };
    std::vector<Assignment> done;
    for (auto const& choice : standing) {
        // Plans that put the bound units alike leave the same legs open: one of them stands for all.
        if (std::ranges::count(done, bound(choice)) > 0 || effort.is_over()) continue;
        done.push_back(bound(choice));
        use_bound_legs(choice, enough, effort);
    }
    for (auto const& step : best_.steps(std::numeric_limits<int>::max())) {
        if (step.worst <= enough || effort.is_over()) continue;
        offer(descend_within(p_, *step.choice, std::numeric_limits<int>::max(), &footing_, effort), effort);
    }
}

// The legs of the bound units as they are, all others open.
void FrontJoins::use_bound_legs(Assignment const& standing, std::int64_t enough, Effort& effort) {
    std::vector<signed char> made;
    for (std::size_t i = 0; i < standing.size(); ++i)
        made.push_back(static_cast<signed char>(!footing_.bound[i] ? 0 : standing[i] ? 1 : -1));
    auto const legs = open_legs(p_, made);
    if (p_.situations() == 1) {
        SumTable const table(legs.problem, 0);
        int most = 0;
        for (Decision const& d : legs.problem.decisions) most += std::max(d.plus_moves, d.minus_moves);
        for (int upto = std::min(2, most);; upto = std::min(upto + upto / 2 + 1, most)) {
            auto const least = table.by_moves(upto, true, effort);
            if (!least) break;
            for (int m = 0; m <= upto; ++m) {
                auto const worst = (*least)[static_cast<std::size_t>(m)];
                if (worst >= best_.least(legs.problem.fixed_moves + m)) continue;
                if (auto const rest = table.assignment(m, worst, effort)) offer(legs.with(*rest), effort);
            }
            if (upto == most || least->back() <= enough) return;
        }
    }
    if (auto const rest = descend(legs.problem, kStarts, enough, effort)) offer(legs.with(*rest), effort);
}

void FrontJoins::run(Front& f, Effort& effort) {
    fewest_ = f.is_certain ? *f.fewest_moves : p_.fixed_moves;
    int const spared = fewest_ - p_.fixed_moves;
    for (int done = -1; done < most_;) {
        int upto = done + 1;
        if (!is_at_floor(upto)) {
            upto = next_round(done, effort);
            for (int m = done + 1; m <= upto; ++m) descend_to(p_.fixed_moves + m, spared, effort);
            // From there on a plan is known that nothing can better.
            upto = std::min(upto, first_enough(f) - 1);
            if (upto <= done) return finish(f, true);
            if (!join_upto(upto, done, effort)) return finish(f, false);
        }
        done = upto;
        if (p_.fixed_moves + done >= fewest_) f.proven_to = p_.fixed_moves + done;
    }
    finish(f, true);
}

} // namespace legwork
