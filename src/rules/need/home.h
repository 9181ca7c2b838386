// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a job shows of a dwelling, circuit by circuit.
#pragma once

#include "codebook/dwelling.h"
#include "rules/rule.h"

namespace legwork {

// A circuit of alternating current that feeds something; feeders, sources and spares are none.
struct HomeCircuit {
    Circuit const* circuit;
    std::vector<Use const*> things; // as its use and name list them
    RoomPlaces places;
    bool receptacles; // feeds some, or may: its use is not known
};

struct Home {
    std::vector<HomeCircuit> circuits;
    Panel const* panel = nullptr; // the first one at the service
    bool old = false;             // the building stood before this job
    bool whole = true;            // the job lists all its circuits, as far as one can tell
    bool unclear = false;         // some circuit's words tell nothing at all
    bool flat = false;            // of an apartment building, by the two legs of its wye
};
// Nothing without a [dwelling] table, or where all is direct current.
std::optional<Home> home_of(Case const& c);

RoomPlaces places_of(Household part); // where its receptacles stand
std::vector<std::string> names_of(RoomPlaces places, RoomPlaces but = {});
bool is_named(HomeCircuit const& h, std::string_view use); // among its things

} // namespace legwork
