// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The methods, each a pure function. Which of them holds for a building is choose.cpp's question.
#pragma once

#include "demand/climate.h"
#include "demand/steps.h"

namespace legwork {

// A calculation while it is made.
struct Work {
    LoadQuestion const& q;
    DemandFactors const& factors;
    Loads loads;
    bool whole; // of one dwelling; else of a part of one, or of another building
    StepList steps;
    Phrases unknown, notes;
    std::vector<LineLoad> one_line{};
    Climate climate{}; // as counted, where what stands on one hot alone matters
};
Work work_on(LoadQuestion const& q);
LoadCalculation finished(Work&& work, LoadMethod method, Phrase title);

Phrase phrase(FloorBy dimensions);

// Lines that several methods share. Each adds its steps.
// Floor area and the circuits of kitchen and laundry, as items; the sum. Of a part of a dwelling what is listed there.
// `sum_topic`: what the sum is taken by, of load-service/.
std::int64_t add_general_load(Work& w, FloorLoads const& f, std::string_view sum_topic);
// What a device holds back, at its limit; the figure that counts.
std::int64_t add_managed(Work& w, LoadStep::Kind kind);
// Notes what one hot carries alone: of heating and cooling, and of one load.
void add_to_line(Work& w, Climate const& climate);
void add_to_line(Work& w, LoadItem const& i, std::int64_t va);
// A percent of the largest motor whose figure does not hold it already, among these, and among those left out where the
// code asks for it.
struct MotorMore {
    std::optional<LoadItem> motor{}; // nothing when there is none
    std::int64_t va = 0;             // what is added
    bool left_out = false;
    Phrase how{}; // "1380 VA × 25 % = 345 VA"
};
MotorMore largest_motor(LoadItems const& counted, LoadItems const& left_out, MotorLoads const& m);
void add_motor(Work& w, MotorMore const& more, MotorLoads const& m, Climate const& climate);

// What the neutral of a service takes from the standard method.
struct NeutralPart {
    Phrase label;
    std::int64_t va = 0;
    bool reduced = false; // cooking and dryers
    Phrase how{};         // the arithmetic of it; another method's steps do not show it
    Phrase argued{};      // of which reading it is, where they differ
};
using NeutralParts = std::vector<NeutralPart>;
NeutralParts standard_by_floor(Work& w, FloorLoads const& f);
void optional_new(Work& w, FloorLoads const& f, OptionalLoads const& o);
void optional_existing(Work& w, FloorLoads const& f, ExistingLoads const& e);
void by_blocks(Work& w, BlockLoads const& b);
NeutralParts listed(Work& w, ListedLoads const& l);
void measured(Work& w, PeakLoads const& p, Dwelling::Peak const& peak);

// What the neutral takes of one load that counts in full.
void add_to_neutral(NeutralParts& parts, LoadItem const& i, std::int64_t va);
// Of heating and cooling the side that takes more of it, whichever counts for the hots.
void add_climate_to_neutral(NeutralParts& parts, Climate const& climate);
// The share of the largest motor whose current the neutral takes, among `others` and heating and cooling. `of_hots`:
// that which counts for them.
void add_motor_to_neutral(NeutralParts& parts, LoadItems const& others, Climate const& climate, MotorLoads const& m,
                          MotorMore const& of_hots);

// What other buildings draw through feeders of this panel, in full: their own calculations took the demand already.
// After the neutral: theirs is not known and counts in full too.
void add_other_buildings(LoadCalculation& load, LoadQuestion const& q);

// Notes: uses that were taken from names, panels that are not in it.
void add_granted(LoadCalculation& load, LoadQuestion const& q);

// The neutral by the standard method, whatever method the load was reckoned by.
void add_neutral(LoadCalculation& load, LoadQuestion const& q);

bool adds_climate(Loads const& loads); // new heating or cooling
bool is_general(LoadItem const& item); // lighting, receptacles and what is plugged in

} // namespace legwork
