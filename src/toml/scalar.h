// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Values of TOML that stand without quotes: is this text one, and if not, what would mend it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace legwork {

struct ScalarFault {
    std::string message, fix;
};

// Nothing when `token` is a boolean, an integer within 64 bits, a float, a date or a time of TOML 1.0.
std::optional<ScalarFault> bare_value_fault(std::string_view token);

// "2026-05-02": a date that exists.
bool is_date(std::string_view text);

} // namespace legwork
