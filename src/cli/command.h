// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder cli/: commands that ask the other folders and tell what they say. session.h reads a job and puts it
// through to its findings; text.h tells results to people, json.h to programs, problems.h what was not understood.
//
// What a command of the program is: one file each, one row in commands.cpp.
#pragma once

#include <optional>
#include <ostream>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace CLI {
class App;
} // namespace CLI

namespace legwork {

// The exit status, the same for every command.
enum Exit : int {
    exit_done = 0,
    exit_error_finding = 1,  // done, but a finding of severity error stands
    exit_not_understood = 2, // the job or the call
    exit_not_written = 3,    // a file could not be written, or legwork itself failed
};

// Results go to `out`, messages to `err`; only the severity word is ever coloured.
struct Streams {
    std::ostream &out, &err;
    bool color_out = false, color_err = false;
};

// Everything that can be typed after a command; each command reads its own part.
struct Options {
    std::string file; // the job, "-" for standard input; the new file of `new`; the rule of `explain`
    bool json = false;
    // check
    std::string by, least;
    std::vector<std::string> rules;
    bool measure = false, verdicts = false, propose = false; // with propose: write
    // explain
    std::optional<std::string> table, keys; // empty: all of them are listed
    bool schema = false;
    // balance
    bool best = false, write = false;
    std::optional<int> moves;
    std::optional<double> seconds;
    // load
    std::string method, panel, add;
    // print
    std::string out_folder = ".";
    std::vector<std::string> sheets, forms, formats;
};

struct Command {
    std::string_view name, summary;
    void (*add_options)(CLI::App&, Options&); // parses and touches nothing
    // The exit status. Throws Failure for what nobody typed wrong; program.cpp tells of it.
    int (*run)(Options const&, Streams&);
};

extern Command const new_command, check_command, balance_command, print_command, load_command, forms_command,
    explain_command;
std::span<Command const* const> commands();

// Shared options.
void add_job(CLI::App& app, Options& options);
void add_json(CLI::App& app, Options& options);

} // namespace legwork
