// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "rules/check.h"

namespace legwork {

// What each [[accept]] that covers none of these findings, not even in vain, has to be told. `all` has every finding.
Findings unused_accepts(Case const& c, Findings const& all);

} // namespace legwork
