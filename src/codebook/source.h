// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <string>
#include <string_view>

namespace legwork {

// How a number was come by: its page was seen (the code's text, or two pages that agree), one page of notes states it,
// it is from memory, or it is common practice without a source, from sure to less sure. Unread: nobody has looked what
// this edition says, and no rule judges by it; what is left out is that.
enum class Source { unread, seen, noted, memory, practice };
// Not sure enough for an error: what hangs on it is at most a warning.
constexpr bool only_warns(Source s) { return s == Source::noted || s == Source::memory; }

struct Silent {};
struct Unread {
    constexpr operator Source() const { return Source::unread; }
};

// As the rows of tables say it.
namespace how_read {
inline constexpr auto seen = Source::seen, noted = Source::noted, memory = Source::memory, practice = Source::practice;
inline constexpr Silent silent{}; // the code does not speak of it
inline constexpr Unread unread{}; // nobody has looked
} // namespace how_read

// Which numbers of a section are from memory, whatever its content is.
enum class FromMemory { none, the_number, all_numbers, second_number, two_numbers };
std::string_view words(FromMemory numbers); // "number from memory"; empty for none

struct Reference {
    std::string edition, section;          // "NEC 2023", "210.4(B)"; section empty when no code speaks of it
    Source source = Source::seen;          // of the number or fact that decided, not of the section's number
    FromMemory numbers = FromMemory::none; // of the section
    bool numbers_told = false;             // among the words of `section`, where several are joined
};

// "210.4(B)", "28-108 (number from memory)"; empty when no code speaks of it.
std::string section_words(Reference const& r);
// "NEC 2023 210.4(B)"; "common practice" when no section speaks of it; "NEC 2023 (not read yet)".
std::string text(Reference const& r);
// The number or fact is from memory, and nothing in text() says so of the section.
bool is_silently_from_memory(Reference const& r);
std::string_view name(Source s); // "seen", "noted", "memory", "practice", "unread"

} // namespace legwork
