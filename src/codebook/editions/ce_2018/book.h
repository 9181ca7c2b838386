// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// CE Code (CSA C22.1) 2018.
#pragma once

#include "codebook/editions/ce/branch_limits.h"
#include "codebook/editions/ce/cable_places.h"
#include "codebook/editions/ce/dwelling.h"
#include "codebook/editions/ce/loads.h"
#include "codebook/editions/ce/panel.h"
#include "codebook/editions/ce/protection.h"
#include "codebook/editions/ce/remarking.h"
#include "codebook/editions/ce/wires.h"
#include "codebook/editions/ce_2018/sections.h"
#include "codebook/editions/ce_2018/tables.h"

namespace legwork::ce_2018 {

using namespace how_read;

inline constexpr CodeBook kBook{
    .edition = "CE 2018",
    .family = Family::ce,
    .sections = kSections,
    .ampacities = kAmpacities,
    .ampacities_source = seen,
    .small_wires = ce::kSmallWires<memory>,
    .dwelling_feeders = kDwellingFeeders,
    .standard_breakers = kStandardBreakers,
    .standard_breakers_source = memory,
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
    .motor_breaker_most_percent = {400, memory},
    .welder_breaker_percent = {200, memory},
    .range = ce::kRange,
    .receptacles = ce::kReceptacles<memory>,
    .lone_receptacle = {},
    .branch_limits = ce::kBranchLimits,
    .cable_places = ce::kCablePlaces,
    .outlet_count = kOutletCounts,
    .remarking = ce::kRemarking<memory>,
    .drop_limits = ce::kDropLimits2018,
    .demands = ce::kDemands2018,
    .backfeed = ce::kBackfeed<memory>,
    .positions = kPositions,
    .outbuilding = ce::kOutbuilding,
    .gfci = ce::gfci::kTable2018,
    .afci = ce::arc::kTable,
    .switches = ce::kSwitches,
    .household = ce::kHousehold,
    .counter = ce::home::kCounter,
    .own_circuits = ce::kOwnCircuits,
    .demand_factors = ce::kDemandFactors<memory, memory>,
};

} // namespace legwork::ce_2018
