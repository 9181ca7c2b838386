// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A command that a message proposes can be pasted into a shell as it stands, whatever the file or the panel is called.
#pragma once

#include <string>
#include <string_view>

namespace legwork {

// One word for a POSIX shell, fit to print: as it is where that is safe, else in quotes: "my job.toml", 'a$b', and
// $'a\012b' where it has letters that cannot be shown.
std::string shell_word(std::string_view word);
std::string shell_name(std::string_view name); // a name, which looks better in quotes even where it needs none
// A file as an argument: one that looks like an option gets "./" before it; "-" is standard input and stays.
std::string shell_file(std::string_view file);

} // namespace legwork
