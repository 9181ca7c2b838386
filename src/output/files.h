// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What happens to finished bytes.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace legwork {

// Writes beside and renames, so that the old or the new file stands whole at any moment; parents are made. Throws
// Failure with the path and the system's reason.
void write_file(std::string const& path, std::string_view bytes);

// The whole file, "-" for standard input; nothing when it cannot be read (`why` then says so). Reads no more than
// `limit` + 1 bytes.
std::optional<std::string> read_file(std::string const& path, std::size_t limit, std::string& why);

// "Main" -> "Main", "Sub panel, north" -> "Sub-panel-north": letters, digits and "-" only; empty -> "panel".
std::string file_stem(std::string_view panel_name);

} // namespace legwork
