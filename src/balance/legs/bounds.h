// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What can be said of the least worst |D| without searching, and which situations need no search.
#pragma once

#include "balance/legs/legs.h"

namespace legwork {

// The same problem without situations that constrain nothing: one that is another's multiple or fraction, sign
// included, by at most 1; of those that no decision changes the worst.
LegProblem without_idle_situations(LegProblem problem);

// Holds for every assignment. Per situation: D is fixed modulo twice the greatest common divisor of the d (so an odd
// total leaves at least 1); and one load larger than all others together with the constant cannot be evened out.
std::int64_t quick_lower_bound(LegProblem const& problem);

} // namespace legwork
