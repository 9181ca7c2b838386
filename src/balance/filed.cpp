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
constexpr std::size_t kBytes = std::size_t{20} << 20;

bool has_room(PanelModel const& m) {
    if (!m.contradictions.empty()) return false;
    auto const problem = leg_problem(m);
    if (!problem.has_room()) return false;
    Room const room(m);
    if (room.pairs_asked() > room.pairs_that_fit()) return false;
    return room.fewest_moves(problem.least_on_a, problem.most_on_a).has_value();
}

// Newcomers that find no space, taken in the order of the file: whoever comes first and fits has it.
std::vector<int> left_over(Job const& job, Panel const& panel, Below const& below) {
    ModelOptions options{.hold_all = true, .leave_out = {}, .pins = {}};
    auto const all = panel_model(job, panel, below, options);
    if (has_room(all)) return {};
    std::vector<std::vector<int>> newcomers;
    for (Unit const& u : all.units) {
        std::vector<int> fresh;
        for (int const c : {u.a, u.b})
            if (c >= 0 && all.today[static_cast<std::size_t>(c)].empty()) fresh.push_back(c);
        if (!fresh.empty()) newcomers.push_back(fresh);
        options.leave_out.insert(options.leave_out.end(), fresh.begin(), fresh.end());
    }
    for (auto const& fresh : newcomers) {
        auto with = options;
        for (int const c : fresh) std::erase(with.leave_out, c);
        if (has_room(panel_model(job, panel, below, with))) options = std::move(with);
    }
    std::ranges::sort(options.leave_out);
    return options.leave_out;
}

std::optional<Slots> filed_layout(Job const& job, Panel const& panel, Below const& below, ModelOptions const& options,
                                  Effort& effort) {
    Solved const solved(job, panel, below, options, effort);
    if (solved.front().steps.empty()) return {};
    Effort reading(kSteps, kBytes);
    if (auto slots = solved.layout(solved.front().steps.size() - 1, reading)) return slots;
    return within_reach(job, panel, below, options, 0, effort);
}

Slots today_only(PanelModel const& m) { return m.today; }

PanelPlan filed(Job const& job, Panel const& panel, Below const& below, Effort& effort) {
    PanelPlan plan;
    plan.panel = panel.name;
    ModelOptions options{.hold_all = true, .leave_out = left_over(job, panel, below), .pins = {}};
    auto const held = panel_model(job, panel, below, {.hold_all = true, .leave_out = {}, .pins = {}});
    auto part = effort.part(effort.left() / 2);
    auto slots = filed_layout(job, panel, below, options, part);
    effort.charge(part, effort.left() / 2);
    if (!slots)
        plan.why =
            "some circuits do not reach a space that is left for them; give them a longer cable or change `reach`";
    // Who was left out is in no unit, but those of today stand where they stand.
    auto placed = slots ? std::move(*slots) : today_only(held);
    fill(plan, held, placed);
    if (!options.leave_out.empty()) plan.why = why_no_room(held, leg_problem(held), Room(held), true);
    Solved const moved(job, panel, below, {}, effort, false);
    if (!moved.has_layout()) return plan;
    fill_front(plan, moved.model(), moved.front(), moved.room(), effort);
    if (!plan.why.empty()) plan.moves_for_room = moved.front().fewest_moves;
    return plan;
}

} // namespace

Plan as_filed(Job const& job) {
    Effort effort(kSteps, kBytes);
    return each_panel(job, effort, [&](Panel const& panel, Below const& below, Effort& part) {
        return filed(job, panel, below, part);
    });
}

} // namespace legwork
