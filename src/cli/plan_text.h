// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A panel's plan for people to read in a terminal.
#pragma once

#include "balance/plan.h"
#include "cli/command.h"

namespace legwork {

// The spaces as they face each other, the legs of each situation as bars, what moves would buy, the proof, and the
// moves.
void print_panel_plan(Building const& building, PanelPlan const& plan, Streams& streams);

} // namespace legwork
