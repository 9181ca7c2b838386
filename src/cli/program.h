// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/command.h"

namespace legwork {

// One call of the program, without a process: `words` are what stands after its name. Never throws.
int run_program(std::vector<std::string> words, Streams& streams);

} // namespace legwork
