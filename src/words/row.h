// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A row: a phrase that the program says, under its id, with the English words. Between braces stand the names of its
// arguments, in the order in which they are handed over; a translation may set them in another order.
#pragma once

#include <cstddef>
#include <string_view>

namespace legwork {

struct Row {
    std::string_view id; // "directory/off-with"
    std::string_view english;
    std::string_view note = {}; // for translators, where the words alone do not tell what is meant
};

// The next "{name}" of a pattern at or behind `from`: where it begins, and its name. begin is npos when there is none.
struct Blank {
    std::size_t begin = std::string_view::npos, end = 0; // end: behind the closing brace
    std::string_view name;
};
constexpr Blank blank_in(std::string_view pattern, std::size_t from) {
    auto const open = pattern.find('{', from);
    if (open == std::string_view::npos) return {};
    auto const close = pattern.find('}', open);
    if (close == std::string_view::npos) return {};
    return {open, close + 1, pattern.substr(open + 1, close - open - 1)};
}

// Which argument of the pattern this name is, counted from 0 by first appearance; the number of arguments when it has
// no such name.
constexpr std::size_t argument_number(std::string_view pattern, std::string_view name) {
    std::size_t number = 0;
    for (auto at = blank_in(pattern, 0); at.begin != std::string_view::npos; at = blank_in(pattern, at.end)) {
        if (at.name == name) return number;
        bool seen = false; // before this place
        for (auto before = blank_in(pattern, 0); before.begin < at.begin; before = blank_in(pattern, before.end))
            seen = seen || before.name == at.name;
        if (!seen) ++number;
    }
    return number;
}
constexpr std::size_t arguments_of(std::string_view pattern) { return argument_number(pattern, "}"); }

} // namespace legwork
