// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/circuit_place.h"

#include <algorithm>

namespace legwork {

Outlets outlets_of(Building const& building, Circuit const& circuit) {
    Outlets o;
    o.use = circuit.use;
    o.places = circuit.places;
    o.types = circuit.outlets;
    o.poles = circuit.poles;
    o.breaker = circuit.breaker;
    o.in_dwelling = building.dwelling.has_value();
    o.counter_elsewhere = std::ranges::any_of(building.circuits, [&](Circuit const& other) {
        return other.number != circuit.number && other.use && other.use->demand == Demand::small_appliance;
    });
    return o;
}

} // namespace legwork
