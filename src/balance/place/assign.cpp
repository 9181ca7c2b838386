// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/place/assign.h"

#include <limits>

namespace legwork {

std::optional<std::vector<int>> cheapest_assignment(std::vector<std::vector<std::int64_t>> const& cost) {
    std::size_t const rows = cost.size(), columns = rows ? cost[0].size() : 0;
    if (rows > columns) return {};
    // Row and column 0 stand for "none"; row_of[c] is the row that has column c.
    std::vector<std::int64_t> row_price(rows + 1, 0), column_price(columns + 1, 0);
    std::vector<std::size_t> row_of(columns + 1, 0);
    for (std::size_t row = 1; row <= rows; ++row) {
        std::vector<std::int64_t> slack(columns + 1, std::numeric_limits<std::int64_t>::max());
        std::vector<std::size_t> before(columns + 1, 0);
        std::vector<bool> seen(columns + 1, false);
        std::size_t column = 0;
        row_of[0] = row;
        // Adds columns in the order of their slack until one is free; then each on the way hands its column on.
        do {
            seen[column] = true;
            auto const r = row_of[column];
            auto least = std::numeric_limits<std::int64_t>::max();
            std::size_t next = 0;
            for (std::size_t c = 1; c <= columns; ++c) {
                if (seen[c]) continue;
                auto const reduced = cost[r - 1][c - 1] - row_price[r] - column_price[c];
                if (reduced < slack[c]) slack[c] = reduced, before[c] = column;
                if (slack[c] < least) least = slack[c], next = c;
            }
            for (std::size_t c = 0; c <= columns; ++c) {
                if (seen[c])
                    row_price[row_of[c]] += least, column_price[c] -= least;
                else
                    slack[c] -= least;
            }
            column = next;
        } while (row_of[column] != 0);
        for (; column != 0; column = before[column]) row_of[column] = row_of[before[column]];
    }
    std::vector<int> found(rows, -1);
    for (std::size_t c = 1; c <= columns; ++c)
        if (row_of[c]) found[row_of[c] - 1] = static_cast<int>(c) - 1;
    for (std::size_t r = 0; r < rows; ++r)
        if (found[r] < 0 || cost[r][static_cast<std::size_t>(found[r])] >= kForbidden) return {};
    return found;
}

} // namespace legwork
