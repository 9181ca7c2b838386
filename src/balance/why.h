// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Why a panel cannot hold its circuits, in the person's terms, and what to change.
#pragma once

#include "balance/legs.h"
#include "balance/room.h"

#include <string>

namespace legwork {

// For a model that has no layout. `filed`: nobody is moved.
std::string why_no_room(PanelModel const& model, LegProblem const& problem, Room const& room, bool filed);

// There is room, but not within reach of all wires; `proven`: every way was tried.
std::string why_out_of_reach(PanelModel const& model, bool proven);

// A plan exists, but not with so few moves.
std::string why_not_so_few(PanelModel const& model, int asked, int fewest);

} // namespace legwork
