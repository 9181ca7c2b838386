// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/plan.h"

#include <algorithm>

namespace legwork {

PanelPlan const* plan_of(Plan const& plan, std::string_view panel) {
    auto const at = std::ranges::find(plan.panels, panel, &PanelPlan::panel);
    return at == plan.panels.end() ? nullptr : &*at;
}

Placement const* placement_of(Plan const& plan, std::string_view circuit) {
    for (PanelPlan const& p : plan.panels) {
        auto const at = std::ranges::find(p.placements, circuit, &Placement::circuit);
        if (at != p.placements.end()) return &*at;
    }
    return nullptr;
}

} // namespace legwork
