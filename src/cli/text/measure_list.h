// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/session.h"
#include "rules/job/measure.h"

#include <string>
#include <vector>

namespace legwork {

// One figure with all that a person at the panel needs to find it.
struct MeasureItem {
    ToMeasure of;
    std::vector<std::string> spaces; // where the file has the circuit; empty when it is not said
    std::string name, room;          // of a circuit or cable
    std::string what, how, with, blank, decides;
};
// By panel in the file's order, then what belongs to none; within it by where the person stands; at the panel by space.
std::vector<MeasureItem> measure_items(Session const& s);

// To be printed as it is and taken along: a box to tick and a blank to fill for each.
void list_to_measure(Session const& s, Streams& streams);

} // namespace legwork
