// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder cli/: commands that ask the other folders and tell what they say.
//
//     commands/   one file a command: its options, its rows, what it does
//     call/       from what was typed to a command, by those rows: the parser, help, the man page, completions
//     text/       results for people; json/ for programs; problems.h what was not understood
//     files/      forms, fonts, sheets and jobs as files
//     session.h   reads a job and puts it through to its findings
//
// What a command of the program is: one file each, two lines in commands/list.cpp.
#pragma once

#include "cli/call/option.h"

#include <ostream>
#include <span>
#include <string_view>
#include <vector>

namespace legwork {

// The exit status, the same for every command.
enum Exit : int {
    exit_done = 0,
    exit_error_finding = 1,  // done, but a finding of severity error stands
    exit_not_understood = 2, // the job or the call
    exit_not_written = 3,    // a file could not be written, or legwork itself failed
};

// Results go to `out`, messages to `err`; only the severity word is ever coloured. Lines are broken at `width` letters.
struct Streams {
    std::ostream &out, &err;
    bool color_out = false, color_err = false;
    std::size_t width = 100;
};

struct Command {
    std::string_view name, summary;
    std::string_view about;           // for the man page, after the summary: sentences
    std::vector<Option> (*options)(); // what may be typed after the name
    // The exit status. Throws Failure for what nobody typed wrong; program.cpp tells of it.
    int (*run)(Given const&, Streams&);
    std::string_view note = ""; // below the options in --help
};

std::span<Command const* const> commands();
Command const* command_named(std::string_view name); // null when there is none

} // namespace legwork
