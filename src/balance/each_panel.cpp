// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/each_panel.h"

#include <algorithm>

namespace legwork {

namespace {

// Sub-panels first. A cycle of feeders is refused by the reader; here it is cut where it closes.
void order_from(Building const& building, std::size_t panel, std::vector<bool>& seen, std::vector<std::size_t>& order) {
    if (seen[panel]) return;
    seen[panel] = true;
    for (std::size_t k = 0; k < building.panels.size(); ++k)
        if (building.panels[k].above == &building.panels[panel]) order_from(building, k, seen, order);
    order.push_back(panel);
}

} // namespace

Plan each_panel(Building const& building, Effort& effort, PlanPanel const& plan_panel) {
    std::vector<bool> seen(building.panels.size());
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < building.panels.size(); ++i) order_from(building, i, seen, order);
    Plan plan;
    plan.panels.resize(building.panels.size());
    Below below;
    auto left = static_cast<std::int64_t>(order.size());
    for (std::size_t const i : order) {
        Panel const& panel = building.panels[i];
        // What a panel leaves of its share goes to those after it.
        auto part = effort.part_of_time(effort.left() / left, left, static_cast<std::int64_t>(order.size()));
        --left;
        plan.panels[i] = plan_panel(panel, below, part);
        plan.panels[i].stopped_by_time = part.stopped_by_time();
        effort.charge_share(part);
        below[panel.name] = carried(panel_model(building, panel, below, {}), plan.panels[i]);
    }
    return plan;
}

} // namespace legwork
