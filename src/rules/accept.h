// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a person has decided to live with, and what nobody may.
#pragma once

#include "building/building.h"
#include "rules/finding.h"

namespace legwork {

// False for faults that burn or shock whoever decides to live with them.
bool may_be_accepted(Finding const& finding);
// The [[accept]] is for this finding, whether or not it holds.
bool covers(Accepted const& accept, Finding const& finding);
// Marks what an [[accept]] of the building covers.
void apply_accepts(Building const& building, Findings& findings);

} // namespace legwork
