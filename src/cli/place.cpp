// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/place.h"

namespace legwork {

Place place_of(Places const& places, Where const& where) {
    if (where.accept >= 0) return places.find(Thing::accept, std::to_string(where.accept), where.key);
    if (!where.circuits.empty()) { // a mark is of a circuit or of another cable
        auto const place = places.find(Thing::circuit, where.circuits.front(), where.key);
        return place.line > 0 ? place : places.find(Thing::cable, where.circuits.front(), where.key);
    }
    if (!where.panel.empty()) return places.find(Thing::panel, where.panel, where.key);
    return places.find(Thing::job, "", where.key);
}

} // namespace legwork
