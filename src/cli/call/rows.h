// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A command's rows: each option with the field of the command's own options that it is put into.
//
//     struct ForOptions { std::string job; bool json = false; };
//     constexpr OptionRow<ForOptions> kOptions[] = {{job_row, &ForOptions::job}, {json_row, &ForOptions::json}};
//     int run(ForOptions const& options, Streams& streams);
//     extern Command const for_command{"for", "what it does", "", options_of<kOptions>, run_with<kOptions, run>};
#pragma once

#include "cli/command.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace legwork {

template <class O>
struct OptionRow {
    Option option;
    std::variant<bool O::*, std::string O::*, std::optional<std::string> O::*, Words O::*, std::optional<int> O::*,
                 std::optional<double> O::*>
        into;
};

constexpr Kind kind_of(std::size_t field) {
    constexpr Kind kinds[] = {Kind::flag, Kind::word, Kind::word_or_none, Kind::words, Kind::whole, Kind::number};
    return kinds[field];
}

inline void put(Words const&, bool& field) { field = true; }
inline void put(Words const& values, std::string& field) { field = values.front(); }
inline void put(Words const& values, std::optional<std::string>& field) {
    field = values.empty() ? "" : values.front();
}
inline void put(Words const& values, Words& field) { field = values; }
// The parser has seen that these are numbers.
inline void put(Words const& values, std::optional<int>& field) { field = std::stoi(values.front()); }
inline void put(Words const& values, std::optional<double>& field) { field = std::stod(values.front()); }

template <auto const& rows>
std::vector<Option> options_of() {
    std::vector<Option> all;
    for (auto const& row : rows) {
        all.push_back(row.option);
        all.back().kind = kind_of(row.into.index());
    }
    return all;
}

template <class O, std::size_t n>
O read_options(OptionRow<O> const (&rows)[n], Given const& given) {
    O options;
    for (OptionRow<O> const& row : rows)
        if (Words const* values = given.of(row.option.name))
            std::visit([&](auto field) { put(*values, options.*field); }, row.into);
    return options;
}

template <auto const& rows, auto run>
int run_with(Given const& given, Streams& streams) {
    return run(read_options(rows, given), streams);
}

} // namespace legwork
