// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/guess_baths.h"

#include <algorithm>
#include <string>

namespace legwork {

bool serves_several_baths(std::string_view name, std::string_view room) {
    constexpr std::string_view plurals[] = {"baths", "bathrooms", "washrooms", "both"};
    std::string words = std::string(name) + " " + std::string(room);
    std::ranges::transform(words, words.begin(), [](char ch) { return ch >= 'A' && ch <= 'Z' ? char(ch | ' ') : ch; });
    return std::ranges::any_of(plurals, [&](std::string_view p) { return words.find(p) != std::string::npos; });
}

} // namespace legwork
