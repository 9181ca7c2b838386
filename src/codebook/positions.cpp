// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/positions.h"

#include <algorithm>

namespace legwork {

namespace {
// CE 8-108, read in the text of 2015; taken to stand in 2018, 2021 and 2024. Of the apartments of a building fewer are
// asked: this is the table of a single dwelling.
constexpr std::array kCeRows{
    PositionsRow{60_A, 16, 16},
    PositionsRow{100_A, 24, 24},
    PositionsRow{125_A, 30, 24},
    PositionsRow{200_A, 40, 30},
};
constexpr PositionsTable kCe{.rows = kCeRows, .left_free = 2, .source = Source::seen};
} // namespace

PositionsTable const* dwelling_positions(CodeBook const& book) { return book.family == Family::ce ? &kCe : nullptr; }

PositionsRow const& positions_row(PositionsTable const& table, std::optional<Amps> service) {
    if (!service) return table.rows.front();
    auto const at = std::ranges::find_if(table.rows, [&](PositionsRow const& r) { return *service <= r.up_to; });
    return at == table.rows.end() ? table.rows.back() : *at;
}

} // namespace legwork
