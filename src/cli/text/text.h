// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Results for people, to `out`: what json.h says to programs. Each kind of result is a file, findings_text.cpp and so
// on.
#pragma once

#include "cli/files/save_edits.h"
#include "cli/session.h"
#include "cli/text/shown.h"
#include "reckon/added_circuit.h"

#include <string>
#include <vector>

namespace legwork {

struct CodeTable;

// Of each finding place, severity, message and rule, then what to do and the reference; then the counts of the whole
// job, how much of it was shown, and the caution.
void list_findings(Session const& session, FindingFilter const& shown, Streams& streams);

// Of those findings, as above, the standing ones about what a sheet does not show whole.
void list_of_sheets(Session const& session, Streams& streams);

// "2 errors, 1 warning, 3 notes, 1 accepted"
std::string counts(Findings const& findings);

// What each rule came to, a line each, in the order of explain; those that are shown. Then how many came to what, what
// is not checked at all, and the caution.
void list_verdicts(Session const& session, FindingFilter const& shown, Streams& streams);

// Each circuit with the sizes proposed, the reckoning line by line with its section, and what is to be found out; then
// what was written.
void list_proposals(Session const& session, std::vector<Proposal> const& proposed, Rewrite const& saved,
                    Streams& streams);

// A panel's plan: the spaces as they face each other, the legs of each situation as bars, what moves would buy, the
// proof, and the moves.
void print_panel_plan(Building const& building, PanelPlan const& plan, Streams& streams);

// A load calculation.
void tell_load(Session const& session, PanelLoad const& load, Streams& streams);
// "Can I add this?": the answer first, then the calculation of the panel that decides.
void tell_more(Session const& session, AddedCircuit const& told, WithMore const& more, Streams& streams);

// A code table: its parts under the editions that they hold for, each row with how it was come by.
void print_table(CodeTable const& table, Streams& streams);
// The names and titles of all tables.
void list_tables(Streams& streams);

} // namespace legwork
