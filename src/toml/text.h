// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The one door to TOML: bytes in, a plain tree with places out. Total: no bytes crash it, hang it or make it throw.
//
//     bytes --scan.h--> TOML of a bearable size --text.h--> tree with places --table_reader.h--> fields, key by key
//
// What is wrong on the way is a Problem (problem.h). Nothing here knows of jobs: forms are read by the same folder.
#pragma once

#include "toml/problem.h"
#include "toml/scan.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace legwork {

struct TomlEntry;
struct TomlValue;
using TomlArray = std::vector<TomlValue>;
using TomlTable = std::vector<TomlEntry>; // in the order of the file

struct TomlDate {
    int year = 0, month = 0, day = 0; // of the calendar
};
struct TomlTime {}; // a time, or a date with one: no file of ours has any

struct TomlValue {
    std::variant<bool, std::int64_t, double, std::string, TomlDate, TomlTime, TomlArray, TomlTable> is;
    // Bytes of the value's own text; of a table with a header the header, of one that a dotted key makes the key.
    std::size_t begin = 0, end = 0;
};

struct TomlEntry {
    std::string key;
    std::size_t at = 0; // byte where the key begins; of a header the "["
    TomlValue value;
};

// Null when the table has no such key.
TomlValue const* find(TomlTable const& table, std::string_view key);

// The whole text as a table. Nothing after the first mistake of syntax or of size, which is added to `out`.
// CRLF, a byte order mark and a missing final newline are fine.
std::optional<TomlTable> parse_toml(std::string_view bytes, Complaints& out, TomlLimits const& limits = {});

} // namespace legwork
