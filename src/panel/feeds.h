// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What feeds a panel, source by source: its own sources, or those of the panels above it.
#pragma once

#include "job/job.h"
#include "panel/layout.h"

#include <string>
#include <vector>

namespace legwork {

struct Feed {
    std::string source; // name of the supply; empty for the one unnamed source
    SupplyKind kind = SupplyKind::split_120_240;
    Leg leg = Leg::a; // of one_leg_120
    std::optional<Amps> amps;
    std::vector<std::string> off; // marks switched off by hand while this source feeds the house
};

// All sources that can feed this panel, in the file's order; at least one for a job that was read.
std::vector<Feed> feeds(typed::Job const& job, typed::Panel const& panel);

// A panel of direct current whose feeder is the AC circuit of its power supply: it has a source of its own.
bool has_power_supply(typed::Job const& job, typed::Panel const& panel);

bool is_dc(SupplyKind kind);
bool has_two_hots(SupplyKind kind);          // two hot legs with a voltage between them: 120/240, 120/208
Volts volts_to_neutral(SupplyKind kind);     // 120, or the volts of the DC
Volts volts_between_legs(SupplyKind kind);   // 240, 208, else 0
int phase_degrees(SupplyKind kind);          // between leg A and leg B: 180, 120, 0
bool is_wye(std::vector<Feed> const& feeds); // some source is two legs of a wye, 120/208
bool energizes(Feed const& feed, Leg leg);   // this source puts voltage on this leg
// No source energizes this space, or the bus does not (`dead`).
bool is_live(std::vector<Feed> const& feeds, Layout const& layout, int space);
std::string_view name(SupplyKind kind); // as typed in the job: "120/240"

// |Ia + Ib e^(jp)| in amperes: the current in a neutral shared by two legs (line-to-neutral resistive loads).
// At 180 degrees |Ia - Ib|, at 0 Ia + Ib, at 120 sqrt(Ia^2 + Ib^2 - Ia Ib).
double neutral_amps(double leg_a, double leg_b, int phase_degrees);

} // namespace legwork
