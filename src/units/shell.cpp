// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "units/shell.h"

#include "units/utf8.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

bool is_plain(char c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
           std::string_view("_-+./,:@%").find(c) != std::string_view::npos || static_cast<unsigned char>(c) >= 0x80;
}

std::string in_quotes(std::string_view word) {
    if (word.find_first_of("$`\"\\!") == std::string_view::npos) return fmt::format("\"{}\"", word);
    std::string quoted = "'";
    for (char const c : word) quoted += c == '\'' ? "'\\''" : std::string(1, c);
    return quoted + "'";
}

// Every byte that is not plain ASCII as its octal number.
std::string in_numbers(std::string_view word) {
    std::string quoted = "$'";
    for (char const c : word)
        if (c >= ' ' && c <= '~' && c != '\'' && c != '\\')
            quoted += c;
        else
            quoted += fmt::format("\\{:03o}", static_cast<unsigned char>(c));
    return quoted + "'";
}

} // namespace

std::string shell_name(std::string_view name) {
    return fit_to_print(name) == name ? in_quotes(name) : in_numbers(name);
}

std::string shell_word(std::string_view word) {
    bool const as_it_is = !word.empty() && std::ranges::all_of(word, is_plain) && fit_to_print(word) == word;
    return as_it_is ? std::string(word) : shell_name(word);
}

std::string shell_file(std::string_view file) {
    bool const is_like_an_option = file.size() > 1 && file.front() == '-';
    return shell_word((is_like_an_option ? "./" : "") + std::string(file));
}

} // namespace legwork
