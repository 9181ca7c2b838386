// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/panel/places.h"

#include <algorithm>

namespace legwork {

std::vector<Spot> slots_of(Case const& c, std::string_view mark) {
    Placement const* p = placement_of(c.plan, mark);
    return p ? p->slots : std::vector<Spot>{};
}

bool all_live(Panel const& panel, std::vector<Spot> const& slots) {
    return std::ranges::all_of(slots, [&](Spot s) { return panel.is_live(s.space); });
}

} // namespace legwork
