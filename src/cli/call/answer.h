// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/command.h"

#include <string>

namespace legwork {

// What may stand at the cursor.
struct Answer {
    std::string before; // of the word, what is no part of a value: "--by="
    Candidates candidates;
};

// `whole`: the words after the program's name; `part`: what is typed of the next, of which only its beginning counts (a
// dash, an option before "="). Throws what the completers throw.
Answer answer(Words const& whole, std::string const& part);

} // namespace legwork
