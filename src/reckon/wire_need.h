// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What breaker and wire of a circuit have to be good for: what wire-load-fits and wire-continuous judge by, and what
// sizes are proposed by.
#pragma once

#include "reckon/wire_rating.h"

#include <optional>
#include <string_view>

namespace legwork {

// A circuit and what it draws; `wire` is missing when no power cable of the run is known.
struct Sides {
    Circuit const& circuit;
    Use const* use;
    Draw draw;
    std::optional<WireRating> wire;
};
// Nothing for direct current, sources, feeders of panels with circuits, and where no load is known.
std::optional<Sides> sides(Case const& c, Circuit const& circuit);

// What its wire must carry: a motor's current and a quarter more, unless the nameplate (mca) has that in it.
Amps on_the_wire(Case const& c, Sides const& s);
// What a wire counts for: its ampacity. Of eased heating it stands on a larger breaker, so its small-wire limit is the
// one that holds.
Amps good_for(Case const& c, Sides const& s, WireRating const& wire);
// Fixed heating whose continuous share is of the breaker only.
bool wire_in_full(Case const& c, Sides const& s);

// Why a load counts as continuous.
struct Continuous {
    std::string_view words, topic;
    bool presumed = false; // only since nobody showed that it rests
    // Fixed heating whose wire the code gives a quarter more, however long it runs: its breaker has it only where it
    // runs for hours, which it may.
    enum class Breaker { too, perhaps, no } breaker = Breaker::too;
};
std::optional<Continuous> continuous(Case const& c, Circuit const& circuit);

// A household range of a certain size has its least breaker, whatever its demand.
std::optional<Amps> least_for_range(Case const& c, Circuit const& circuit);

// What breaker and wire must be good for, so that neither rule speaks.
struct Needed {
    Amps breaker, wire;
};
Needed needed(Case const& c, Sides const& s);

} // namespace legwork
