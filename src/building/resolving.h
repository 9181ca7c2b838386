// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A building in the making, table by table. Only resolve() and its parts include this.
#pragma once

#include "building/building.h"
#include "job/job.h"

namespace legwork {

struct Resolving {
    typed::Job const& job;
    Building& building; // its lists have their final length, so that things may already point at each other

    Circuit* circuit(std::string_view mark); // null when there is none
    Panel* panel(std::string_view name);     // listed or not
};

// The key of the feeder's circuit that a key of the panel stands for: "breaker" of "feeder_breaker"; empty for the
// panel's own.
std::string_view feeder_key(std::string_view at_panel);
// The feeder of this panel, where it comes from a panel that is not listed: it stands in no [[circuit]].
bool has_feeder_of_its_own(typed::Job const& job, typed::Panel const& panel);
void resolve_panels(Resolving& r);         // what they are, what feeds them
void resolve_circuits(Resolving& r);       // after the panels
void resolve_feeders(Resolving& r);        // those that stand in no [[circuit]]; after the circuits
void resolve_pairs(Resolving& r);          // and what a pair says once for both
void resolve_power_supplies(Resolving& r); // what DC panels draw; after the circuits
// The shares of what power supplies feed, for the circuits that they hang on. A mark that the situation names is left.
void share_power_supplies(Resolving const& r, typed::Situation const& said, Situation& situation);
void resolve_runs(Resolving& r); // after the pairs
void resolve_dwelling(Resolving& r);

} // namespace legwork
