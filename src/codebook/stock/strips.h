// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Cables of lighting strips. With three conductors or more one is the plus of all colours, and each of the others is
// the way back of its own: a channel, whatever house wiring makes of its colour (common practice, no source).
#pragma once

#include "codebook/stock/cables.h"

namespace legwork {

bool is_strip_cable(CableKind const& kind); // of two conductors too

} // namespace legwork
