// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/circuit_table.h"

#include <algorithm>

namespace legwork {

std::string_view text_under(TomlTable const& table, std::string_view key) {
    auto const* said = find(table, key);
    auto const* text = said ? std::get_if<std::string>(&said->is) : nullptr;
    return text ? std::string_view(*text) : std::string_view();
}

TomlValue* circuit_value(TomlTable& root, std::string_view mark) {
    auto const list = std::ranges::find(root, "circuit", &TomlEntry::key);
    auto* const array = list == root.end() ? nullptr : std::get_if<TomlArray>(&list->value.is);
    if (!array) return nullptr;
    for (TomlValue& one : *array) {
        auto const* const table = std::get_if<TomlTable>(&one.is);
        auto const* said = table ? find(*table, "mark") : nullptr;
        auto const* text = said ? std::get_if<std::string>(&said->is) : nullptr;
        if (text && *text == mark) return &one;
    }
    return nullptr;
}

} // namespace legwork
