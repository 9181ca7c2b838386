// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What becomes of a rule where nobody has read what the edition asks.
#pragma once

#include "rules/rule.h"

#include <functional>

namespace legwork {

// The verdict that `judge` comes to, as far as the rule's topics (topics.h) were read in the edition. Where its own was
// not, it is not run; where only some of its aspects were not, what it finds by those is left out. Either way one note
// says what is not checked: never an error, and never nothing.
Verdict as_far_as_read(Rule const& rule, Case const& c, std::function<Verdict()> const& judge);

} // namespace legwork
