// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit draws. A job may say it three ways, and which counts for what is settled here (and told in the
// README):
//
//                            measured        load        mca (nameplate's least circuit ampacity)
//     balancing, legs        first           second      third                  balance/loads.h: pole_va
//     wires, breakers, drop  the largest of the three                           here: draw_of
//     a load calculation     as a least      first       second                 demand/items.h: take_figure
//
// A reading is what ran that day, so nobody may size a wire down by it; and a code's calculation counts nameplates:
// with only a reading it is not complete.
#pragma once

#include "reckon/case.h"

#include <optional>

namespace legwork {

// Something says what it draws.
bool is_draw_known(Circuit const& circuit);

// Plain resistance on two poles, sold for 240 V: on less it gives less. Ranges and dryers mostly name both voltages on
// their plates.
bool is_resistance_heat(Circuit const& circuit);
// Its load is what it takes at 240 V; one said in amperes is what it takes where it stands.
bool gives_less_on_less(Circuit const& circuit);
// What such a heater gives at these volts: (volts / 240)² of its power.
VoltAmperes heat_at(VoltAmperes at_240, Volts volts);

// The least voltage that a source of its panel gives it; 0 V without a source.
Volts lowest_volts(Circuit const& circuit);

struct Draw {
    Amps current;
    VoltAmperes load; // as counted: of a range its branch demand, of a heater what it gives at these volts
    Volts volts;
    bool demand = false; // less than the nameplate was counted
    enum class By { load, reading, nameplate } by = By::load;
};
// Under the source that makes it draw most; nothing when nothing says what it draws.
std::optional<Draw> draw_of(Case const& c, Circuit const& circuit);

} // namespace legwork
