// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/session.h"
#include "cli/shown.h"

namespace legwork {

// For people, to `out`: what each rule came to, a line each, in the order of explain; those that are shown. Then how
// many came to what, what is not checked at all, and the caution.
void list_verdicts(Session const& session, FindingFilter const& shown, Streams& streams);

} // namespace legwork
