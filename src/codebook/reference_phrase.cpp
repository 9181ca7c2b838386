// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/reference_phrase.h"
#include "words/say.h"

namespace legwork {

namespace {

// The section as it is given, with what of its numbers is from memory.
Phrase with_memory(Phrase section, Reference const& r) {
    if (r.numbers_told) return section;
    switch (r.numbers) {
    case FromMemory::none: break;
    case FromMemory::the_number: return say("reference/number", std::move(section));
    case FromMemory::all_numbers: return say("reference/numbers", std::move(section));
    case FromMemory::second_number: return say("reference/second-number", std::move(section));
    case FromMemory::two_numbers: return say("reference/two-numbers", std::move(section));
    }
    return section;
}

} // namespace

Phrase section_phrase(Reference const& reference) { return with_memory(as_is(reference.section), reference); }

Phrase reference_phrase(Reference const& reference) {
    if (reference.source == Source::unread) return say("reference/unread", reference.edition);
    if (reference.section.empty()) return say("reference/practice");
    return with_memory(as_is(reference.edition + " " + reference.section), reference);
}

} // namespace legwork
