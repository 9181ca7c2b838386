// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The cable that a multiwire pair shares, and its neutral.
#pragma once

#include "rules/rule.h"

#include <optional>
#include <string>

namespace legwork {

// Insulated conductors of the home run of a circuit, or of its pair, and what it is called; nothing when it is not
// known.
struct HomeRun {
    std::string kind;
    int insulated = 0;
};
std::optional<HomeRun> home_run(Circuit const& c);

// Wire of the neutral that the two share: the home run's. Nothing when the cable is not known.
std::optional<Gauge> shared_gauge(Pair const& p);
// What that neutral is good for; nothing when the cable is not known.
std::optional<Amps> neutral_ampacity(Case const& c, Pair const& p);
// "the shared neutral can carry 30 A before a breaker trips, 15.8 A at the loads given, on 14 AWG good for 15 A":
// what it comes to when the two hots do not oppose each other.
std::string neutral_carries_the_sum(Case const& c, Pair const& p);

} // namespace legwork
