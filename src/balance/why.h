// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Why a panel cannot hold its circuits, in the person's terms, and what to change.
#pragma once

#include "balance/model/model.h"

#include <string>

namespace legwork {

// For a model that has no layout, or none that was found (not `proven`): reach is named only where there would be room
// without it. `filed`: nobody is moved.
std::string why_no_room(PanelModel const& model, bool filed, bool proven);

// A plan exists, but not with so few moves.
std::string why_not_so_few(PanelModel const& model, int asked, int fewest);

} // namespace legwork
