// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "toml/text.h"

#include <string_view>

namespace legwork {

// The table of the circuit with this mark in a job's tree; null when there is none.
TomlValue* circuit_value(TomlTable& root, std::string_view mark);
// The text under a key; empty when there is none.
std::string_view text_under(TomlTable const& table, std::string_view key);

} // namespace legwork
