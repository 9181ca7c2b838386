// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// CE Code (CSA C22.1) 2021.
#pragma once

#include "codebook/editions/ce/branch_limits.h"
#include "codebook/editions/ce/cable_places.h"
#include "codebook/editions/ce/dwelling.h"
#include "codebook/editions/ce/home_2021.h"
#include "codebook/editions/ce/loads.h"
#include "codebook/editions/ce/panel.h"
#include "codebook/editions/ce/protection.h"
#include "codebook/editions/ce/remarking.h"
#include "codebook/editions/ce/wires.h"
#include "codebook/editions/ce_2021/sections.h"

namespace legwork::ce_2021 {

using namespace how_read;

inline constexpr CodeBook kBook{
    .edition = "CE 2021",
    .family = Family::ce,
    .sections = kSections,
    .ampacities = kAmpacities,
    .ampacities_source = seen,
    .small_wires = ce::kSmallWires<seen>,
    .dwelling_feeders = {},
    .standard_breakers = kStandardBreakers,
    .standard_breakers_source = noted,
    .terminals_above_100_a = 75,
    .cable_column = {},
    .next_size_up_on_receptacles = true,
    .continuous_percent = {80, seen},
    .presumes_continuous = true,
    .dwelling_lighting_continuous = true,
    .heating_breaker_percent = {125, seen},
    .heating_wire_in_full = true,
    .heating_is_continuous = true,
    .motor_wire_percent = {125, seen},
    .motor_breaker_percent = {250, memory},
    .motor_breaker_most_percent = {400, noted},
    .motor_breaker_most_above_100_a = Figure{300, noted},
    .welder_breaker_percent = {200, noted},
    .range = ce::kRange,
    .receptacles = ce::kReceptacles<seen>,
    .lone_receptacle = {},
    .branch_limits = ce::kBranchLimits2021,
    .cable_places = ce::kCablePlaces,
    .outlet_count = ce::kOutletCounts,
    .remarking = ce::kRemarking<noted>,
    .drop_limits = ce::kDropLimits,
    .demands = ce::kDemands,
    .backfeed = ce::kBackfeed<memory>,
    .positions = ce::kPositions,
    .outbuilding = ce::kOutbuilding,
    .gfci = ce::gfci::kTable,
    .afci = ce::arc::kTable,
    .switches = ce::kSwitches,
    .household = ce::kHousehold2021<noted>,
    .counter = ce::home::kCounter,
    .own_circuits = ce::kOwnCircuits2021<noted, seen>,
    .demand_factors = ce::kDemandFactors<seen, noted>,
};

} // namespace legwork::ce_2021
