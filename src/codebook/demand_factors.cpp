// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/demand_factors.h"

#include <algorithm>

namespace legwork {

Figure dryer_percent(DryerTable const& table, int dryers) {
    auto const n = std::clamp(dryers, 1, table.last);
    auto const rows = static_cast<int>(table.rows.size());
    if (n <= rows) return table.rows[static_cast<std::size_t>(n - 1)];
    return {table.rows.back().value - (n - rows), table.beyond_rows};
}

} // namespace legwork
