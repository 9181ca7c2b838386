// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <string>
#include <string_view>

namespace legwork {

// How a number was come by: its page was seen, it is from memory, or it is common practice without a source.
enum class Source { seen, memory, practice };

struct Reference {
    std::string edition, section; // "NEC 2023", "210.4(B)"; section empty when no code speaks of it
    Source source = Source::seen; // of the number or fact that decided, not of the section's number
};

std::string text(Reference const& r); // "NEC 2023 210.4(B)"; "common practice" when no section speaks of it
std::string_view name(Source s);      // "seen", "memory", "practice"

} // namespace legwork
