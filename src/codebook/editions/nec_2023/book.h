// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// NEC (NFPA 70) 2023.
#pragma once

#include "codebook/editions/nec/arc.h"
#include "codebook/editions/nec/branch_limits.h"
#include "codebook/editions/nec/cable_places.h"
#include "codebook/editions/nec/dwelling.h"
#include "codebook/editions/nec/loads.h"
#include "codebook/editions/nec/panel.h"
#include "codebook/editions/nec/remarking.h"
#include "codebook/editions/nec/wires.h"
#include "codebook/editions/nec_2023/gfci.h"
#include "codebook/editions/nec_2023/sections.h"

namespace legwork::nec_2023 {

using namespace how_read;

inline constexpr AfciTable kAfci = nec::afci(10);
inline constexpr HouseholdTable kHousehold =
    nec::household(nec::home::kBasins, nec::home::kGarage, nec::home::kOutdoor);
inline constexpr BackfeedTable kBackfeed = nec::backfeed_by(noted);
inline constexpr OutbuildingSupplies kOutbuilding = nec::outbuilding({6, memory});
// Only appliances of 500 W and more count among the four; a vehicle charger counts at 7200 VA at least.
inline constexpr DemandFactors kDemandFactors =
    nec::demand_factors(500, Figure{7200, seen}, seen, nec::kSeenLoadTables);

inline constexpr CodeBook kBook{
    .edition = "NEC 2023",
    .family = Family::nec,
    .sections = kSections,
    .ampacities = kAmpacities,
    .ampacities_source = seen,
    .small_wires = nec::kSmallWires,
    .dwelling_feeders = nec::kDwellingFeeders,
    .standard_breakers = kStandardBreakers2023,
    .standard_breakers_source = seen,
    .terminals_above_100_a = 75,
    .cable_column = 60,
    .next_size_up_on_receptacles = false,
    .continuous_percent = {80, seen},
    .presumes_continuous = false,
    .dwelling_lighting_continuous = false,
    .heating_breaker_percent = {100, seen},
    .heating_wire_in_full = false,
    .heating_is_continuous = false,
    .motor_wire_percent = {125, seen},
    .motor_breaker_percent = {250, noted},
    .motor_breaker_most_percent = {400, noted},
    .welder_breaker_percent = {200, noted},
    .range = nec::kRange,
    .receptacles = nec::kAtLeastReceptacles,
    .lone_receptacle = seen,
    .branch_limits = nec::kBranchLimits2023,
    .cable_places = nec::kCablePlaces,
    .outlet_count = silent,
    .remarking = nec::kAtTheEnds,
    .drop_limits = nec::kDropLimits,
    .demands = nec::kDemands,
    .backfeed = kBackfeed,
    .positions = silent,
    .outbuilding = kOutbuilding,
    .gfci = kGfci,
    .afci = kAfci,
    .switches = nec::kSwitches,
    .household = kHousehold,
    .counter = nec::home::kCounter,
    .own_circuits = nec::kOfLargeChargers,
    .demand_factors = kDemandFactors,
};

} // namespace legwork::nec_2023
