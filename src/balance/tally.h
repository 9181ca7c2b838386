// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Adds up a finished layout: the legs of each situation, the neutral, the moves.
#pragma once

#include "balance/loads.h"
#include "balance/plan.h"

namespace legwork {

// What the placed circuits put on the legs; `loads` and `placements` in the order of `circuits_of`. A DC panel has
// one bus: all of it is in `.a`.
LegLoads leg_loads(Building const& building, Panel const& panel, std::vector<CircuitLoad> const& loads,
                   std::vector<Placement> const& placements);

// The lines of the plan. `neutral_a` is the largest over the panel's sources.
std::vector<SituationLoad> situation_loads(Building const& building, Panel const& panel, LegLoads const& legs);

// The largest |A - B| over the situations that are minimised: the job's named ones, else "connected".
std::int64_t worst_imbalance(std::vector<SituationLoad> const& situations);

// Placed circuits whose wires stand on other spaces than the file says. Halves of one space are one place.
int moves_of(std::vector<Placement> const& placements);

} // namespace legwork
