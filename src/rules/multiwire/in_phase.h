// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Supplies whose two legs rise and fall together.
#pragma once

#include "panel/feeds.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace legwork {

// The source under which both hots of a pair would be in phase, if there is one.
inline std::optional<Feed> in_phase_feed(std::vector<Feed> const& sources) {
    auto const at = std::ranges::find_if(
        sources, [](Feed const& f) { return phase_degrees(f.kind) == 0 && reaches(f, Leg::a) && reaches(f, Leg::b); });
    return at == sources.end() ? std::nullopt : std::optional(*at);
}

} // namespace legwork
