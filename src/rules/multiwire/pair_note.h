// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Notes that hold for every pair that stands as a pair should: one a panel.
#pragma once

#include "rules/rule.h"

namespace legwork {

// `say` fills in message and fix; `marks`: "K1+K2 and L1+L2".
Verdict note_of_pairs(Case const& c, Rule const& rule, void (*say)(Finding& f, std::string const& marks));

} // namespace legwork
