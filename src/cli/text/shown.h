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
    bool only_new = false;           // not what names circuits that were there before and no other
    bool is_part() const { return !rules.empty() || least != Severity::note || only_new; }
};
bool is_shown(Session const& s, FindingFilter const& shown, Finding const& f);
bool is_shown(FindingFilter const& shown, Rule const& rule); // its verdict

// It names circuits, and all of them were there before: work that this job leaves alone.
bool is_untouched(Building const& building, Finding const& f);

struct FindingGroup {
    std::string heading; // empty: none
    std::vector<Finding const*> findings;
    enum class Told {
        in_full,
        closely,  // the section behind what to do, a blank line after errors alone
        in_short, // a line a panel and kind
    } told = Told::in_full;
};
// The findings that are shown, each in one group, none of them empty; accepted ones last, in a group of their own. By
// circuit: the job, what is about several cables, then each panel followed by the cables of its circuits (the two
// circuits of a multiwire pair are one cable) in the file's order, then the other cables. By theme: in the order of the
// rules. Within a group worst first.
//
// By gravity: errors first, then what else is about new circuits, then the rest, each worst first. In a job that adds
// circuits to those that were there before, what is no error and about untouched work alone is a group in short, and
// the rest is told closely, unless certain rules were asked for.
std::vector<FindingGroup> finding_groups(Session const& s, FindingFilter const& shown);

// Findings that are told in one: of a panel and kind, or the same of several circuits.
using Alike = std::vector<Finding const*>;
std::vector<Alike> by_panel_and_kind(std::vector<Finding const*> const& findings);
// What reads the same but for the mark of the one circuit that it is about, in the order of the first of each.
std::vector<Alike> alike_but_for_the_circuit(std::vector<Finding const*> const& findings);

} // namespace legwork
