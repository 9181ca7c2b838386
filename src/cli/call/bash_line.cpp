// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/call/bash_line.h"

namespace legwork {

namespace {

bool has(std::string_view letters, char c) { return letters.find(c) != std::string_view::npos; }

bool needs_none(char c) {
    bool const letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    return letter || static_cast<unsigned char>(c) >= 0x80U || has("_./:=,+@%^-", c);
}

} // namespace

BashLine read_bash_line(std::string_view breaks, std::string_view line) {
    BashLine read;
    bool begun = false; // "" is a word too
    for (std::size_t i = 0; i < line.size(); ++i) {
        char const c = line[i];
        if (c == read.quote || (read.quote == '\0' && (c == '"' || c == '\''))) {
            read.quote = read.quote == '\0' ? c : '\0';
            read.kept = read.part.size();
            begun = true;
        } else if (c == '\\' && i + 1 < line.size() &&
                   (read.quote == '\0' || (read.quote == '"' && has("\\\"$`", line[i + 1])))) {
            read.part += line[++i];
        } else if (read.quote == '\0' && has(" \t\n", c)) {
            if (begun || !read.part.empty()) read.words.push_back(read.part);
            read.part.clear();
            read.kept = 0;
            begun = false;
        } else {
            read.part += c;
            if (read.quote == '\0' && has(breaks, c)) read.kept = read.part.size();
        }
    }
    return read;
}

std::string bash_quoted(std::string_view end, char quote) {
    std::string typed;
    for (char const c : end) {
        if (quote == '\'' && c == '\'') {
            typed += "'\\''";
            continue;
        }
        if (quote == '"' ? has("\\\"$`", c) : quote == '\0' && !needs_none(c)) typed += '\\';
        typed += c;
    }
    return typed;
}

} // namespace legwork
