// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "balance/plan.h"

#include <ostream>

namespace legwork {

// The panel's two columns side by side, as an upright panel shows them: number, leg, what lands there, its breaker. New
// circuits are marked +, moved ones *.
void print_space_table(typed::Job const& job, typed::Panel const& panel, PanelPlan const& plan, std::ostream& out);

} // namespace legwork
