// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork check JOB: every finding, worst first.

#include "check/check.h"

#include "cli/command.h"
#include "cli/json.h"
#include "cli/listing.h"
#include "cli/session.h"

#include <CLI/CLI.hpp>

namespace legwork {

namespace {

void add_options(CLI::App& app, Options& options) {
    add_job(app, options);
    add_json(app, options);
}

int run(Options const& options, Streams& streams) {
    auto const opened = open_job(options.file);
    if (!opened.session) return tell_problems(opened.problems, options.json, streams), exit_not_understood;
    if (options.json)
        write_findings_json(*opened.session, streams);
    else
        list_findings(*opened.session, streams);
    return error_exit(*opened.session);
}

} // namespace

Command const check_command{"check", "every finding, worst first", add_options, run};

} // namespace legwork
