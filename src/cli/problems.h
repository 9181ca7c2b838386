// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Tells what was not understood (exit 2) and what failed (exit 3): in words to stderr, or as JSON to stdout.
#pragma once

#include "cli/command.h"
#include "job/read.h"

namespace legwork {

struct FileProblems {
    std::string file; // as typed; empty when it is about the call
    std::vector<Problem> problems;
};

// One mistake that has no place in a file.
FileProblems one_problem(std::string file, std::string message, std::string fix);

void tell_problems(FileProblems const& found, bool json, Streams& streams);
void tell_failure(std::string const& why, bool json, Streams& streams);

} // namespace legwork
