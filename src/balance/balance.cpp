// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/balance.h"

#include "balance/each_panel.h"
#include "balance/why.h"

#include <algorithm>

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

PanelPlan balanced(Building const& building, Panel const& panel, Below const& below, BalanceOptions const& options,
                   Effort& effort) {
    PanelPlan plan;
    plan.panel = panel.name;
    Solved const solved(building, panel, below, {}, effort);
    auto const& m = solved.model();
    Front const& front = solved.front();
    if (!solved.has_layout()) {
        plan.why = why_no_room(m, false, front.is_certain);
        return plan;
    }
    fill_front(plan, m, front, effort);
    auto const step = chosen(m, front, options);
    if (!step) {
        plan.why = why_not_so_few(m, *options.max_moves, front.steps.front().moves);
        return plan;
    }
    // Reading the answer back must not fail for lack of steps: it is a small part of what finding it took.
    Effort reading(kSteps, kBytes);
    auto const slots = solved.layout(*step, reading);
    if (slots)
        fill(plan, m, *slots);
    else
        plan.why = "no layout was found within the effort allowed";
    return plan;
}

} // namespace

Plan balance(Building const& building, BalanceOptions const& options) {
    Effort effort(kSteps, kBytes, Effort::after(options.seconds));
    return each_panel(building, effort, [&](Panel const& panel, Below const& below, Effort& part) {
        return balanced(building, panel, below, options, part);
    });
}

} // namespace legwork
