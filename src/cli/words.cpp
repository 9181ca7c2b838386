// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

bool continues_letter(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

// The length of the well-formed UTF-8 letter at the start of `text`; 0 when there is none.
std::size_t letter_size(std::string_view text) {
    auto const lead = static_cast<unsigned char>(text.front());
    std::size_t const size = lead < 0x80U                    ? 1
                             : lead >= 0xF0U && lead < 0xF5U ? 4
                             : lead >= 0xE0U                 ? 3
                             : lead >= 0xC2U                 ? 2
                                                             : 0;
    if (lead >= 0xF5U || size == 0 || text.size() < size) return 0;
    return std::ranges::all_of(text.substr(1, size - 1), continues_letter) ? size : 0;
}

// C0, DEL, C1, and the marks that turn the direction of what follows: a terminal obeys them.
bool commands_a_terminal(std::string_view letter) {
    auto const byte = [&](std::size_t i) { return static_cast<unsigned char>(letter[i]); };
    if (letter.size() == 1) return (byte(0) < 0x20U && byte(0) != '\t') || byte(0) == 0x7FU;
    if (letter.size() == 2) return byte(0) == 0xC2U && byte(1) < 0xA0U;
    if (letter.size() != 3 || byte(0) != 0xE2U) return false;
    return (byte(1) == 0x80U && (byte(2) >= 0xAAU && byte(2) <= 0xAEU)) ||
           (byte(1) == 0x81U && byte(2) >= 0xA6U && byte(2) <= 0xA9U);
}

} // namespace

std::string severity_word(Severity severity, bool color) {
    std::string const word(name(severity));
    if (!color) return word;
    auto const code = severity == Severity::error ? "1;31" : severity == Severity::warning ? "1;33" : "1;36";
    return fmt::format("\x1b[{}m{}\x1b[0m", code, word);
}

std::string shown_file(std::string const& file) { return file == "-" ? "standard input" : printable(file); }

std::string at_place(std::string const& file, Place place) {
    if (place.line == 0) return shown_file(file);
    return fmt::format("{}:{}:{}", shown_file(file), place.line, place.column);
}

std::string joined(std::vector<std::string> const& words, std::string_view between) {
    return fmt::format("{}", fmt::join(words, between));
}

std::string counted(int n, std::string_view one) { return fmt::format("{} {}{}", n, one, n == 1 ? "" : "s"); }

std::string printable(std::string_view text) {
    std::string shown;
    while (!text.empty()) {
        auto const size = letter_size(text);
        if (size == 0 || commands_a_terminal(text.substr(0, size)))
            shown += "\uFFFD";
        else
            shown += text.substr(0, size);
        text.remove_prefix(std::max<std::size_t>(size, 1));
    }
    return shown;
}

std::size_t letters(std::string_view utf8) {
    return utf8.size() - static_cast<std::size_t>(std::ranges::count_if(utf8, continues_letter));
}

std::string fitted(std::string_view utf8, std::size_t width) {
    auto const have = letters(utf8);
    if (have <= width) return std::string(utf8) + std::string(width - have, ' ');
    std::size_t const keep = width > 3 ? width - 3 : 0;
    std::size_t end = 0;
    for (std::size_t n = 0; end < utf8.size(); ++end)
        if (!continues_letter(utf8[end]) && n++ == keep) break;
    return std::string(utf8.substr(0, end)) + std::string(width - keep, '.');
}

std::string wrapped(std::string_view text, std::size_t width, std::size_t indent) {
    std::string lines;
    std::size_t used = 0;
    while (!text.empty()) {
        auto const word = text.substr(0, text.find(' '));
        text.remove_prefix(std::min(text.size(), word.size() + 1));
        auto const size = letters(word);
        if (used > 0 && used + 1 + size > width) {
            lines += '\n' + std::string(indent, ' ');
            used = indent;
        } else if (used > 0) {
            lines += ' ';
            ++used;
        }
        lines += word;
        used += size;
    }
    return lines;
}

} // namespace legwork
