// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <string_view>

namespace legwork {

// What a rule's id begins with, in plain words: "mw-..." is "Multiwire pairs". Every id has a theme; one that is none
// of ours falls under "Other".
std::string_view theme_of(std::string_view rule);

} // namespace legwork
