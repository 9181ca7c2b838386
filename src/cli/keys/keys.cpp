// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/keys/keys.h"

#include "job/keys/keys.h"
#include "sheet/form_keys.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

// The row whose value is this table; null for the file itself and for a form.
Key const* row_of(KeyTable const& table) {
    for (KeyTable const* outer : with_inner(kJobFileKeys))
        for (Key const& key : outer->keys)
            if (key.table == &table) return &key;
    return nullptr;
}

} // namespace

std::vector<KeyTable const*> key_tables() {
    auto tables = with_inner(kJobFileKeys);
    tables.erase(tables.begin()); // the file itself
    tables.push_back(&kFormTable);
    return tables;
}

KeyTable const* key_table(std::string_view name) {
    auto const tables = key_tables();
    auto const found = std::ranges::find(tables, name, &KeyTable::name);
    return found == tables.end() ? nullptr : *found;
}

std::vector<std::string> key_table_names() {
    std::vector<std::string> names;
    for (KeyTable const* table : key_tables()) names.emplace_back(table->name);
    return names;
}

std::string table_header(KeyTable const& table) {
    auto const* row = row_of(table);
    if (!row) return "a form file";
    bool const several = row->takes == Takes::tables;
    if (table.name.find('.') == std::string_view::npos)
        return several ? fmt::format("[[{}]]", table.name) : fmt::format("[{}]", table.name);
    return fmt::format("{} = {}", row->name, several ? "[{ ... }]" : "{ ... }");
}

std::string takes_in_words(Key const& key) {
    auto words = kind_in_words(key);
    if (may_be_asked(key.takes)) words += ", or \"?\" while it is not known";
    if (auto const list = listed_by(key.takes); !list.empty()) words += fmt::format(" (listed by {})", list);
    if (key.needed) words += "; needed";
    if (!key.otherwise.empty()) words += fmt::format("; when not said: {}", key.otherwise);
    return words;
}

} // namespace legwork
