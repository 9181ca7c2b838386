// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder demand/: what a code lets a building count for, since not everything runs at once.
//
//     LoadQuestion --items.h--> loads as listed --methods.h, a file each--> steps and their total (a LoadCalculation)
//                  --service_size.h--> amperes, least service, wires --results.h--> what a permit form asks for
//
// The load calculation of a service or feeder, step by step, as a person fills it in on a permit form. Every step is in
// whole VA, so that a pocket calculator gives the same figures. What is said of it are phrases: load_steps.h,
// load_notes.h, load_results.h of words/rows/.
#pragma once

#include "building/building.h"
#include "codebook/code_book.h"
#include "words/phrase.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

enum class LoadMethod { standard, optional, existing, measured };
std::string_view name(LoadMethod method); // "standard"
Phrase phrase(LoadMethod method);
std::optional<LoadMethod> load_method(std::string_view name); // nothing for any other word
std::vector<std::string> load_method_names();

// What the load hangs on.
struct ServiceFacts {
    Volts volts;                       // what amperes are reckoned at: 240, 208, or 120 where there is one phase only
    bool three_wire = true;            // two hots with a voltage between them, and a neutral
    bool wye = false;                  // two phases of a wye: the neutral of a balanced load carries current too
    std::optional<Amps> rating{};      // least of main, source and feeder
    Phrase rated_by{};                 // "the main", "the feeder", "the supply"; empty without a rating
    std::map<std::string, Leg> legs{}; // of the one-pole circuits that have a space, by mark
    // An inverter, a generator or a battery with no grid beside it: neither the load of a dwelling nor the least size
    // of its service decides what it must give.
    bool stands_alone = false;
};

struct LoadQuestion {
    Building const& building;
    CodeBook const& book;
    Panel const& panel; // whose load is asked for, with all panels below it
    ServiceFacts facts;
};

struct LoadStep {
    enum class Kind {
        item,     // goes into a later step
        subtotal, // of items
        counted,  // a part of the total
    };
    Kind kind = Kind::counted;
    Phrase item;            // "Clothes dryer, hall (DR)"
    std::string_view topic; // of cite.h, without "load-service/"
    Reference reference;
    Phrase arithmetic; // "6000 VA × 35 % = 2100 VA"; empty where there is nothing to reckon
    std::int64_t va = 0;
    std::vector<std::string> circuits{}; // marks
    bool argued = false;                 // readings of its section differ: no verdict of too much hangs on it
    std::int64_t guessed_va = 0;         // of `va`, what only common practice gives: nor on this
};
using LoadSteps = std::vector<LoadStep>;

// A part of the total that one hot carries alone: a one-pole load that counts by itself.
struct LineLoad {
    std::string mark;
    std::int64_t va = 0; // after demand
};

// The load while the other of heating and cooling runs: less in all, though not always on each hot.
struct OtherSeason {
    std::int64_t total_va = 0;
    std::vector<LineLoad> one_line;
};

struct LoadCalculation {
    LoadMethod method = LoadMethod::standard;
    Phrase title; // "Optional method for one dwelling (NEC 2023 220.82)"
    Phrase why;   // why this method
    LoadSteps steps;
    std::int64_t total_va = 0; // of the counted steps, before any least size
    LoadSteps neutral;         // empty where the method gives none
    std::optional<std::int64_t> neutral_va;
    std::vector<LineLoad> one_line;            // empty where a demand is taken on all loads together
    std::optional<OtherSeason> other_season{}; // where a load of it stands on one hot alone
    Phrases unknown;                           // what is missing: the total is then too small
    std::vector<std::string> unknown_loads;    // of it, the marks of circuits of whose load nothing is known
    Phrases notes;                             // what was taken for granted, what was left out and why
    bool whole_dwelling = false;               // the load of all of one dwelling: its least size holds
    // All that is listed, as if it ran at once: the code has hardly a demand factor for it, and who decides may take
    // what does run together.
    bool all_at_once = false;
};

// The calculation, or why this method is not for this building and what to do.
struct LoadAnswer {
    std::optional<LoadCalculation> load;
    std::string why, fix; // when there is none, in English
};

// By the method asked for; without one by that which an electrician would take: measured where a peak is known and
// something is added, existing where something stands already, optional where a new dwelling may be reckoned so, else
// standard. Never guesses: what is not known is named.
LoadAnswer reckon(LoadQuestion const& q, std::optional<LoadMethod> asked = std::nullopt);

// The counted step that grew most from one calculation to the other; null when none did.
LoadStep const* grown_step(LoadCalculation const& before, LoadCalculation const& after);

// The part of the total whose figures hang neither on memory, nor on a reading that is argued, nor on a guess.
std::int64_t sure_va(LoadCalculation const& load);

} // namespace legwork
