// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a plan really does, counted from the spaces it names.
#pragma once

#include "balance/oracle/exhaustive.h"
#include "balance/plan.h"
#include "job/job.h"

namespace legwork::oracle {

struct Recount {
    std::vector<std::string> faults;  // what the plan breaks or says wrongly about itself, one sentence each
    std::vector<std::int64_t> d, sum; // A - B and A + B, "connected" first and then the situations
    std::int64_t imbalance = 0;       // the worst of those minimised
    int moves = 0;
};

// For a panel plan that has placements.
Recount recount(typed::Job const& job, PanelPlan const& plan, Today today, FeederLoads const& below = {});

// What stands below every feeder of the panel, by the plans of the panels below.
FeederLoads below(typed::Job const& job, Plan const& plan, typed::Panel const& panel);

} // namespace legwork::oracle
