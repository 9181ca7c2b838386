// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Amperes by situation and by source. Loads are counted where the balance counts them (balance/loads.h).
#pragma once

#include "panel/feeds.h"
#include "reckon/case.h"

#include <string>
#include <vector>

namespace legwork {

// "connected" first (null), then the job's situations.
std::vector<Situation const*> situations(Building const& building);
std::string_view name_of(Situation const* situation); // "connected" for null

// Amperes in each hot of the circuit while this source feeds the house: 0 for what is switched off on it. Between the
// phases of a wye resistance heat made for 240 V draws less: V/240 of its current.
double amps_of(Circuit const& c, Situation const* situation, Feed const& feed);

// Above a rating by more than the rounding of the reckoning.
constexpr bool is_over(double amperes, Amps rating) { return amperes > value(rating) + 0.005; }

struct LegAmps {
    double a = 0, b = 0;
};
// This situation is judged while that source feeds the panel: it names the source, or names none and that is the first.
bool is_judged_on(Situation const& situation, Panel const& panel, Feed const& feed);

// On each leg of a panel as planned, sub-panels included, while this source (of feeds(job, panel)) feeds it. On
// 120/208 the arithmetic sum of line and line-to-line currents: a little high, never low. A 240 V load on legs in
// phase, and a leg that the source does not reach, draw nothing. DC: all on leg A.
LegAmps leg_amps(Case const& c, Panel const& panel, Situation const* situation, Feed const& feed);

// What may run at once while a source feeds the building.
struct InUse {
    LegAmps legs;
    Situation const* situation = nullptr;
    Circuit const* alone = nullptr; // of a load that no situation has: it runs at some time, and is judged by itself
    bool everything = false;        // where no situation tells
};
std::string words(InUse const& use); // "in \"Winter evening\"", "with EV alone, which is in no situation"
// Through the feeder or main of a panel: each situation that is judged on this source, and of the first source each
// load that they all leave out. Where no situation is, the first has everything on at once, and the others nothing.
std::vector<InUse> in_use(Case const& c, Panel const& panel, Feed const& feed);

} // namespace legwork
