// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How many outlets a branch circuit whose load is not known may have.
#pragma once

#include "codebook/code_book.h"

#include <algorithm>

namespace legwork {

struct OutletCount {
    Amps breaker; // up to this rating
    int most;     // a duplex receptacle, a light: one outlet each; a triplex one and a half, a quadruplex two
    Source source;
};
struct OutletCounts {
    std::span<OutletCount const> rows; // by rising rating
};

// The row of this breaker; null where the code sets no number for it, or it was not read.
inline OutletCount const* outlet_count(CodeBook const& book, Amps breaker) {
    OutletCounts const* counts = book.outlet_count.get();
    if (!counts) return nullptr;
    auto const at = std::ranges::find_if(counts->rows, [&](OutletCount const& row) { return breaker <= row.breaker; });
    return at == counts->rows.end() ? nullptr : &*at;
}

} // namespace legwork
