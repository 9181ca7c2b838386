// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/command.h"

#include <CLI/CLI.hpp>

#include <array>

namespace legwork {

namespace {
constexpr std::array kCommands{&new_command,  &check_command, &balance_command, &print_command,
                               &load_command, &forms_command, &explain_command};
} // namespace

std::span<Command const* const> commands() { return kCommands; }

void add_job(CLI::App& app, Options& options) {
    app.add_option("JOB", options.file, "the job file; - reads standard input")->required();
}

void add_json(CLI::App& app, Options& options) {
    app.add_flag("--json", options.json, "results as JSON, for programs");
}

} // namespace legwork
