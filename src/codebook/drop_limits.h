// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How much voltage a code lets a run lose, and at which load.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

struct DropLimits {
    Figure part_percent;    // of a feeder or of a branch circuit, each by itself
    Figure total_percent;   // from the source to the far end
    Figure unknown_percent; // of the breaker, taken for the load where it is not known
    bool demanded;          // else advised
    // The table of greatest lengths that a dwelling's lighting and general-use circuits may go by instead; empty where
    // there is none. Its lengths are not known here, so nothing is judged by it.
    std::string_view dwelling_lengths;
    Source dwelling_lengths_source = Source::memory; // of that section's number
};

// Sources: NEC informational notes of 210.19 and 215.2 (no load is named there: the CE Code's is taken, common
// practice); CE 8-102(1), (2) as an inspection authority's bulletin and a page of the older text tell them. 8-102(3)
// and its table came in 2015; the table's number is from memory, its lengths were not found.
inline DropLimits const& drop_limits(CodeBook const& book) { return book.drop_limits; }

} // namespace legwork
