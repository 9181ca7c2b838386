// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/scan.h"
#include "units/utf8.h"

#include <fmt/format.h>

namespace legwork {

std::optional<TomlFault> byte_fault(std::string_view bytes, TomlLimits const& limits) {
    if (bytes.size() > limits.bytes)
        return TomlFault{0, fmt::format("the file has {} bytes, {} at most", bytes.size(), limits.bytes),
                         "a job file is a few kilobytes; is this the right one?"};
    if (bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF"))
        return TomlFault{0, "the file is written in UTF-16", "save it as UTF-8"};
    if (auto const bad = first_bad_utf8(bytes))
        return TomlFault{*bad, "this byte is no UTF-8", "save the file as UTF-8, or type the character again"};
    for (std::size_t at = 0; at < bytes.size(); ++at) {
        auto const c = static_cast<unsigned char>(bytes[at]);
        if ((c >= 0x20 && c != 0x7F) || c == '\t' || c == '\n') continue;
        if (c == '\r' && at + 1 < bytes.size() && bytes[at + 1] == '\n') continue;
        return TomlFault{at, fmt::format("a control character (number {}) stands here", c), "take it away"};
    }
    return std::nullopt;
}

} // namespace legwork
