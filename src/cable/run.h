// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder cable/: a cable is a row of coloured conductors, and each has a job. conductors.h deals out the jobs as an
// electrician would, remark.cpp says which colours then lie and how to tape them, drop.h what the copper loses.
//
//     panel ===== 14/3, the shared home run ===== box ===== 14/2, the rest of K1 ===== box
//             black    hot of K1                       black    hot of K1
//             red      hot of K2                       white    neutral of K1
//             white    neutral of both
//             bare     ground                          bare     ground
//
// Each cable of the job, piece by piece, with the job of every conductor in it and the tape it needs.
#pragma once

#include "building/building.h"
#include "codebook/code_book.h"
#include "words/phrase.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// A channel is the way back of one colour of a strip, whose plus (the hot) is common to all.
enum class ConductorJob { hot, neutral, ground, switched, traveller, interconnect, channel, spare };

enum class Remark {
    as_made,   // the colour says what it is
    tape,      // wrap tape of colour `tape` at both ends and wherever it is seen
    ask_first, // as tape, but readings of the code differ: ask the inspector before
    forbidden, // this conductor must not do this job; no tape cures it
};

struct Conductor {
    std::string color;                         // as made, for people: "black", "white with blue stripe", "bare", ...
    Insulation insulation = Insulation::other; // the same for whoever decides
    ConductorJob job = ConductorJob::spare;
    std::string circuit; // whose hot it is, or whose switched wire; empty for a shared neutral, a ground, a spare
    std::string channel; // of a channel: "red", as the strip calls it
    Remark remark = Remark::as_made;
    std::string tape;    // colour of the tape; empty for as_made and forbidden
    Phrase why;          // one or two short sentences; empty for as_made
    Reference reference; // of the re-marking; section empty for as_made
};

// Of a strip's cable.
inline constexpr std::string_view kPlusChannel = "plus";
// What each conductor of a strip's cable is, in the cable's order, as sold: black the common plus, each other colour
// the channel of its name. Empty for what is no strip's cable of three conductors or more.
std::vector<std::string> channels_of(CableKind const& kind);

struct CableRun {
    Run const* of = nullptr;           // the run of the building that it wires
    std::string mark;                  // "K1", "K1+K2", or the mark of a [[cable]]
    std::vector<std::string> circuits; // whose wires are in it, in the file's order; empty for a [[cable]]
    int segment = 0;                   // 0: the home run
    std::string kind;                  // "12/3"; empty when not known
    std::optional<Length> length;
    std::string from, to;                       // names of its ends; `from` is the end nearer the panel
    bool from_panel = false, to_panel = false;  // that end is a panel (a feeder's far end is one too)
    std::vector<Conductor> conductors;          // insulated in the cable's order, then the ground; empty when not known
    int missing_hots = 0, missing_neutrals = 0; // conductors that the circuits need and the cable lacks
    Phrase note; // what changes at the box where this piece begins ("red becomes black"); mostly empty
    bool is_only_of(Circuit const& c) const {
        return of->of_circuit && of->carries.size() == 1 && of->carries.front() == &c;
    }
};

// In the file's order: circuits (a pair once, at its first member: the shared home run, then the rest of the first,
// then of the second) segment by segment, then the [[cable]]s. A spare breaker without a cable has none. On DC the
// positive is the hot and the negative the neutral, as made: no code's re-marking is applied to it. An
// extra-low-voltage kind on an AC circuit carries nothing: its conductors are spare.
std::vector<CableRun> cable_runs(Building const& building, CodeBook const& book);

// True when what is on the circuit uses a neutral: one pole; two poles with 120 V outlets or 14- types; with no outlet
// listed a range or dryer by its use; `third = "neutral"`; a feeder.
bool needs_neutral(Circuit const& c);

} // namespace legwork
