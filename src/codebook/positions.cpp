// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/positions.h"

#include <algorithm>

namespace legwork {

PositionsRow const& positions_row(PositionsTable const& table, std::optional<Amps> service) {
    if (!service) return table.rows.front();
    auto const at = std::ranges::find_if(table.rows, [&](PositionsRow const& r) { return *service <= r.up_to; });
    return at == table.rows.end() ? table.rows.back() : *at;
}

} // namespace legwork
