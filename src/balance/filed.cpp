// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The panel as the file has it, newcomers placed with nobody moved.

#include "balance/balance.h"
#include "balance/each_panel.h"
#include "balance/reach_search.h"
#include "balance/why.h"

#include <algorithm>
#include <limits>

namespace legwork {

namespace {

// Sheets are printed on small machines too: about a second and little memory for the whole job.
constexpr std::int64_t kSteps = 500'000'000, kReachSteps = 20'000'000;
constexpr std::size_t kBytes = std::size_t{20} << 20;

// Nobody is moved, so one step: the most even of those layouts. Empty where there is none.
ReachFront filed_front(typed::Job const& job, typed::Panel const& panel, Below const& below, ModelOptions const& options,
                       Effort& effort) {
    Solved const solved(job, panel, below, options, effort);
    if (!solved.has_layout() || solved.front().steps.empty()) return {};
    if (solved.reach_matters()) return reach_front(solved, below, options, std::numeric_limits<int>::max(), effort);
    auto const& last = solved.front().steps.back();
    Effort reading(kSteps, kBytes);
    auto slots = solved.layout(solved.front().steps.size() - 1, reading);
    if (!slots) return {};
    return {{{last.moves, last.worst, std::move(*slots)}}, true};
}

bool is_limited(PanelModel const& m, Unit const& u) {
    return !u.held && (!m.reach[static_cast<std::size_t>(u.a)].empty() ||
                       (u.b >= 0 && !m.reach[static_cast<std::size_t>(u.b)].empty()));
}

bool has_room(typed::Job const& job, typed::Panel const& panel, Below const& below, ModelOptions const& options) {
    auto const m = panel_model(job, panel, below, options);
    if (!m.contradictions.empty()) return false;
    auto const problem = leg_problem(m);
    if (!problem.has_room()) return false;
    Room const room(m);
    if (room.pairs_asked() > room.pairs_that_fit()) return false;
    if (!room.fewest_moves(problem.least_on_a, problem.most_on_a)) return false;
    if (std::ranges::none_of(m.units, [&](Unit const& u) { return is_limited(m, u); })) return true;
    Effort effort(kReachSteps, kBytes);
    return !filed_front(job, panel, below, options, effort).steps.empty();
}

// Newcomers that find no space, taken in the order of the file: whoever comes first and fits has it.
std::vector<int> left_over(typed::Job const& job, typed::Panel const& panel, Below const& below) {
    ModelOptions options{.hold_all = true, .leave_out = {}, .pins = {}};
    if (has_room(job, panel, below, options)) return {};
    std::vector<std::vector<int>> newcomers;
    auto const all = panel_model(job, panel, below, options);
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
        if (has_room(job, panel, below, with)) options = std::move(with);
    }
    std::ranges::sort(options.leave_out);
    return options.leave_out;
}

std::string why_left_over(PanelModel const& held) {
    auto const problem = leg_problem(held);
    Room const room(held);
    bool const only_reach =
        held.contradictions.empty() && problem.has_room() && room.fewest_moves(problem.least_on_a, problem.most_on_a);
    return only_reach ? why_out_of_reach(held, false) : why_no_room(held, problem, room, true);
}

// What moves could reach.
void add_front(PanelPlan& plan, typed::Job const& job, typed::Panel const& panel, Below const& below, Effort& effort) {
    Solved const moved(job, panel, below, {}, effort, false);
    if (!moved.has_layout()) return;
    Front front = moved.front();
    if (moved.reach_matters())
        front = as_front(reach_front(moved, below, {}, std::numeric_limits<int>::max(), effort), front);
    fill_front(plan, moved.model(), front, moved.room(), effort);
    if (!plan.why.empty()) plan.moves_for_room = front.fewest_moves;
}

PanelPlan filed(typed::Job const& job, typed::Panel const& panel, Below const& below, Effort& effort) {
    PanelPlan plan;
    plan.panel = panel.name;
    ModelOptions options{.hold_all = true, .leave_out = left_over(job, panel, below), .pins = {}};
    auto const held = panel_model(job, panel, below, {.hold_all = true, .leave_out = {}, .pins = {}});
    auto const given = effort.left() / 2;
    auto part = effort.part(given);
    auto const front = filed_front(job, panel, below, options, part);
    effort.charge(part, given);
    fill(plan, held, front.steps.empty() ? held.today : front.steps.back().slots);
    if (!options.leave_out.empty())
        plan.why = why_left_over(held);
    else if (front.steps.empty())
        plan.why = why_out_of_reach(held, false);
    add_front(plan, job, panel, below, effort);
    return plan;
}

} // namespace

Plan as_filed(typed::Job const& job) {
    Effort effort(kSteps, kBytes);
    return each_panel(job, effort, [&](typed::Panel const& panel, Below const& below, Effort& part) {
        return filed(job, panel, below, part);
    });
}

} // namespace legwork
