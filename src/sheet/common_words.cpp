// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/common_words.h"

#include <fmt/format.h>

namespace legwork {

namespace {

// Of two colours with something between them; nothing when it is not there.
Phrase two_colours(RowFor<2> row, std::string_view name, std::string_view between) {
    auto const at = name.find(between);
    if (at == name.npos) return {};
    return {row.number, {colour(name.substr(0, at)), colour(name.substr(at + between.size()))}};
}

} // namespace

Phrase colour(std::string_view name) {
    // A colour is a row of its own; "striped" and the like are rows of two colours, and a name that a person may type.
    auto const row = row_number(fmt::format("colour/{}", name));
    if (row < kRows.size() && arguments_of(kRows[row].english) == 0) return {row, {}};
    if (name.ends_with(" stripe"))
        if (auto both = two_colours("colour/striped", name.substr(0, name.rfind(' ')), " with "); !both.empty())
            return both;
    if (auto both = two_colours("colour/with", name, " with "); !both.empty()) return both;
    if (auto both = two_colours("colour/two", name, "/"); !both.empty()) return both;
    return as_is(name);
}

} // namespace legwork
