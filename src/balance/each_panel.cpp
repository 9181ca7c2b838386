// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/each_panel.h"

#include <algorithm>

namespace legwork {

namespace {

// Sub-panels first. A cycle of feeders is refused by the reader; here it is cut where it closes.
void order_from(typed::Job const& job, std::size_t panel, std::vector<bool>& seen, std::vector<std::size_t>& order) {
    if (seen[panel]) return;
    seen[panel] = true;
    for (std::size_t k = 0; k < job.panels.size(); ++k)
        if (job.panels[k].feeder && job.panels[k].feeder->panel == job.panels[panel].name)
            order_from(job, k, seen, order);
    order.push_back(panel);
}

} // namespace

Plan each_panel(typed::Job const& job, Effort& effort, PlanPanel const& plan_panel) {
    std::vector<bool> seen(job.panels.size());
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < job.panels.size(); ++i) order_from(job, i, seen, order);
    Plan plan;
    plan.panels.resize(job.panels.size());
    Below below;
    std::int64_t left = static_cast<std::int64_t>(order.size());
    for (std::size_t const i : order) {
        typed::Panel const& panel = job.panels[i];
        auto const given = effort.left() / left--;
        auto part = effort.part(given);
        plan.panels[i] = plan_panel(panel, below, part);
        plan.panels[i].stopped_by_time = part.stopped_by_time();
        effort.charge(part, given);
        below[panel.name] = carried(panel_model(job, panel, below, {}), plan.panels[i]);
    }
    return plan;
}

} // namespace legwork
