// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a person has decided to live with, and what nobody may.
#pragma once

#include "job/job.h"
#include "rules/finding.h"

namespace legwork {

// False for faults that burn or shock whoever decides to live with them.
bool may_be_accepted(Finding const& finding);
// The [[accept]] is for this finding, whether or not it holds.
bool covers(Job const& job, Accept const& accept, Finding const& finding);
// Marks what an [[accept]] covers.
void apply_accepts(Job const& job, Findings& findings);

} // namespace legwork
