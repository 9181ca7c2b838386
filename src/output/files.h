// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What happens to finished bytes.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace legwork {

// Writes beside and renames, so that the old or the new file stands whole at any moment; parents are made, a link is
// followed, the mode of a file that is replaced is kept. Only ever replaces a regular file. Throws Failure with the
// path and the system's reason, and leaves nothing half written then.
void write_file(std::string const& path, std::string_view bytes);

// As write_file, but never over something that is there already: false then, and nothing is touched.
bool write_new_file(std::string const& path, std::string_view bytes);

// The whole file, "-" for standard input; nothing when it cannot be read (`why` then says so). Reads no more than
// `limit` + 1 bytes, so that one byte too many tells a file over the limit.
std::optional<std::string> read_file(std::string const& path, std::size_t limit, std::string& why);

// Everything, to an open descriptor (standard output). Throws Failure with `name` and the system's reason.
void write_all(int descriptor, std::string_view bytes, std::string const& name);

// "Main" -> "Main", "Sub panel, north" -> "Sub-panel-north", "Été" -> "Ete": letters, digits and "-" only, accents of
// Latin letters dropped; nothing left -> "panel".
std::string file_stem(std::string_view panel_name);

} // namespace legwork
