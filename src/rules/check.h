// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every rule, run over one job.
#pragma once

#include "rules/rule.h"

#include <span>

namespace legwork {

// All rules, theme by theme.
std::span<Rule const* const> rules();
Rule const* rule_named(std::string_view id); // null when there is none
// What one of them finds out.
Verdict judged(Rule const& rule, Case const& c);

// Every finding, worst first, then in the file's order; accepted ones are marked, and an [[accept]] that covers nothing
// is a finding too. `elsewhere`: what the sheets found. Never throws.
Findings check(Job const& job, Plan const& plan, CodeBook const& book, Findings elsewhere = {});

// False for faults that burn or shock whoever decides to live with them.
bool may_be_accepted(Finding const& finding);
// Marks what an [[accept]] covers.
void apply_accepts(Job const& job, Findings& findings);
// Worst first, then in the file's order, stable; accepted ones after the rest.
void sort_findings(Job const& job, Findings& findings);
int count(Findings const& findings, Severity severity); // accepted ones are not counted

} // namespace legwork
