// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/lines.h"

#include <fmt/format.h>

namespace legwork {

bool has_name(Circuit const& c) { return c.name.find_first_not_of(" \t\r\n") != std::string::npos; }

std::string quoted(Circuit const& c) {
    return c.room.empty() ? fmt::format("\"{}\"", c.name) : fmt::format("\"{}\", {}", c.name, c.room);
}

} // namespace legwork
