// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The methods, each a pure function. Which of them holds for a building is choose.cpp's question.
#pragma once

#include "demand/items.h"
#include "demand/steps.h"

namespace legwork {

// A calculation while it is made.
struct Work {
    LoadQuestion const& q;
    DemandFactors const& factors;
    Loads loads;
    bool whole; // of one dwelling; else of a part of one, or of another building
    StepList steps;
    std::vector<std::string> unknown, notes;
    std::vector<LineLoad> one_line{};
};
Work work_on(LoadQuestion const& q);
LoadCalculation finished(Work&& work, LoadMethod method, std::string title);

// Lines that several methods share. Each adds its steps.
// Floor area and the circuits of kitchen and laundry, as items; the sum. Of a part of a dwelling what is listed there.
std::int64_t add_general_load(Work& w, FloorLoads const& f);
// What a device holds back, at its limit; the figure that counts.
std::int64_t add_managed(Work& w, LoadStep::Kind kind);
// Notes what one hot carries alone.
void add_to_line(Work& w, LoadItem const& i, std::int64_t va);
// 25 % of the largest motor among these.
LoadItem const* add_largest_motor(Work& w, LoadItems const& counted, Figure percent);

// What the neutral of a service takes from the standard method.
struct NeutralPart {
    std::string label;
    std::int64_t va = 0;
    bool reduced = false; // cooking and dryers
};
struct StandardParts {
    std::vector<NeutralPart> neutral;
};
StandardParts standard_by_floor(Work& w, FloorLoads const& f);
void optional_new(Work& w, FloorLoads const& f, OptionalLoads const& o);
void optional_existing(Work& w, FloorLoads const& f, ExistingLoads const& e);
void by_blocks(Work& w, BlockLoads const& b);
void listed(Work& w, ListedLoads const& l);
void measured(Work& w, PeakLoads const& p, PeakDraw const& peak);

// The neutral by the standard method, whatever method the load was reckoned by.
void add_neutral(LoadCalculation& load, LoadQuestion const& q);

bool adds_climate(LoadItems const& items); // new heating or cooling
bool is_general(LoadItem const& item);     // lighting, receptacles and what is plugged in

} // namespace legwork
