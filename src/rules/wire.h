// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The wire-* rules, one function each; wire.cpp has their table.
#pragma once

#include "rules/rule.h"

namespace legwork {

Findings wire_breaker_fits(Case const& c);
Findings wire_load_fits(Case const& c);
Findings wire_continuous(Case const& c);
Findings wire_conductors(Case const& c);
Findings wire_outlet(Case const& c);
Findings wire_breaker_size(Case const& c);
Findings wire_drop(Case const& c);
Findings wire_smaller_downstream(Case const& c);
Findings wire_outlet_count(Case const& c);

} // namespace legwork
