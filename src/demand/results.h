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
    std::string item;       // "Amperes"
    std::string arithmetic; // "18600 VA ÷ 240 V = 77.5 A", or words; may be empty
    std::string value;      // "77.5 A"; "not known" where something is missing
    std::optional<Reference> reference;
    bool wanted = false; // one that the form asks for: shown large
};
using LoadResults = std::vector<LoadResult>;

LoadResults load_results(LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size);

// The same of the present service: "carries it", or what is wrong, as one sentence. Empty where its rating or a load
// is not known.
std::string verdict(LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size);

} // namespace legwork
