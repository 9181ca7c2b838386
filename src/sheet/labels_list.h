// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which wire labels a job needs and what each says in the language of a catalogue, before anybody asks how large it is.
#pragma once

#include "building/building.h"
#include "cable/run.h"
#include "words/catalogue.h"

#include <string>
#include <vector>

namespace legwork {

// One thing the cable feeds. Of a pair there are two, each led by its own mark.
struct Fed {
    std::string mark; // empty when the cable has but one
    std::string name, room;
};

// Goes round the cable's jacket, or round all of it at the tip.
struct CableLabel {
    std::string mark; // "K1", "K1+K2"
    std::vector<Fed> feeds;
    std::string cable;             // "12/3, 2P 20 A"; what is not known is left out
    std::string end, end_name;     // "Panel end: Main", "Main": where this label is
    std::string other, other_name; // "other end: box Dock", "Dock": where the rest of the cable is
    std::string which; // of direct current behind its volts, "DC 12 V, keep". "keep": set back on the jacket; "tip":
                       // lost when the cable is trimmed
};

// Goes round one conductor.
struct Marker {
    std::string words;  // "N K1+K2", "K1"
    std::string note;   // colour of a hot, empty for a neutral
    std::string spaces; // "8+10, rev B"; empty where the file has no space or no revision to date it by
    std::string end;    // "panel end", "box end"
};

// All that goes on one end of one cable.
struct CableEnd {
    Run const* run = nullptr;
    std::vector<CableLabel> labels; // tip, keep
    std::vector<Marker> markers;    // of a shared cable: its neutral, then its hots
};

// In the order they are pulled: cable by cable, the end nearer the panel first. Nothing for cables that are unsaid.
// `cables`: of each of the building's runs.
std::vector<CableEnd> cable_ends(Building const& building, std::vector<CableRun> const& cables,
                                 Catalogue const& catalogue = english());

// The file says nothing of the cable that this home run would be, not even "?": there may be none (a surge protector).
bool is_unsaid(Run const& run);

} // namespace legwork
