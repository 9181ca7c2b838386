// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <string>
#include <string_view>

// A file of the sources by its path from their top, "examples/boathouse.toml"; the top itself of an empty one. The path
// of the sources is compiled into one file only, so that the others are the same wherever the sources stand.
std::string in_sources(std::string_view path);
