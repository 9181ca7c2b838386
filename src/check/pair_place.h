// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where the two hots of a multiwire pair land, and the one fault of that place that speaks for all.
#pragma once

#include "check/say.h"

#include <optional>

namespace legwork {

// In this order the first one speaks and silences the rest.
enum class PlaceFault { two_panels, same_space, legs_in_phase, same_leg, not_adjacent };

std::optional<PlaceFault> place_fault(Case const& c, typed::Pair const& p);

// Wire of the neutral that the two share: the home run's. Nothing when the cable is not known.
std::optional<Gauge> shared_gauge(typed::Pair const& p);
// What that neutral is good for; nothing when the cable is not known.
std::optional<Amps> neutral_ampacity(Case const& c, typed::Pair const& p);
// "the shared neutral can carry 30 A before a breaker trips, 15.8 A at the loads given, on 14 AWG good for 15 A":
// what it comes to when the two hots do not oppose each other.
std::string neutral_carries_the_sum(Case const& c, typed::Pair const& p);

Findings mw_one_panel(Case const&);
Findings mw_same_space(Case const&);
Findings mw_in_phase_supply(Case const&);
Findings mw_opposite_legs(Case const&);
Findings mw_not_adjacent(Case const&);

} // namespace legwork
