// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One call of the program: inside this process, or as the real thing.
#pragma once

#include <chrono>
#include <cstddef>
#include <string>
#include <vector>

struct Called {
    int status = -1; // -1: ended by a signal
    std::string out, err;
};

// Through run_program, no process.
Called call(std::vector<std::string> const& words, bool color = false, std::size_t width = 100);

// The built program. `input` comes on standard input; `out_to`, when given, is opened as standard output; `variables`
// are "NAME=value" lines added to the environment.
Called run_process(std::vector<std::string> const& words, std::string const& input = "", std::string const& out_to = "",
                   std::vector<std::string> const& variables = {});

// The built program, which may write files of so many bytes at most (ulimit -f).
Called run_process_within(unsigned long bytes, std::vector<std::string> const& words);

// The built program, killed after so long unless it was done before; what it prints is thrown away.
void kill_process(std::vector<std::string> const& words, std::chrono::nanoseconds after);

// The built program with standard output on a terminal of so many columns (0: it does not say); `out` holds what the
// terminal got.
Called run_on_terminal(std::vector<std::string> const& words, std::vector<std::string> const& variables = {},
                       unsigned short columns = 0);

// A job of eight spaces that has no error finding; a pair, a two-pole, a plain circuit, none with a space.
std::string small_job();
// The same with a 20 A breaker on 14 AWG: an error finding.
std::string faulty_job();
