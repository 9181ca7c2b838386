// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The panel as the file has it, newcomers placed with nobody moved.

#include "balance/balance.h"
#include "balance/each_panel.h"
#include "balance/why.h"

#include <algorithm>

namespace legwork {

namespace {

// Sheets are printed on small machines too: about a second and little memory for the whole job.
constexpr std::int64_t kSteps = 500'000'000;
// For each question whether a newcomer has room, even when nothing is left: half a millisecond.
constexpr std::int64_t kOwedSteps = 200'000;
constexpr std::size_t kBytes = std::size_t{20} << 20;

// Nobody is moved, so one step: the most even of those layouts. None where there is none.
std::optional<Slots> filed_layout(Building const& building, Panel const& panel, Below const& below,
                                  ModelOptions const& options, Effort& effort) {
    Solved const solved(building, panel, below, options, effort);
    if (!solved.has_layout() || solved.front().steps.empty()) return {};
    Effort reading(kSteps, kBytes);
    return solved.layout(solved.front().steps.size() - 1, reading);
}

bool has_room(Building const& building, Panel const& panel, Below const& below, ModelOptions const& options,
              Effort& effort) {
    auto const m = panel_model(building, panel, below, options);
    if (!m.contradictions.empty()) return false;
    auto const problem = leg_problem(m);
    if (!problem.has_room()) return false;
    auto owed = effort.owed(kOwedSteps);
    auto const fewest = room_of(m)->fewest_moves(problem.least_on_a, problem.most_on_a, owed);
    effort.settle(owed);
    return fewest.moves.has_value();
}

// Newcomers that find no space, taken in the order of the file: whoever comes first and fits has it.
std::vector<int> left_over(Building const& building, Panel const& panel, Below const& below, Effort& effort) {
    ModelOptions options{.hold_all = true, .leave_out = {}};
    if (has_room(building, panel, below, options, effort)) return {};
    std::vector<std::vector<int>> newcomers;
    auto const all = panel_model(building, panel, below, options);
    for (Unit const& u : all.units) {
        std::vector<int> fresh;
        for (int const c : {u.a, u.b})
            if (c >= 0 && all.today[static_cast<std::size_t>(c)].empty()) fresh.push_back(c);
        // A new pair comes in whole or not at all: one half alone would have no partner beside it.
        if (!fresh.empty()) newcomers.push_back(fresh);
        options.leave_out.insert(options.leave_out.end(), fresh.begin(), fresh.end());
    }
    for (auto const& fresh : newcomers) {
        auto with = options;
        for (int const c : fresh) std::erase(with.leave_out, c);
        if (has_room(building, panel, below, with, effort)) options = std::move(with);
    }
    std::ranges::sort(options.leave_out);
    return options.leave_out;
}

// What moves could reach.
void add_front(PanelPlan& plan, Building const& building, Panel const& panel, Below const& below, Effort& effort) {
    Solved const moved(building, panel, below, {}, effort, false);
    if (!moved.has_layout()) return;
    fill_front(plan, moved.model(), moved.front(), effort);
    if (!plan.why.empty()) plan.moves_for_room = moved.front().fewest_moves;
}

PanelPlan filed(Building const& building, Panel const& panel, Below const& below, Effort& effort) {
    PanelPlan plan;
    plan.panel = panel.name;
    // A quarter for who has to be left out, half of the rest for the layout; what remains tells what moves could reach.
    auto part = effort.part(effort.left() / 4);
    ModelOptions options{.hold_all = true, .leave_out = left_over(building, panel, below, part)};
    effort.charge(part);
    auto const held = panel_model(building, panel, below, {.hold_all = true, .leave_out = {}});
    part = effort.part(effort.left() / 2);
    auto const slots = filed_layout(building, panel, below, options, part);
    effort.charge(part);
    fill(plan, held, slots ? *slots : held.today);
    if (!options.leave_out.empty() || !slots) plan.why = why_no_room(held, true, false);
    add_front(plan, building, panel, below, effort);
    return plan;
}

} // namespace

Plan as_filed(Building const& building, std::optional<double> seconds) {
    Effort effort(kSteps, kBytes, Effort::after(seconds));
    return each_panel(building, effort, [&](Panel const& panel, Below const& below, Effort& part) {
        return filed(building, panel, below, part);
    });
}

} // namespace legwork
