// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where the circuits of a panel stand.
#pragma once

#include "rules/rule.h"

#include <string_view>
#include <vector>

namespace legwork {

std::vector<Spot> slots_of(Case const& c, std::string_view mark);  // none without a place
bool all_live(Panel const& panel, std::vector<Spot> const& slots); // whatever source reaches them

} // namespace legwork
