// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How findings speak: the same words for the same things in every rule.
#pragma once

#include "check/check.h"

#include <algorithm>
#include <string>
#include <vector>

namespace legwork {

// A finding of this rule with what the code book cites for `topic` (the rule itself when empty).
Finding finding(Case const& c, std::string_view rule, Severity severity, Where where, std::string_view topic = {});

Where about(typed::Circuit const& c, std::string key = {});
// Names a panel only when both circuits are in it.
Where about(typed::Pair const& p, std::string key = {});

// New work that breaks the rule is an error; what was there before is warned about.
constexpr Severity unless_existing(bool existing) { return existing ? Severity::warning : Severity::error; }
// A pair is existing work only when both circuits are.
inline bool existing(typed::Pair const& p) { return p.first->existing && p.second->existing; }
// The tie may be said at one member only.
inline Tie tie_of(typed::Pair const& p) { return std::max(p.first->tie, p.second->tie); }

// Ends it with a full stop when it has no end yet.
std::string as_sentence(std::string words);
std::string amps(double a);                                  // "30 A", "15.8 A"
std::string listed(std::vector<std::string> const& words);   // "K1", "K1 and K2", "K1, K2 and K3"
std::string both(typed::Pair const& p);                             // "K1 and K2"
std::string plural(std::size_t n, std::string_view one);     // "1 move", "3 moves"
std::string in_situation(std::string_view name);             // "with everything on", "in \"Winter evening\""
std::string spaces_of(Case const& c, std::string_view mark); // "space 7", "spaces 7 and 9"; empty without a place

} // namespace legwork
