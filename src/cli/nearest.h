// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// "did you mean \"check\"?" when one of the names is near enough to be a slip of the fingers.
std::optional<std::string> did_you_mean(std::string_view typed, std::vector<std::string> const& names);

} // namespace legwork
