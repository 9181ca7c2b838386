// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Options that several commands have, and what completes values of one kind.
#pragma once

#include "cli/call/option.h"

namespace legwork {

Candidates job_files(Given const&);
Candidates new_files(Given const&);
Candidates folders(Given const&);
Candidates commands_by_name(Given const&);
Candidates rules_by_name(Given const&);         // those that can be explained
Candidates checked_rules_by_name(Given const&); // those that can find something
Candidates tables_by_name(Given const&);
Candidates key_tables_by_name(Given const&);
Candidates forms_by_name(Given const&); // and files
Candidates panels_of_job(Given const&); // of the job that is typed

inline constexpr Option job_row{
    .name = "JOB", .help = "the job file; - reads standard input", .completes = job_files, .required = true};
inline constexpr Option json_row{.name = "--json", .help = "results as JSON, for programs"};

} // namespace legwork
