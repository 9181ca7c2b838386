// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/source.h"

namespace legwork {

std::string text(Reference const& r) {
    if (r.source == Source::unread) return r.edition + " (not read yet)";
    if (r.section.empty()) return "common practice";
    return r.edition + " " + r.section;
}

std::string_view name(Source s) {
    switch (s) {
    case Source::seen: return "seen";
    case Source::memory: return "memory";
    case Source::unread: return "unread";
    case Source::practice: break;
    }
    return "practice";
}

} // namespace legwork
