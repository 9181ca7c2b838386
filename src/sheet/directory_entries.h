// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the directory says of each space of one panel. Words only: where they stand on the page comes later.
#pragma once

#include "balance/plan.h"
#include "building/building.h"
#include "codebook/code_book.h"

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
    std::vector<Spot> slots;                // one, or the two of a two-pole breaker; empty: not placed
    std::string mark, name, place, breaker; // breaker: "20 A", "2P 30 A"
    // What a hand at this breaker must know: never left out. Most needed first.
    std::vector<std::string> warnings;
    // Where it resets, the largest breaker, remarks.
    std::vector<std::string> remarks;
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
    CodeBook const* book; // null: the largest breaker of a smaller wire is not said
};

PanelEntries panel_entries(DirectoryInput const& input, Panel const& panel);

std::string numbers(std::vector<Spot> const& slots); // "5", "5+7"
// Where a circuit stands, as another line or list speaks of it: "5+7", "K1 in panel Barn" for another panel, "K1
// (no space yet)".
std::string position_words(Plan const& plan, Panel const& panel, Circuit const& c);

} // namespace legwork
