// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A TOML file as a person sees it: tables, and lines in them. It goes by the looks of lines, so that broken files can
// be taken apart too; put together again it is the same text.
#pragma once

#include "fuzz/known_keys.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace fuzz {

struct TomlPiece {
    std::string name;               // "circuit"; empty: before the first header
    std::vector<std::string> lines; // with their line ends; the header first where there is one
};

using TomlPieces = std::vector<TomlPiece>;

TomlPieces taken_apart(std::string_view text);
std::string put_together(TomlPieces const& pieces);

// `mark = "K1"`, in parts that make the line again: "mark ", "= ", `"K1"`, "\n". Comments belong to the end.
struct KeyLine {
    std::string key, equals, value, end;
    std::string name() const; // the key without blanks
    std::string line() const { return key + equals + value + end; }
};
std::optional<KeyLine> key_line(std::string_view line); // nothing for other lines

NamesThere names_in(TomlPieces const& pieces);

} // namespace fuzz
