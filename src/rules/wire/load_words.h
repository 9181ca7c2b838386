// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit draws, told against its breaker and the smallest wire of its run.
#pragma once

#include "reckon/wire_need.h"
#include "rules/rule.h"

#include <string>

namespace legwork {

bool over_breaker(Sides const& s);
bool over_wire(Case const& c, Sides const& s);
// Both sides are known, so that silence says something.
bool are_known(Sides const& s);

std::string drawn(Case const& c, Sides const& s); // "R1 draws 33.3 A (8000 VA demand of 12000 VA)"
// "Fit a 40 A breaker on 8 AWG": what would do. Never a smaller breaker than today's.
std::string larger(Case const& c, Sides const& s);
// ", or move part of the load to another circuit."; of one appliance, which is not split, "."
std::string or_split(Sides const& s);

} // namespace legwork
