// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit's cables are and need, before any conductor gets its job.
#include "cable/run.h"

#include <algorithm>

namespace legwork {

bool needs_neutral(Circuit const& c) {
    if (c.poles == 1 || c.third == ThirdWire::neutral || c.fed_panel()) return true;
    if (std::ranges::any_of(c.outlets, &Receptacle::neutral)) return true;
    return c.outlets.empty() && c.use && c.use->uses_neutral_at_240;
}

} // namespace legwork
