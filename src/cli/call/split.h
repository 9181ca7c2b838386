// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// "--rule --min" as two words.
inline std::vector<std::string> split(std::string_view names) {
    std::vector<std::string> all;
    while (!names.empty()) {
        auto const blank = names.find(' ');
        all.emplace_back(names.substr(0, blank));
        names = blank == std::string_view::npos ? "" : names.substr(blank + 1);
    }
    return all;
}

} // namespace legwork
