// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "balance/plan.h"
#include "cli/command.h"

namespace legwork {

// Stays on its space, but not on the half of it that the file says: another breaker, and no move.
bool changes_breaker(Placement const& p);

// The panel's two columns side by side, as an upright panel shows them: number, leg, what lands there, its breaker. New
// circuits are marked +, moved ones *, those with another breaker on their space =. Only names are cut; where that
// would leave little of them, the columns stand one below the other.
void print_space_table(Building const& building, Panel const& panel, PanelPlan const& plan, Streams& streams);

} // namespace legwork
