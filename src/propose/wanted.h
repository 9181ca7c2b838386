// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit asks of its breaker and its wire, before any size is chosen.
#pragma once

#include "propose/words.h"
#include "reckon/leg_amps.h"
#include "reckon/wire_rating.h"

namespace legwork {

// A calculated load as the legs of a feeder carry it.
struct CalculatedLegs {
    LegAmps at;
    SupplyKind kind = SupplyKind::split_120_240;
};

struct Wanted {
    Amps breaker;                // at least
    Amps given;                  // of that, what a breaker that the job has must have as well
    Amps wire;                   // what the wire must carry, besides its breaker and `mca`
    std::optional<Amps> most;    // of the breaker, by a nameplate or the bus it feeds
    bool whole_panel = false;    // a feeder: the wire carries all its panel draws
    bool whole_dwelling = false; // of one dwelling by its load calculation: the table of such feeders may be taken
    std::optional<CalculatedLegs> calculated{};
    std::vector<Step> steps;
    std::string_view topic{};         // of cite.h, of what decides the breaker so far
    Source source = Source::practice; // of that
    std::string find_out;             // not empty: nothing can be said before this is known
};

// `circuit` is one of c.building, or a copy of one. Not for spares.
Wanted wanted(Case const& c, Circuit const& circuit);
// Of the circuit that feeds this panel.
Wanted wanted_by_panel(Case const& c, Panel const& fed);

// The same by the load calculation of the panel, where the code takes demand factors for it
// (wanted_by_calculation.cpp). Nothing where the calculation is not complete, or adds up all that is listed as if it
// ran at once: then what the legs draw with everything on is what counts.
std::optional<Wanted> wanted_by_calculation(Case const& c, Panel const& fed);

// "its load calculation is not complete (the floor area of the dwelling): no demand factor is taken"; empty where it
// is, or is none that takes any.
std::string lacking_in_calculation(Case const& c, Panel const& fed);

// `w`, wanted in another way, as large as it takes for no rule of the panel's load to speak: a calculation that is not
// complete may come to more already.
Wanted unopposed(Case const& c, Panel const& fed, Wanted w);

// Ratings that the receptacles on it let its breaker have; all standard ones where it has none. Rising, from
// least_proposed_breaker() on. `as_sold`: where it names no receptacle, the one that its appliance is sold for counts.
std::vector<Amps> possible_breakers(Case const& c, Circuit const& circuit, bool as_sold);

} // namespace legwork
