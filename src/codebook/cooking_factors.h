// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Demand of household cooking appliances (NEC Table 220.55 and its notes). The columns stand with the NEC's editions.
#pragma once

#include "codebook/code_book.h"

#include <cstdint>
#include <string>
#include <vector>

namespace legwork {

// Appliances up to this (VA) are not in the table.
inline constexpr std::int64_t kCookingFromVa = 1'750;

// Up to so many appliances: so many VA, and more for each of them.
struct CookingSlice {
    int up_to; // 0: however many
    std::int64_t va, each_va;
    Source source;
};
// Columns A and B in percent by number of appliances, the last row for all that are more; column C in VA.
struct CookingTable {
    std::span<Figure const> a, b;
    std::span<CookingSlice const> c;
};

// The table's row for this many appliances, from 1 on.
struct CookingRow {
    Figure a, b, c;
};
CookingRow cooking_row(CookingTable const& table, int appliances);

// One line of the reckoning.
struct CookingStep {
    enum class By {
        percent,   // of_va of column A or B in percent; or of column C, with more for large ones
        table,     // column C as it stands
        nameplate, // of_va in full, outside the table
    };
    By by;
    std::int64_t appliances;
    char column;                  // of the table
    std::int64_t kilowatts_above; // that their average is above 12 kW
    std::int64_t of_va, percent;
    std::int64_t va; // that counts
    Source source;
};

// The least demand that the table and its notes permit for these nameplates (VA), each above kCookingFromVa: all by
// column C, or those of up to 8750 VA by columns A and B and the rest by column C. One above 27 kW counts in full. The
// demand is the sum of the steps; empty for no appliance.
std::vector<CookingStep> cooking_demand(CookingTable const& table, std::vector<std::int64_t> const& nameplates);

} // namespace legwork
