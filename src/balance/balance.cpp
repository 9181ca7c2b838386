// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/balance.h"

#include "balance/each_panel.h"
#include "balance/reach_search.h"
#include "balance/why.h"

#include <algorithm>
#include <limits>

namespace legwork {

namespace {

// About twelve seconds and 450 MB at most for a whole job; common jobs take milliseconds.
constexpr std::int64_t kSteps = 6'000'000'000;
constexpr std::size_t kBytes = std::size_t{450} << 20;

// Within this of the least is as good as even: 120 VA (one ampere), or 2 % of the heavier leg of the heaviest situation
// once it is even. Common practice, no source.
std::int64_t near_enough(PanelModel const& m, std::int64_t least) {
    std::int64_t heaviest = 0;
    for (std::size_t const s : m.minimised) {
        std::int64_t total = 0;
        for (Unit const& u : m.units)
            for (int const c : {u.a, u.b})
                if (c >= 0) {
                    auto const& [a, b] = m.loads[static_cast<std::size_t>(c)].loads.va[s];
                    total += a + b;
                }
        heaviest = std::max(heaviest, (total + least + 1) / 2);
    }
    return std::max<std::int64_t>(120, heaviest / 50);
}

// The step that was asked for; none when all take more moves than allowed.
std::optional<std::size_t> chosen(PanelModel const& m, Front const& f, BalanceOptions const& options) {
    std::optional<std::size_t> last;
    for (std::size_t n = 0; n < f.steps.size(); ++n) {
        if (options.max_moves && f.steps[n].moves > *options.max_moves) break;
        last = n;
        bool const near = m.legs != Legs::two || f.steps[n].worst <= f.least + near_enough(m, f.least);
        if (near && !options.best && !options.max_moves) break;
    }
    return last;
}

PanelPlan balanced(typed::Job const& job, typed::Panel const& panel, Below const& below, BalanceOptions const& options,
                   Effort& effort) {
    PanelPlan plan;
    plan.panel = panel.name;
    Solved const solved(job, panel, below, {}, effort);
    auto const& m = solved.model();
    if (!solved.has_layout()) {
        plan.why = why_no_room(m, solved.problem(), solved.room(), false);
        return plan;
    }
    ReachFront reach;
    bool const by_reach = solved.reach_matters();
    if (by_reach) reach = reach_front(solved, below, {}, std::numeric_limits<int>::max(), effort);
    if (by_reach && reach.steps.empty()) {
        plan.why = why_out_of_reach(m, reach.is_proven);
        return plan;
    }
    Front const front = by_reach ? as_front(reach, solved.front()) : solved.front();
    fill_front(plan, m, front, solved.room(), effort);
    auto const step = chosen(m, front, options);
    if (!step) {
        plan.why = why_not_so_few(m, *options.max_moves, front.steps.front().moves);
        return plan;
    }
    // Reading the answer back must not fail for lack of steps: it is a small part of what finding it took.
    Effort reading(kSteps, kBytes);
    auto const slots = by_reach ? std::optional(reach.steps[*step].slots) : solved.layout(*step, reading);
    if (slots)
        fill(plan, m, *slots);
    else
        plan.why = "no layout was found within the effort allowed";
    return plan;
}

} // namespace

Plan balance(typed::Job const& job, BalanceOptions const& options) {
    std::optional<Effort::Clock::time_point> stop;
    if (options.seconds)
        stop = Effort::Clock::now() + std::chrono::duration_cast<Effort::Clock::duration>(
                                          std::chrono::duration<double>(std::clamp(*options.seconds, 0.0, 1e6)));
    Effort effort(kSteps, kBytes, stop);
    return each_panel(job, effort, [&](typed::Panel const& panel, Below const& below, Effort& part) {
        return balanced(job, panel, below, options, part);
    });
}

} // namespace legwork
