// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "units/utf8.h"

#include <algorithm>

namespace legwork {

namespace {
constexpr std::uint32_t byte(char c) { return static_cast<unsigned char>(c); }
} // namespace

CodePoint utf8_front(std::string_view text) {
    if (text.empty()) return {};
    auto const first = byte(text[0]);
    if (first < 0x80) return {first, 1};
    std::size_t const length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || text.size() < length) return {};
    std::uint32_t code = first & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(text[i]) & 0xC0) != 0x80) return {};
        code = code << 6 | (byte(text[i]) & 0x3F);
    }
    bool const overlong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
    if (overlong || code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF)) return {};
    return {code, length};
}

std::optional<std::size_t> first_bad_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        auto const c = utf8_front(text.substr(at));
        if (c.length == 0) return at;
        at += c.length;
    }
    return std::nullopt;
}

std::string fit_to_print(std::string_view text) {
    std::string shown;
    shown.reserve(text.size());
    while (!text.empty()) {
        auto const c = utf8_front(text);
        if (c.length == 0 || (is_control(c.code) && c.code != '\t'))
            shown += "\xEF\xBF\xBD";
        else if (c.code == '\t')
            shown += ' ';
        else
            shown += text.substr(0, c.length);
        text.remove_prefix(std::max<std::size_t>(c.length, 1));
    }
    return shown;
}

std::size_t character_count(std::string_view text) {
    std::size_t count = 0;
    for (; !text.empty(); ++count) text.remove_prefix(std::max<std::size_t>(utf8_front(text).length, 1));
    return count;
}

} // namespace legwork
