// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How a rule makes a finding, and what it is about.
#pragma once

#include "reckon/say.h"
#include "rules/check.h"

#include <algorithm>
#include <string>

namespace legwork {

// A finding of this rule with what the code book cites for `topic` (the rule itself when empty).
Finding finding(Case const& c, std::string_view rule, Severity severity, Where where, std::string_view topic = {});

Where about(Circuit const& c, std::string key = {});
// Names a panel only when both circuits are in it.
Where about(Pair const& p, std::string key = {});

// New work that breaks the rule is an error; what was there before is warned about.
constexpr Severity unless_existing(bool existing) { return existing ? Severity::warning : Severity::error; }
// A pair is existing work only when both circuits are.
inline bool existing(Pair const& p) { return p.first->existing && p.second->existing; }
// The tie may be said at one member only.
inline Tie tie_of(Pair const& p) { return std::max(p.first->tie, p.second->tie); }

} // namespace legwork
