// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The wire-* rules, one function each; wire.cpp has their table.
#pragma once

#include "check/check.h"

namespace legwork {

Findings wire_breaker_fits(Case const& c);
Findings wire_load_fits(Case const& c);
Findings wire_continuous(Case const& c);
Findings wire_conductors(Case const& c);
Findings wire_outlet(Case const& c);

} // namespace legwork
