// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Small pieces of what the commands print.
#pragma once

#include "job/places.h"
#include "rules/finding.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

std::string severity_word(Severity severity, bool color);   // "error"
Place place_of(Places const& places, Where const& where);   // where in the file a finding points
std::string at_place(std::string const& file, Place place); // "shed.toml:31:1", "shed.toml" when the place is not known
std::string shown_file(std::string const& file);            // "-" is "standard input"
std::string reference_words(Reference const& reference);    // "NEC 2023 210.4(B)", and when it is from memory, that
std::string joined(std::vector<std::string> const& words, std::string_view between = ", ");
std::string counted(int n, std::string_view one); // "1 error", "2 errors"
// Cut to so many letters with "..." at its end, or filled up with blanks.
std::string fitted(std::string_view utf8, std::size_t width);
std::string fitted_line(std::string_view utf8, std::size_t width); // the same, never filled up
// Broken at blanks, but never within a `command`, into lines of at most `width` letters, of which `used` stand on the
// first line already; every other line starts with `indent` blanks.
std::string in_lines(std::string_view text, std::size_t width, std::size_t indent, std::size_t used = 0);

} // namespace legwork
