// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/write_sizes.h"

#include "job/circuit_table.h"
#include "units/text.h"

#include <algorithm>

namespace legwork {

namespace {
bool has(TomlTable const& table, std::string_view key) { return find(table, key) != nullptr; }

// The other one of a pair, as the file has it; null when there is none.
TomlTable const* partner_of(TomlTable const& root, TomlTable const& table) {
    auto const group = text_under(table, "multiwire");
    auto const* list = find(root, "circuit");
    auto const* array = list ? std::get_if<TomlArray>(&list->is) : nullptr;
    if (group.empty() || !array) return nullptr;
    for (TomlValue const& one : *array) {
        auto const* other = std::get_if<TomlTable>(&one.is);
        if (other && other != &table && text_under(*other, "multiwire") == group) return other;
    }
    return nullptr;
}

// How much reason there is to write a pair's cable here.
int claim(TomlTable const& table) {
    return has(table, "segments") || has(table, "cable") ? 2 : has(table, "length") ? 1 : 0;
}

bool left_to_partner(TomlTable const& root, TomlTable const& table) {
    TomlTable const* p = partner_of(root, table);
    if (!p || claim(table) == 2) return false;
    return claim(*p) > claim(table) || (claim(*p) == claim(table) && p < &table);
}

std::string in_quotes(std::string const& words) { return '"' + words + '"'; }
} // namespace

std::vector<Edit> edits_for(std::string_view bytes, std::vector<SizesToWrite> const& sizes) {
    SourceText const source(bytes);
    Complaints out(source);
    auto root = parse_toml(bytes, out);
    std::vector<Edit> edits;
    for (SizesToWrite const& s : sizes) {
        auto const* value = root ? circuit_value(*root, s.mark) : nullptr;
        auto const* table = value ? std::get_if<TomlTable>(&value->is) : nullptr;
        if (!table) continue;
        if (s.breaker) edits.push_back({s.mark, has(*table, "fuse") ? "fuse" : "breaker", in_quotes(text(*s.breaker))});
        bool const pieces = has(*table, "segments");
        for (std::size_t i = 0; i < s.cables.size(); ++i) {
            if (s.cables[i].empty() || (i == 0 && left_to_partner(*root, *table))) continue;
            if (pieces)
                edits.push_back({s.mark, "kind", in_quotes(s.cables[i]), i});
            else if (i == 0)
                edits.push_back({s.mark, "cable", in_quotes(s.cables[i])});
        }
    }
    return edits;
}

} // namespace legwork
