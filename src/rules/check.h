// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder rules/: what is wrong with a job, and what was looked at. A rule (rule.h) takes a Case, looks at each
// thing that it is about and comes to a Verdict, with its findings; reckon/ gives it the figures and the code book the
// limits, so that it holds nothing but the judgement. One folder a theme, one file a rule.
//
// Every rule, run over one job: first those about the job, then those about what is printed of it, then those about
// what the others found.
#pragma once

#include "rules/accept.h"
#include "rules/directory/printed.h"
#include "rules/themes.h"

#include <vector>

namespace legwork {

// All rules, theme by theme.
std::span<Rule const* const> rules();
Rule const* rule_named(std::string_view id); // null when there is none

// What one rule finds out of the job by itself; "nothing" of a rule that judges what is printed or found.
Verdict judged(Rule const& rule, Case const& c);

struct Outcome {
    Rule const* rule;
    Verdict verdict;
};
struct Judgement {
    Findings findings;             // worst first, then in the file's order; accepted ones are marked
    std::vector<Outcome> outcomes; // of every rule that is checked, in the order of rules()
};
// `printed`: how the job's words stand on the sheets, which lie beyond the rules; rules about that have nothing to look
// at without it. Never throws.
Judgement check(Building const& building, Plan const& plan, CodeBook const& book, Printed const& printed = {});
// The same judgement with other sheets: what was found of those is taken out, what is found of `printed` put in.
Judgement with_sheets(Judgement judgement, Building const& building, Plan const& plan, CodeBook const& book,
                      Printed const& printed);
// It is about how the job's words stand on a sheet.
bool is_of_sheets(Finding const& finding);

// Worst first, then in the file's order, stable; accepted ones after the rest.
void sort_findings(Building const& building, Findings& findings);
int count(Findings const& findings, Severity severity); // accepted ones are not counted
// New work still lacks a breaker or a cable, and nobody has accepted that.
bool lacks_sizes(Findings const& findings);

} // namespace legwork
