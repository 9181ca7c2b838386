// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/circuit_place.h"

#include <algorithm>

namespace legwork {

RoomPlaces places_of(Job const& job, Circuit const& circuit) {
    Panel const* panel = panel_of(job, circuit.panel);
    auto const& building = circuit.building.empty() && panel ? panel->building : circuit.building;
    return places_of(use_named(circuit.use), circuit.name, circuit.room, building);
}

Outlets outlets_of(Job const& job, Circuit const& circuit) {
    Outlets o;
    o.use = use_named(circuit.use);
    o.places = places_of(job, circuit);
    for (std::string const& type : circuit.outlets)
        if (Receptacle const* r = receptacle_named(type)) o.types.push_back(r);
    o.poles = circuit.poles;
    o.breaker = circuit.breaker;
    o.in_dwelling = job.dwelling.has_value();
    o.counter_elsewhere = std::ranges::any_of(job.circuits, [&](Circuit const& other) {
        return other.mark != circuit.mark && other.use == "kitchen counter";
    });
    return o;
}

} // namespace legwork
