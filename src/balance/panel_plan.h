// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// From chosen legs to the finished plan of one panel.
#pragma once

#include "balance/legs/front.h"
#include "balance/place/place.h"
#include "balance/plan.h"

#include <optional>
#include <vector>

namespace legwork {

// Spaces for an assignment of the model's problem; none when none was found within reach.
std::optional<Slots> laid_out(PanelModel const& model, LegProblem const& problem, Room const& room,
                              Assignment const& choice, Effort& effort);

// Placements, situations, imbalance and moves of a layout.
void fill(PanelPlan& plan, PanelModel const& model, Slots const& slots);

// What the front says: least imbalance, bound, trade-off. Nothing on a panel with nothing to balance.
void fill_front(PanelPlan& plan, PanelModel const& model, Front const& front, Effort& effort);

// What the feeder of this panel carries: the legs of what is placed, and half on each leg of what is not.
LegLoads carried(PanelModel const& model, PanelPlan const& plan);

} // namespace legwork
