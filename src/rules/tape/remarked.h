// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Conductors whose colour does not say their job. What each does and which tape it needs is worked out in cable/run.h;
// here one finding is made for each cable of a circuit or pair.
#pragma once

#include "cable/run.h"
#include "rules/rule.h"

#include <string>
#include <vector>

namespace legwork {

struct Remarked {
    CableRun const* run;
    Conductor const* wire;
};
// The first conductor to speak of in each circuit's or pair's cables; what is forbidden before what is taped. A cable
// that lacks a conductor is to be replaced, not taped.
std::vector<Remarked> remarked(std::vector<CableRun> const& runs, bool (*wanted)(Conductor const&));

// The pieces of cable on alternating current whose conductors are known and have a job each; of them those that hold
// one of the wanted kind.
int pieces_with(std::vector<CableRun> const& runs, bool (*wanted)(Conductor const&));

bool is_neutral(Conductor const& w);
bool is_ground_color(Conductor const& w);
bool is_any(Conductor const& w);

std::string kind_of(CableRun const& run); // "12/3", "14/2 from B2"
// A finding about it, with what the code says of the re-marking.
Finding about_wire(Case const& c, Rule const& rule, Gravity::Of of, Remarked const& r);
std::string wrap(Conductor const& wire); // "Wrap red tape all round the white wire ..."

} // namespace legwork
