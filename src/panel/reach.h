// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which spaces a circuit's wires are long enough for.
#pragma once

#include "job/job.h"

#include <vector>

namespace legwork {

// Indexed by space (0 is not used). `reach = "left"` means the left half of the panel as it hangs: one column of an
// upright or upside-down panel; of a turned one the rows of that end (the middle row of an odd number is in both).
std::vector<bool> reachable(typed::Panel const& panel, typed::Circuit const& c);

// "left", "right" or a list is given, and leaves out some space of the panel.
bool is_reach_limited(typed::Panel const& panel, typed::Circuit const& c);

} // namespace legwork
