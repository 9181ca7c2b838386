// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Sizes for circuits that lack a breaker or a cable: the smallest that the rules let pass, with the reckoning that
// leads there. What is proposed is for new work; of work that is there already the sizes have to be read, not chosen.
//
//     wanted.h   what load, nameplate, custom or panel ask of breaker and wire, before any size
//     sizing.h   the smallest sizes that satisfy that, each tried by the same reckoning that the rules judge by
//     feeder_objection.h   the rules themselves, asked of a building with the sizes in it, where a feeder is concerned
#pragma once

#include "balance/plan.h"
#include "building/building.h"
#include "codebook/code_book.h"

#include <optional>
#include <string>
#include <vector>

namespace legwork {

// One line of the reckoning, as one would write it: "18.75 A x 125 % = 23.44 A".
struct Step {
    std::string says;
    Reference reference; // edition empty: arithmetic only
};

struct Proposal {
    std::string circuit;             // its mark
    std::optional<Amps> breaker;     // proposed; nothing: it has one, or none can be proposed
    std::vector<std::string> cables; // by piece of its run, the home run first; empty text: as breaker
    std::vector<Step> steps;
    Reference reference;  // of what decided the size; edition empty where nothing is proposed
    std::string find_out; // what to find out or put right before (the rest of) its sizes can be proposed; mostly empty

    bool has_cable() const;
};

// In the job's order, one for each circuit that lacks a breaker or the cable of some piece of its run; none for a
// spare. Of a pair both members have the shared cable and one breaker size. `plan`: the panels as the file has them; it
// tells on which legs a sub-panel's loads are. Never throws.
std::vector<Proposal> proposals(Building const& building, Plan const& plan, CodeBook const& book);

// A building with what is proposed in it.
Building with_proposals(Building const& building, std::vector<Proposal> const& proposed);

} // namespace legwork
