// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Demand of household cooking appliances (NEC Table 220.55 and its notes).
#pragma once

#include "codebook/code_book.h"

#include <cstdint>
#include <string>
#include <vector>

namespace legwork {

// Appliances up to this (VA) are not in the table.
inline constexpr std::int64_t kCookingFromVa = 1'750;

// The table's row for this many appliances, from 1 on: columns A and B in percent, C in VA.
struct CookingRow {
    Figure a, b, c;
};
CookingRow cooking_row(int appliances);

// One line of the reckoning.
struct CookingStep {
    std::string item;       // "2 of less than 3500 VA, column A"
    std::string arithmetic; // "5500 VA × 75 %"; empty where there is nothing to reckon
    std::int64_t va = 0;
    Source source = Source::seen;
};

// The least demand that the table and its notes permit for these nameplates (VA), each above kCookingFromVa: all by
// column C, or those of up to 8750 VA by columns A and B and the rest by column C. One above 27 kW counts in full. The
// demand is the sum of the steps; empty for no appliance.
std::vector<CookingStep> cooking_demand(std::vector<std::int64_t> const& nameplates);

} // namespace legwork
