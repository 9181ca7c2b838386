// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/command.h"

#include <string>
#include <vector>

namespace legwork {

// What a call asks for; or, when `why` is not empty, what is wrong with it and the way out.
struct Understood {
    Command const* command = nullptr; // null: help or the version of the whole program
    Given given;
    bool help = false, version = false;
    std::string why, fix;
};

// `words`: what stands after the program's name. By the commands' rows; nothing is read or opened.
Understood understand(std::vector<std::string> words);

inline constexpr Option kHelpOption{.name = "--help", .help = "this text"};
inline constexpr Option kVersionOption{.name = "--version", .help = "the version, and nothing else"};
// The letter that stands for it too: "-h"; empty for none.
std::string_view short_name(Option const& option);

} // namespace legwork
