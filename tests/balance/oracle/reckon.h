// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the judges of the optimizer know of a panel and of loads: reckoned from the job alone, sharing no code with
// src/panel or src/balance, so that a mistake there is not repeated here.
#pragma once

#include "job/job.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace legwork::oracle {

struct Seat {                // one full-size space
    int column = 0, row = 0; // row from 1; column 0 holds space 1
    bool on_a = false;
    bool usable = false; // neither blocked nor dead nor out of every source's reach
};

// seats[s - 1] is space s. Rows are on one leg each, alternating from A, unless the panel says otherwise.
std::vector<Seat> seats(typed::Job const& job, typed::Panel const& panel);
enum class Phase {
    two_legs, // some source has two hots with a voltage between them
    in_phase, // every source reaches both legs, or they do together, with no voltage between: nothing to balance
    one_leg,  // only one leg is ever live: nothing to balance
};
Phase phase(typed::Job const& job, typed::Panel const& panel);
// Two poles of one breaker, or the two halves of a pair, may stand here: next to each other in a column and, where
// there are two legs, on both of them. On a bus with a leg a column a pair faces itself and a breaker has no place.
bool two_pole_site(Phase phase, Seat const& p, Seat const& q);
bool pair_site(typed::Panel const& panel, Phase phase, Seat const& p, Seat const& q);

// Whole VA, "connected" first and then the file's situations; both poles together for two poles. A reading counts
// before a load, 120 V a pole; what is wired but off counts nothing. The share is applied once and the product rounded
// once, halves up.
std::vector<std::int64_t> loads(typed::Job const& job, typed::Circuit const& circuit);
// Keeps what is minimised: the file's situations, or "connected" when there are none.
std::vector<std::int64_t> minimised(std::vector<std::int64_t> const& all);

// What stands below a feeder, by its mark; "connected" first and then the situations. A feeder of two poles brings
// leg A to leg A and leg B to leg B; one of one pole brings all of it to the leg it lands on.
struct Below {
    std::vector<std::int64_t> difference, sum; // A - B, A + B
    friend auto operator<=>(Below const&, Below const&) = default;
};
using FeederLoads = std::map<std::string, Below>;

// The circuit's wires are long enough for the space. Of upright panels with space 1 at the left.
bool reaches(typed::Circuit const& circuit, Seat const& seat, int space);

std::vector<typed::Circuit const*> circuits_on(typed::Job const& job, typed::Panel const& panel);
// Of its pair on the same panel; null for a circuit that is not of a pair there. Where only one leg is live two
// circuits cannot be a pair and stand by themselves.
typed::Circuit const* other_half(typed::Job const& job, typed::Circuit const& circuit);

} // namespace legwork::oracle
