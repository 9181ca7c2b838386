// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// A line of bash up to the cursor, taken apart into words without their quotes.
struct BashLine {
    std::vector<std::string> words; // those that are whole
    std::string part;               // the one at the cursor
    // The line editor replaces only the end of it: what stands behind the last of its break letters, or an open quote.
    std::size_t kept = 0; // bytes of `part` that stay
    char quote = '\0';    // the open one; 0 for none
};
BashLine read_bash_line(std::string_view breaks, std::string_view line);

// The end of a word as it has to be typed to stand for itself.
std::string bash_quoted(std::string_view end, char quote);

} // namespace legwork
