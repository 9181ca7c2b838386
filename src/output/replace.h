// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Changes a file that a person wrote, without ever being able to lose a word of it.
#pragma once

#include <string>
#include <string_view>

namespace legwork {

struct Replaced {
    bool done = false; // false: the file no longer holds `old_bytes` (somebody saved it meanwhile); nothing was changed
    std::string file;  // the file itself, links followed
    std::string before; // where the old bytes stand now
};

// Puts `new_bytes` in the place of `old_bytes`. The old file stays beside it: "shed.toml" as "shed.before.toml", the
// one before that moves on to "shed.before-2.toml", and so on; none is ever dropped. At any moment, a kill or a power
// cut included, the file holds the old or the new bytes whole. Owner and mode are kept. Throws Failure with the
// system's reason.
Replaced replace_file(std::string const& path, std::string_view old_bytes, std::string_view new_bytes);

} // namespace legwork
