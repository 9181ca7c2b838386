// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which hots the receptacles of a circuit stand on.
#pragma once

#include "building/building.h"

#include <algorithm>

namespace legwork {

inline bool has_outlet(Circuit const& c, bool (*wanted)(Receptacle const&)) {
    return std::ranges::any_of(c.outlets, [&](Receptacle const* r) { return wanted(*r); });
}
// Between the two hots only, nothing of it on the neutral.
inline bool is_line_to_line(Receptacle const& r) { return r.hots == 2 && !r.neutral; }
inline bool is_two_hot(Receptacle const& r) { return r.hots == 2; }
inline bool is_one_hot(Receptacle const& r) { return r.hots == 1; }

} // namespace legwork
