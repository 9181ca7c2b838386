// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The need-* rules, one function each: what must be there. need.cpp has their table.
#pragma once

#include "rules/rule.h"

namespace legwork {

Findings need_kitchen(Case const&);
Findings need_laundry(Case const&);
Findings need_bath(Case const&);
Findings need_garage(Case const&);
Findings need_outdoor(Case const&);

Findings need_kitchen_share(Case const&);
Findings need_dedicated(Case const&);
Findings need_neutral_at_switch(Case const&); // need_switch.cpp

} // namespace legwork
