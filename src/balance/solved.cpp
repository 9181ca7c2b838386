// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/solved.h"

#include "balance/tally.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace legwork {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }

Front front_of(PanelModel const& m, LegProblem const& p, Room const& room, bool to_read, Effort& effort) {
    if (!m.contradictions.empty()) return {};
    return front(m, p, room, to_read, effort);
}
} // namespace

Solved::Solved(Job const& job, Panel const& panel, Below const& below, ModelOptions const& options, Effort& effort,
               bool to_read)
    : model_(panel_model(job, panel, below, options)),
      problem_(leg_problem(model_)),
      room_(model_),
      front_(front_of(model_, problem_, room_, to_read, effort)) {}

bool Solved::reach_matters() const {
    return std::ranges::any_of(model_.units, [&](Unit const& u) {
        return !u.held && (!model_.reach[at(u.a)].empty() || (u.b >= 0 && !model_.reach[at(u.b)].empty()));
    });
}

std::optional<Slots> Solved::layout(std::size_t n, Effort& effort) const {
    auto const choice = assignment_of(problem_, front_.steps[n], effort);
    if (!choice) return {};
    return laid_out(model_, problem_, room_, *choice);
}

void Solved::drop_unreachable_steps(Effort& effort) {
    auto const all = std::exchange(front_.steps, {});
    std::vector<Front::Step> kept;
    for (auto const& step : all) {
        front_.steps.assign(1, step);
        if (layout(0, effort))
            kept.push_back(step);
        else
            front_.proven_to = std::min(front_.proven_to, step.moves - 1);
    }
    front_.steps = std::move(kept);
    if (!front_.steps.empty()) front_.least = front_.steps.back().worst;
}

namespace {

constexpr int kMostPins = 48;

// Better: more even, then fewer moves.
struct Found {
    std::int64_t worst = 0;
    int moves = 0;
    Slots slots;
    bool operator<(Found const& o) const { return std::tie(worst, moves) < std::tie(o.worst, o.moves); }
};

std::optional<Found> solve_pinned(Job const& job, Panel const& panel, Below const& below, ModelOptions const& options,
                                  std::optional<int> allowed_moves, Effort& effort) {
    Solved const solved(job, panel, below, options, effort);
    auto const& steps = solved.front().steps;
    for (std::size_t n = steps.size(); n-- > 0;) {
        if (allowed_moves && steps[n].moves > *allowed_moves) continue;
        if (auto slots = solved.layout(n, effort)) return Found{steps[n].worst, steps[n].moves, std::move(*slots)};
    }
    return {};
}

} // namespace

std::optional<Slots> within_reach(Job const& job, Panel const& panel, Below const& below, ModelOptions const& options,
                                  std::optional<int> allowed_moves, Effort& effort) {
    auto const model = panel_model(job, panel, below, options);
    ModelOptions pinned = options;
    pinned.pins.resize(model.circuits.size());
    std::optional<Found> best;
    int tries = 0;
    for (int c = 0; c < static_cast<int>(model.circuits.size()); ++c) {
        bool const held = std::ranges::any_of(model.units, [&](Unit const& u) {
            return (u.a == c && (u.held || u.a_held)) || (u.b == c && (u.held || u.b_held));
        });
        bool const out = std::ranges::count(options.leave_out, c) > 0;
        if (model.reach[at(c)].empty() || held || out) continue;
        int kept = 0;
        for (int cell = 0; cell < model.cells() && tries < kMostPins && !effort.is_over(); ++cell) {
            if (model.wall[at(cell)] || !model.reaches(c, cell)) continue;
            bool const two = model.circuits[at(c)]->poles == 2;
            if (two && (cell + 1 >= model.cells() || !model.joined(cell, cell + 1) || model.wall[at(cell + 1)] ||
                        !model.reaches(c, cell + 1)))
                continue;
            ++tries;
            auto attempt = pinned;
            attempt.pins[at(c)] = model.space_of_cell[at(cell)];
            auto part = effort.part(effort.left() / 8);
            auto const given = effort.left() / 8;
            auto found = solve_pinned(job, panel, below, attempt, allowed_moves, part);
            effort.charge(part, given);
            if (!found || (best && !(*found < *best))) continue;
            best = std::move(found);
            kept = attempt.pins[at(c)];
        }
        if (best) break;
        // None did alone: keep it on its first space and look at the next one.
        for (int cell = 0; cell < model.cells() && !kept; ++cell) {
            int const space = model.space_of_cell[at(cell)];
            bool const taken = std::ranges::count(pinned.pins, space) > 0;
            if (!model.wall[at(cell)] && model.reaches(c, cell) && !taken && model.circuits[at(c)]->poles == 1)
                kept = space;
        }
        pinned.pins[at(c)] = kept;
    }
    if (!best) return {};
    return std::move(best->slots);
}

} // namespace legwork
