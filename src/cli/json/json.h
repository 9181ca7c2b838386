// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Results for other programs, to `out`. The keys are stable and stand nowhere else; what is not known is null.
#pragma once

#include "cli/files/save_edits.h"
#include "cli/files/sheet_files.h"
#include "cli/session.h"
#include "cli/text/shown.h"
#include "reckon/added_circuit.h"
#include "sheet/form.h"

#include <span>
#include <vector>

namespace legwork {

struct CodeTable;
struct Rule;

void write_problems_json(FileProblems const& found, Streams& streams);
// Counts are of the whole job; where only a part is shown, `filter` says which.
void write_findings_json(Session const& session, FindingFilter const& shown, Streams& streams);
void write_measure_json(Session const& session, Streams& streams);
void write_proposals_json(Building const& building, std::vector<Proposal> const& proposed, Rewrite const& saved,
                          Streams& streams);
void write_load_json(Building const& building, PanelLoad const& load, Streams& streams);
void write_more_json(Building const& building, AddedCircuit const& told, WithMore const& more, Streams& streams);
void write_plan_json(Building const& building, Plan const& plan, Rewrite const& saved, Streams& streams);
// With the findings about what a sheet does not show whole.
void write_files_json(Session const& session, std::vector<WrittenFile> const& files, Streams& streams);
void write_forms_json(std::vector<Form> const& forms, Streams& streams);
void write_table_names_json(Streams& streams);
void write_table_json(CodeTable const& table, Streams& streams);
void write_rule_json(Rule const& rule, Streams& streams);
void write_rules_json(std::span<Rule const* const> rules, Streams& streams);

} // namespace legwork
