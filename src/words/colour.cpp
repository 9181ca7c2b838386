// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "words/colour.h"

#include "words/say.h"

#include <fmt/format.h>

namespace legwork {

namespace {

// Of two colours with something between them; nothing when it is not there.
Phrase two_colours(RowFor<2> row, std::string_view name, std::string_view between) {
    auto const at = name.find(between);
    if (at == std::string_view::npos) return {};
    return {row.number, {colour(name.substr(0, at)), colour(name.substr(at + between.size()))}};
}

} // namespace

Phrase colour(std::string_view name) {
    if (auto const row = row_number(fmt::format("colour/{}", name)); row < kRows.size()) return {row, {}};
    if (name.ends_with(" stripe"))
        if (auto both = two_colours("colours/striped", name.substr(0, name.rfind(' ')), " with "); !both.empty())
            return both;
    if (auto both = two_colours("colours/with", name, " with "); !both.empty()) return both;
    if (auto both = two_colours("colours/two", name, "/"); !both.empty()) return both;
    return as_is(name);
}

} // namespace legwork
