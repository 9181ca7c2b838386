// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "toml/scan.h"

namespace legwork {

// What is wrong with the bytes before they are looked at as TOML. Nothing when they are UTF-8 text of a bearable size.
std::optional<TomlFault> byte_fault(std::string_view bytes, TomlLimits const& limits);

} // namespace legwork
