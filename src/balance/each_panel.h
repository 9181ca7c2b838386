// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "balance/effort.h"
#include "balance/solved.h"

#include <functional>

namespace legwork {

using PlanPanel = std::function<PanelPlan(Panel const&, Below const&, Effort&)>;

// Plans all panels, sub-panels before the panel that feeds them, each with an equal share of the effort and
// the time that are left.
Plan each_panel(Building const& building, Effort& effort, PlanPanel const& plan_panel);

} // namespace legwork
