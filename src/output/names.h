// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Changes of names that lose nothing. For output/ only.
#pragma once

#include <filesystem>
#include <optional>

#include <sys/stat.h>

namespace legwork {

// Zero, or the system's error. Both names stand at any moment, each for one of the two files.
int exchange_names(std::filesystem::path const& one, std::filesystem::path const& other);
// Whether that error says that the system, or this file system, has no exchange. (A sandbox may say "not permitted".)
bool has_no_exchange(int error);

// Zero, EEXIST when something stands at `to` already, or another error; nothing is changed then.
int move_to_free_name(std::filesystem::path const& from, std::filesystem::path const& to);

// Whether there is anything under that name, be it a dangling link. Throws Failure when that cannot be known.
bool stands(std::filesystem::path const& path);
// What is there, links not followed; nothing when nothing is. Throws Failure when that cannot be known.
std::optional<struct stat> looked_at(std::filesystem::path const& path);

} // namespace legwork
