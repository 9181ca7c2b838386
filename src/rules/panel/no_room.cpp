// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/panel/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Finding say(Case const& c, PanelPlan const& plan) {
    Where where{plan.panel, {}, "space"};
    for (Placement const& p : plan.placements)
        if (p.slots.empty()) where.circuits.push_back(p.circuit);
    auto f = finding(c, panel_no_room, Gravity::usual, std::move(where));
    f.message = fmt::format("Panel \"{}\": {}", plan.panel, plan.why);
    f.fix = plan.moves_for_room ? fmt::format("{} of present circuits would make room; `legwork balance` shows which",
                                              plural(static_cast<std::size_t>(*plan.moves_for_room), "move"))
                                : "Fit a larger panel or a sub-panel, or take circuits out";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (PanelPlan const& plan : c.plan.panels) {
        if (plan.placements.empty() && plan.why.empty()) continue;
        seen.looked();
        if (!plan.why.empty()) seen.found(say(c, plan));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_no_room{
    .id = "panel-no-room",
    .asks = "Every circuit of the job has a space in its panel.",
    .why = "A circuit without a space cannot be landed. Pairs and two-pole breakers need two free neighbours in one "
           "column, so a panel can have free spaces and still no room.",
    .remedy = "Let `legwork balance` move what is in the way, remove what is no longer used, or add a sub-panel.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .judge = judge,
};

} // namespace legwork
