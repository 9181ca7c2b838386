// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the shells ask the program that was typed, so that their scripts (completions/) know no option. In no --help.
//
//     legwork __complete zsh WORD... PART       the whole words after the program's name, then the part of one
//     legwork __complete fish WORD... PART
//     legwork __complete bash BREAKS LINE       COMP_WORDBREAKS, and the line up to the cursor as it was typed
//
// The first line of the answer says which files complete the word as well: none, any, jobs or folders. The second: what
// stands before a value in its word ("--by="; of bash: the value as typed so far). Then a candidate a line, in the
// shell's own way: with its help for zsh (`word:help`) and fish (`word<TAB>help`), quoted as the line needs it for
// bash.
#pragma once

#include "cli/command.h"

namespace legwork {

inline constexpr std::string_view kCompleteCommand = "__complete";

// Exits 0, whatever was asked; what cannot be answered has no candidates.
int complete(std::vector<std::string> const& words, Streams& streams);

} // namespace legwork
