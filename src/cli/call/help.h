// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What can be typed, told by the commands' rows: for the terminal and for the man page.
#pragma once

#include "cli/command.h"

#include <string>

namespace legwork {

std::string program_help(std::size_t width);
std::string command_help(Command const& command, std::size_t width);

// The parts of the man page that come of the rows, in its own language (man(7)).
std::string man_synopsis();
std::string man_commands();

} // namespace legwork
