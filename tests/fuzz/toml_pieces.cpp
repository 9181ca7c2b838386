// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "fuzz/toml_pieces.h"

#include <algorithm>

namespace fuzz {

namespace {

constexpr std::string_view kBlanks = " \t";

std::string name_of_header(std::string_view line) {
    auto const begin = std::min(line.find_first_not_of(" \t["), line.size());
    auto const end = std::min(line.find_first_of("]\r\n", begin), line.size());
    return std::string(line.substr(begin, end - begin));
}

bool is_header(std::string_view line) {
    auto const first = line.find_first_not_of(kBlanks);
    return first != std::string_view::npos && line[first] == '[' && line.find('=') == std::string_view::npos;
}

// Where the value that begins here ends: before a comment and the blanks in front of it.
std::size_t end_of_value(std::string_view line, std::size_t at) {
    char quote = 0;
    std::size_t end = at;
    for (; at < line.size(); ++at) {
        char const c = line[at];
        if (quote == 0 && (c == '#' || c == '\n' || c == '\r')) break;
        if (quote == 0 && (c == '"' || c == '\''))
            quote = c;
        else if (c == quote)
            quote = 0;
        if (kBlanks.find(c) == std::string_view::npos) end = at + 1;
    }
    return end;
}

std::string without_quotes(std::string const& value) {
    return value.size() >= 2 && value.front() == '"' ? value.substr(1, value.size() - 2) : value;
}

} // namespace

TomlPieces taken_apart(std::string_view text) {
    TomlPieces pieces(1);
    while (!text.empty()) {
        auto const size = std::min(text.size() - 1, text.find('\n')) + 1;
        auto const line = text.substr(0, size);
        if (is_header(line)) pieces.push_back({name_of_header(line), {}});
        pieces.back().lines.emplace_back(line);
        text.remove_prefix(size);
    }
    return pieces;
}

std::string put_together(TomlPieces const& pieces) {
    std::string text;
    for (TomlPiece const& p : pieces)
        for (auto const& line : p.lines) text += line;
    return text;
}

std::string KeyLine::name() const {
    auto const begin = key.find_first_not_of(kBlanks);
    return begin == std::string::npos ? "" : key.substr(begin, key.find_last_not_of(kBlanks) + 1 - begin);
}

std::optional<KeyLine> key_line(std::string_view line) {
    auto const equals = line.find('=');
    auto const first = line.find_first_not_of(kBlanks);
    if (equals == std::string_view::npos || first >= equals || line[first] == '#' || line[first] == '[')
        return std::nullopt;
    auto const begin = std::min(line.find_first_not_of(kBlanks, equals + 1), line.size());
    auto const end = end_of_value(line, begin);
    return KeyLine{std::string(line.substr(0, equals)), std::string(line.substr(equals, begin - equals)),
                   std::string(line.substr(begin, end - begin)), std::string(line.substr(end))};
}

NamesThere names_in(TomlPieces const& pieces) {
    NamesThere there;
    for (TomlPiece const& p : pieces)
        for (auto const& line : p.lines) {
            auto const is = key_line(line);
            if (!is) continue;
            auto const name = is->name();
            if (p.name == "circuit" && name == "mark") there.marks.push_back(without_quotes(is->value));
            if (p.name == "panel" && name == "name") there.panels.push_back(without_quotes(is->value));
            if (p.name == "supply" && name == "name") there.supplies.push_back(without_quotes(is->value));
        }
    return there;
}

} // namespace fuzz
