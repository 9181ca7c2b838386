// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What comes out of a calculation, in the order in which a permit form asks for it: one line an answer, as the
// terminal and the sheet both show it.
#pragma once

#include "demand/service_size.h"

#include <string>
#include <vector>

namespace legwork {

struct LoadResult {
    Phrase item;       // "Amperes"
    Phrase arithmetic; // "18600 VA ÷ 240 V = 77.5 A", or words; may be empty
    Phrase value;      // "77.5 A"; "not known" where something is missing
    std::optional<Reference> reference{};
    bool wanted = false;   // one that the form asks for: shown large
    bool known = true;     // the value is one
    bool in_words = false; // the arithmetic: nothing of it is to be keyed in
};
using LoadResults = std::vector<LoadResult>;

LoadResults load_results(LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size);

// The same of the present service: "carries it", or what is wrong, as one sentence. Empty where its rating or a load
// is not known.
Phrase verdict(LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size);

} // namespace legwork
