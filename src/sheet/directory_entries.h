// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the directory says of each space of one panel, in no language yet: where it stands on the page comes later.
#pragma once

#include "balance/plan.h"
#include "building/building.h"
#include "codebook/code_book.h"
#include "words/phrase.h"

#include <string>
#include <vector>

namespace legwork {

enum class EntryKind {
    circuit,
    future,  // wired, switched off
    spare,   // a breaker with no wire
    space,   // no breaker
    not_fed, // no source or bus reaches it
    blocked, // must stay empty
};

struct Entry {
    EntryKind kind = EntryKind::space;
    std::vector<Spot> slots; // one, or the two of a two-pole breaker; empty: not placed
    std::string mark;
    Phrase name, place;
    int poles = 0;             // of its breaker; 0: there is none
    Phrase breaker;            // "20 A", "2P 30 A"
    Protection gfci{}, afci{}; // where it resets
    bool smaller_wire = false; // its largest breaker goes by a wire further on, and is said
    // What a hand at this breaker must know: never left out. Most needed first.
    Phrases warnings;
    // Where it resets, the largest breaker, remarks.
    Phrases remarks;
};

// Two slots whose handles move together; neighbours in one column.
struct HandleTie {
    Spot first, second;
};

struct PanelEntries {
    std::vector<Entry> entries;    // every space of the panel, or half of one, exactly once
    std::vector<Entry> not_placed; // circuits that have no space
    std::vector<HandleTie> ties;
};

struct DirectoryInput {
    Building const& building;
    Plan const& plan;
    CodeBook const* book;        // null: the largest breaker of a smaller wire is not said
    std::string language = "en"; // names are shown in it where the job has them
};

PanelEntries panel_entries(DirectoryInput const& input, Panel const& panel);

std::string numbers(std::vector<Spot> const& slots); // "5", "5+7"
// Where a circuit stands, as another line or list speaks of it: "5+7", "K1 in panel Barn" for another panel, "K1
// (no space yet)".
Phrase position_phrase(Plan const& plan, Panel const& panel, Circuit const& c);
// That is a space of this panel.
bool stands_in(Plan const& plan, Panel const& panel, Circuit const& c);

} // namespace legwork
