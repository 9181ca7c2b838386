// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The sentences of the tape notes. A person lands wires from them: they say what the job, the plan and the code book
// gave, or what holds for any device, and nothing else.
#pragma once

#include "sheet/tape_notes_cards.h"
#include "words/phrase.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// Which end of a cable is spoken of.
struct EndOf {
    Building const& building;
    std::vector<CableRun> const& cables; // of each of the building's runs
    std::size_t number = 0;              // of the run
    bool far = false;                    // the end away from the panel
    Run const& run() const { return building.runs[number]; }
    CableRun const& cable() const { return cables[number]; }
    RunEnd const& here() const { return far ? run().to : run().from; }
    bool panel() const { return far ? run().is_feeder() : run().is_home_run(); }
};

// "panel Main"; a name that says so already stands alone ("Garage panel").
Phrase panel_phrase(std::string const& name);

WireNote wire_note(SheetInput const& input, EndOf const& end, std::size_t conductor);
// Errors that stand against this cable's circuits, besides those that its rows tell.
std::vector<std::string> stops(SheetInput const& input, Run const& run);
// What goes off together, the box of the first split, the meter check; empty for a cable that is not a pair's.
std::vector<std::string> pair_remarks(SheetInput const& input, EndOf const& end);
// What the cable lacks for its circuits, or what the file does not say of it.
std::vector<std::string> cable_faults(SheetInput const& input, CableRun const& cable);

} // namespace legwork
