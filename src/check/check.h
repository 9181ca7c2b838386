// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every rule, run over one job.
#pragma once

#include "balance/plan.h"
#include "check/finding.h"
#include "codebook/code_book.h"
#include "job/job.h"

#include <span>

namespace legwork {

// What a rule looks at. `plan` is the panel as the file has it (as_filed).
struct Case {
    typed::Job const& job;
    Plan const& plan;
    CodeBook const& book;
};

struct Rule {
    std::string_view id;
    std::string_view asks;         // one sentence: what it asks
    std::string_view why;          // why it matters
    std::string_view remedy;       // its usual remedy
    Findings (*find)(Case const&); // null: found elsewhere (by the sheets)
    bool checked = true;           // false: only explained; legwork does not judge it yet
};

// All rules, theme by theme.
std::span<Rule const> rules();
Rule const* rule_named(std::string_view id); // null when there is none

// Every finding, worst first, then in the file's order; accepted ones are marked, and an [[accept]] that covers nothing
// is a finding too. `elsewhere`: what the sheets found. Never throws.
Findings check(typed::Job const& job, Plan const& plan, CodeBook const& book, Findings elsewhere = {});

// False for faults that burn or shock whoever decides to live with them.
bool may_be_accepted(Finding const& finding);
// Whether a person may accept findings of a rule; what to know about it in a sentence, empty for most.
struct Acceptance {
    enum class Of { all, some, none } of = Of::all;
    std::string_view why;
};
Acceptance acceptance(std::string_view rule);
// Marks what an [[accept]] covers.
void apply_accepts(typed::Job const& job, Findings& findings);
// Worst first, then in the file's order, stable; accepted ones after the rest.
void sort_findings(typed::Job const& job, Findings& findings);
int count(Findings const& findings, Severity severity); // accepted ones are not counted

} // namespace legwork
