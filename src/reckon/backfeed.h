// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What feeds the bus of a panel beside its main, and which leave of the code covers it.
#pragma once

#include "codebook/backfeed.h"
#include "reckon/case.h"

namespace legwork {

// What counts of the sources: at least and, where it is known, at most. An output that is not given lies between
// nothing and the breakers that carry it.
struct BackfeedShare {
    Amps least;
    std::optional<Amps> most;
    bool exact() const { return most == least; }
};

enum class BackfeedLeave {
    none_asked, // nothing feeds back
    sum,        // main and sources within the bus: they may stand anywhere
    far_end,    // within the larger share of the bus, so the sources must stand at the end away from the main
    too_much,
    not_known,
};

struct Backfeed {
    std::vector<Circuit const*>
        sources; // solar, battery, and feeders of sub-panels that hold some, in the file's order
    bool all_behind_feeders = false;
    std::optional<Amps> bus;
    std::optional<Amps> ahead; // the main, or what protects the feeder when it is smaller
    bool ahead_is_feeder = false;
    std::optional<Amps> output; // of all sources; only when given for each panel that holds some
    BackfeedShare share{};
    Figure bus_percent{0, Source::unread}; // until the book is asked
    std::optional<Amps> most;              // main and sources together, in that percent of the bus
    // The sum of all breakers but the main, where it is within the bus and the code takes that too: it holds only while
    // a sign keeps it so, so it is offered and never presumed.
    std::optional<Amps> all_breakers;
    BackfeedLeave leave = BackfeedLeave::none_asked;
};

// DC panels have none: a charge controller is no interactive source.
Backfeed backfeed_of(Case const& c, Panel const& panel);

// Where the main or its lugs are: `main_at`, else the end at which a circuit of use "main" stands.
std::optional<PanelEnd> main_end(Case const& c, Panel const& panel);
// Nothing but other sources, blocked or dead spaces lies further from the main in its column.
bool at_far_end(Case const& c, Panel const& panel, Circuit const& source, PanelEnd main);
// The last usable space of each column at the end away from the main.
std::vector<int> far_spaces(Panel const& panel, PanelEnd main);

} // namespace legwork
