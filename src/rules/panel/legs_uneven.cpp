// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/run_drop.h"
#include "rules/panel/list.h"
#include "rules/panel/places.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr std::int64_t kWorthTelling = 600; // VA over the least possible, and a tenth of the heavier leg

struct Handles {
    double a = 0, b = 0;
};
Handles handle_sums(Case const& c, Panel const& panel) {
    Handles sums;
    for (Circuit const* circuit : panel.circuits) {
        if (!circuit->breaker) continue;
        for (Spot const s : slots_of(c, circuit->mark))
            (panel.layout.leg(s.space) == Leg::a ? sums.a : sums.b) += value(*circuit->breaker);
    }
    return sums;
}

// The situation that is judged worst: of the named ones, else "connected".
SituationLoad const* worst_situation(PanelPlan const& plan) {
    auto const first = plan.situations.begin() + (plan.situations.size() > 1 ? 1 : 0);
    auto const at = std::max_element(first, plan.situations.end(),
                                     [](auto const& x, auto const& y) { return x.imbalance_va < y.imbalance_va; });
    return at == plan.situations.end() ? nullptr : &*at;
}

std::string what_moves_give(PanelPlan const& plan) {
    std::vector<std::string> steps;
    for (TradeoffStep const& t : plan.tradeoff)
        if (t.moves > 0 && (steps.size() < 2 || &t == &plan.tradeoff.back()))
            steps.push_back(
                fmt::format("{} VA with {}", t.imbalance_va, plural(static_cast<std::size_t>(t.moves), "move")));
    auto words = steps.empty() ? fmt::format("{} VA", *plan.least_imbalance_va) : listed(steps);
    return words + (plan.proven ? "" : " (the best found; whether less is possible was not proven)");
}

Finding say(Case const& c, Panel const& panel, PanelPlan const& plan, SituationLoad const& worst) {
    auto const handles = handle_sums(c, panel);
    auto f = finding(c, panel_legs_uneven, Gravity::usual, {plan.panel, {}, ""});
    f.message = fmt::format("The legs of panel \"{}\" differ by {} VA {} (A {} VA, B {} VA); a rebalance gives {}. The "
                            "breaker handles add up to {} on A and {} on B",
                            plan.panel, *plan.imbalance_va, in_situation(worst.name), worst.leg_a_va, worst.leg_b_va,
                            what_moves_give(plan), amps(handles.a), amps(handles.b));
    f.fix = "See `legwork balance` for the circuits to move";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (PanelPlan const& plan : c.plan.panels) {
        Panel const* panel = panel_named(c.building, plan.panel);
        SituationLoad const* worst = worst_situation(plan);
        if (!panel || !worst || !plan.imbalance_va || !plan.least_imbalance_va) continue;
        auto const excess = *plan.imbalance_va - *plan.least_imbalance_va;
        auto const heavier = std::max(worst->leg_a_va, worst->leg_b_va);
        bool const uneven = excess > kWorthTelling && excess * 10 > heavier;
        if (!uneven && (heavier == 0 || !loads_known(*panel))) continue;
        seen.looked();
        if (uneven) {
            seen.found(say(c, *panel, plan, *worst));
            continue;
        }
        auto const limit = std::max<std::int64_t>(kWorthTelling, heavier / 10);
        seen.margin(static_cast<double>(excess) / static_cast<double>(limit), [&] {
            return fmt::format("{} of {} VA over the least imbalance of panel \"{}\"", excess, limit, plan.panel);
        });
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_legs_uneven{
    .id = "panel-legs-uneven",
    .asks = "The legs are about as even as a rebalance could make them.",
    .why = "Uneven legs load one half of the main and of the transformer, let the voltage of the two halves drift "
           "apart, and leave less for the next circuit. Told only when it matters: more than 600 VA over the least "
           "possible and more than a tenth of the heavier leg.",
    .remedy = "Run `legwork balance`: it shows the fewest circuits to move and what each further move gains.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
