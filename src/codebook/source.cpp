// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/source.h"

namespace legwork {

std::string_view words(FromMemory numbers) {
    switch (numbers) {
    case FromMemory::none: break;
    case FromMemory::the_number: return "number from memory";
    case FromMemory::all_numbers: return "numbers from memory";
    case FromMemory::second_number: return "second number from memory";
    case FromMemory::two_numbers: return "two numbers from memory";
    }
    return {};
}

std::string section_words(Reference const& r) {
    if (r.numbers == FromMemory::none || r.numbers_told) return r.section;
    return r.section + " (" + std::string(words(r.numbers)) + ")";
}

bool is_silently_from_memory(Reference const& r) { return r.source == Source::memory && r.numbers == FromMemory::none; }

std::string text(Reference const& r) {
    if (r.source == Source::unread) return r.edition + " (not read yet)";
    if (r.section.empty()) return "common practice";
    return r.edition + " " + section_words(r);
}

std::string_view name(Source s) {
    switch (s) {
    case Source::seen: return "seen";
    case Source::noted: return "noted";
    case Source::memory: return "memory";
    case Source::unread: return "unread";
    case Source::practice: break;
    }
    return "practice";
}

} // namespace legwork
