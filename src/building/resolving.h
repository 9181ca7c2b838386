// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A building in the making, table by table. Only resolve() and its parts include this.
#pragma once

#include "building/building.h"
#include "job/job.h"

namespace legwork {

struct Resolving {
    typed::Job const& job;
    Building& building; // its lists have their final length, so that things may already point at each other

    Circuit* circuit(std::string_view mark); // null when there is none
    Panel* panel(std::string_view name);
};

void resolve_panels(Resolving& r);   // what they are, what feeds them
void resolve_circuits(Resolving& r); // after the panels
void resolve_pairs(Resolving& r);    // and what a pair says once for both
void resolve_runs(Resolving& r);     // after the pairs
void resolve_dwelling(Resolving& r);

} // namespace legwork
