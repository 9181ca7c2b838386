// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where the circuits of a panel stand.
#pragma once

#include "panel/feeds.h"
#include "panel/layout.h"
#include "rules/rule.h"

#include <string>
#include <vector>

namespace legwork {

std::vector<Spot> slots_of(Case const& c, std::string_view mark); // none without a place
bool all_live(std::vector<Feed> const& sources, Layout const& layout, std::vector<Spot> const& slots);

} // namespace legwork
