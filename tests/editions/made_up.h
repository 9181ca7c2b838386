// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Editions that no one will print, to see what happens to one that nobody has read to the end.
#pragma once

#include "codebook/editions/nec_2023/book.h"

namespace made_up {

using namespace legwork;

// As NEC 2023, with other sections and another table of arc faults.
constexpr CodeBook as_nec_2023(std::string_view edition, SectionTable const& sections, CodePage<AfciTable> afci) {
    CodeBook const& b = nec_2023::kBook;
    return CodeBook{
        .edition = edition,
        .family = b.family,
        .sections = sections,
        .ampacities = b.ampacities,
        .ampacities_source = b.ampacities_source,
        .small_wires = b.small_wires,
        .dwelling_feeders = b.dwelling_feeders,
        .standard_breakers = b.standard_breakers,
        .standard_breakers_source = b.standard_breakers_source,
        .terminals_above_100_a = b.terminals_above_100_a,
        .cable_column = b.cable_column,
        .next_size_up_on_receptacles = b.next_size_up_on_receptacles,
        .continuous_percent = b.continuous_percent,
        .presumes_continuous = b.presumes_continuous,
        .dwelling_lighting_continuous = b.dwelling_lighting_continuous,
        .heating_breaker_percent = b.heating_breaker_percent,
        .heating_wire_in_full = b.heating_wire_in_full,
        .heating_is_continuous = b.heating_is_continuous,
        .motor_wire_percent = b.motor_wire_percent,
        .motor_breaker_percent = b.motor_breaker_percent,
        .motor_breaker_most_percent = b.motor_breaker_most_percent,
        .motor_breaker_most_above_100_a = b.motor_breaker_most_above_100_a,
        .welder_breaker_percent = b.welder_breaker_percent,
        .range = b.range,
        .receptacles = b.receptacles,
        .lone_receptacle = b.lone_receptacle,
        .branch_limits = b.branch_limits,
        .cable_places = b.cable_places,
        .outlet_count = b.outlet_count,
        .remarking = b.remarking,
        .drop_limits = b.drop_limits,
        .demands = b.demands,
        .backfeed = b.backfeed,
        .positions = b.positions,
        .outbuilding = b.outbuilding,
        .gfci = b.gfci,
        .afci = afci,
        .switches = b.switches,
        .household = b.household,
        .counter = b.counter,
        .own_circuits = b.own_circuits,
        .demand_factors = b.demand_factors,
    };
}

} // namespace made_up
