// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which findings check shows, and in which groups. What is not shown still counts.
#pragma once

#include "cli/session.h"

#include <string>
#include <vector>

namespace legwork {

struct FindingFilter {
    enum class By { gravity, circuit, theme } by = By::gravity;
    std::vector<std::string> rules;  // only these; empty: all
    Severity least = Severity::note; // none milder
    bool is_part() const { return !rules.empty() || least != Severity::note; }
};
bool is_shown(FindingFilter const& shown, Finding const& f);
bool is_shown(FindingFilter const& shown, Rule const& rule); // its verdict

struct FindingGroup {
    std::string heading; // empty: none
    std::vector<Finding const*> findings;
};
// The findings that are shown, each in one group, none of them empty; accepted ones last, in a group of their own. By
// circuit: the job, what is about several cables, then each panel followed by the cables of its circuits (the two
// circuits of a multiwire pair are one cable) in the file's order, then the other cables. By theme: in the order of the
// rules. Within a group worst first.
std::vector<FindingGroup> finding_groups(Session const& s, FindingFilter const& shown);

} // namespace legwork
