// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "job/job.h"

#include <optional>
#include <vector>

namespace legwork {

// The space one row down the column, where a two-pole breaker has its second pole; nothing past the end.
std::optional<int> space_below(typed::Panel const& panel, int space);

// The full or half spaces that a circuit standing at `at` fills: of a two-pole breaker two, of a quad's outer pair
// "7a" 7a and 9b, of its inner pair "7b" 7b and 9a. Empty when it does not fit on the panel.
std::vector<Spot> filled_spots(typed::Panel const& panel, Spot at, int poles);

} // namespace legwork
