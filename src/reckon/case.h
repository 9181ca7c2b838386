// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Reckoning: what the physics and the tables say of a job, judged by nobody. What a circuit draws, what its wires may
// take and lose, what the legs and feeders carry, what the code's load calculation comes to: asked by the rules, which
// find fault with it, by the proposals, which try sizes until none would, and by the sheets, which print it. A figure
// that two of them need is reckoned here once, so that what is found, what is proposed and what is printed agree.
#pragma once

#include "balance/plan.h"
#include "building/building.h"
#include "codebook/code_book.h"

namespace legwork {

// What is reckoned about. `plan` is the panel as the file has it (as_filed).
struct Case {
    Building const& building;
    Plan const& plan;
    CodeBook const& book;
};

} // namespace legwork
