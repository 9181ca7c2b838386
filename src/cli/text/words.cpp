// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/words.h"

#include "toml/problem.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

// The first blank that is not within a pair of backticks: a command is pasted in one piece.
std::size_t end_of_word(std::string_view text) {
    auto blank = text.find(' ');
    auto open = text.find('`');
    while (open < blank) {
        auto const close = text.find('`', open + 1);
        if (close == std::string_view::npos) break;
        if (blank < close) blank = text.find(' ', close);
        open = text.find('`', close + 1);
    }
    return blank;
}

bool continues_letter(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

} // namespace

std::string severity_word(Severity severity, bool color) {
    std::string word(name(severity));
    if (!color) return word;
    auto const code = severity == Severity::error ? "1;31" : severity == Severity::warning ? "1;33" : "1;36";
    return fmt::format("\x1b[{}m{}\x1b[0m", code, word);
}

std::string shown_file(std::string const& file) { return file == "-" ? "standard input" : fit_to_print(file); }

std::string at_place(std::string const& file, Place place) {
    if (place.line == 0) return shown_file(file);
    return fmt::format("{}:{}:{}", shown_file(file), place.line, place.column);
}

std::string reference_words(Reference const& r) {
    if (r.source != Source::memory || r.section.empty()) return text(r);
    return fmt::format("{} {} ({})", r.edition, r.section, memory_words(r));
}

std::string joined(std::vector<std::string> const& words, std::string_view between) {
    return fmt::format("{}", fmt::join(words, between));
}

std::string counted(int n, std::string_view one) { return fmt::format("{} {}{}", n, one, n == 1 ? "" : "s"); }

std::string fitted(std::string_view utf8, std::size_t width) {
    auto const have = character_count(utf8);
    if (have <= width) return std::string(utf8) + std::string(width - have, ' ');
    std::size_t const keep = width > 3 ? width - 3 : 0;
    std::size_t end = 0;
    for (std::size_t n = 0; end < utf8.size(); ++end)
        if (!continues_letter(utf8[end]) && n++ == keep) break;
    return std::string(utf8.substr(0, end)) + std::string(width - keep, '.');
}

std::string fitted_line(std::string_view utf8, std::size_t width) {
    return character_count(utf8) <= width ? std::string(utf8) : fitted(utf8, width);
}

std::string in_lines(std::string_view text, std::size_t width, std::size_t indent, std::size_t used) {
    std::string lines;
    bool first = true; // on its line
    while (!text.empty()) {
        auto const word = text.substr(0, end_of_word(text));
        text.remove_prefix(std::min(text.size(), word.size() + 1));
        auto const size = character_count(word);
        if (!first && used + 1 + size > width) {
            lines += '\n' + std::string(indent, ' ');
            used = indent;
        } else if (!first) {
            lines += ' ';
            ++used;
        }
        lines += word;
        used += size;
        first = false;
    }
    return lines;
}

Place place_of(Places const& places, Where const& where) {
    if (where.accept >= 0) return places.find(Subject::accept, std::to_string(where.accept), where.key);
    if (!where.circuits.empty()) { // a mark is of a circuit or of another cable
        auto const place = places.find(Subject::circuit, where.circuits.front(), where.key);
        return place.line > 0 ? place : places.find(Subject::cable, where.circuits.front(), where.key);
    }
    if (!where.panel.empty()) return places.find(Subject::panel, where.panel, where.key);
    return places.find(Subject::job, "", where.key);
}

} // namespace legwork
