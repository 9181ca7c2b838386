// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace legwork {

inline constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

struct CodePoint {
    std::uint32_t code = 0;
    std::size_t length = 0; // bytes; 0 when the text is empty or begins with no valid UTF-8
};

// The first character of a text, strictly: no overlong form, no surrogate, nothing past U+10FFFF (RFC 3629, section 3).
CodePoint utf8_front(std::string_view text);

// The first byte that is not UTF-8; nothing when all of the text is.
std::optional<std::size_t> first_bad_utf8(std::string_view text);

// C0 and C1 controls, line and paragraph separators, and the direction overrides and isolates that make a text read as
// another one than it is.
constexpr bool is_control(std::uint32_t code) {
    return code < 0x20 || (code >= 0x7F && code < 0xA0) || (code >= 0x2028 && code <= 0x202E) ||
           (code >= 0x2066 && code <= 0x2069);
}

// Fit to print: bytes that are no UTF-8, control characters and direction overrides become U+FFFD, a tab one space.
std::string fit_to_print(std::string_view text);

// Characters of a UTF-8 text (a byte that begins none counts as one).
std::size_t character_count(std::string_view text);

} // namespace legwork
