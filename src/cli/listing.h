// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/session.h"
#include "cli/shown.h"

namespace legwork {

// For people, to `out`: place, severity, message, rule; then what to do and the reference; then the counts of the whole
// job, how much of it was shown, and the caution.
void list_findings(Session const& session, Shown const& shown, Streams& streams);

// Of those findings, as above, the standing ones about what a sheet does not show whole.
void list_of_sheets(Session const& session, Streams& streams);

// "2 errors, 1 warning, 3 notes, 1 accepted"
std::string counts(Findings const& findings);

} // namespace legwork
