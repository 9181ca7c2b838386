// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cable_places.h"

#include <algorithm>

namespace legwork {

CablePlaceRow const* cable_place_row(CodeBook const& book, CableType type) {
    auto const& rows = book.cable_places.rows;
    auto const at = std::ranges::find(rows, type, &CablePlaceRow::type);
    return at == rows.end() ? nullptr : &*at;
}

MayRun may_run(CablePlaceRow const& row, WirePlace where) {
    switch (where) {
    case WirePlace::damp: return row.damp;
    case WirePlace::wet: return row.wet;
    case WirePlace::outdoors: return row.outdoors;
    case WirePlace::buried: return row.buried;
    case WirePlace::dry:
    case WirePlace::unsaid: break;
    }
    return MayRun::yes;
}

} // namespace legwork
