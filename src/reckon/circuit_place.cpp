// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/circuit_place.h"

#include <algorithm>

namespace legwork {

Outlets outlets_of(Building const& building, Circuit const& circuit) {
    Outlets o;
    o.use = circuit.use;
    o.places = circuit.places;
    o.joined = joined_places(circuit.name, circuit.room);
    o.indoors = (o.use && always_indoors(*o.use)) || told_indoors(circuit.name, circuit.room);
    o.types = circuit.outlets;
    o.poles = circuit.poles;
    o.breaker = circuit.breaker;
    o.in_dwelling = building.dwelling.has_value();
    o.counter_elsewhere = std::ranges::any_of(building.circuits, [&](Circuit const& other) {
        return other.number != circuit.number && other.use && other.use->demand == Demand::small_appliance;
    });
    return o;
}

std::vector<Outlets> outlets_by_thing(Building const& building, Circuit const& circuit,
                                      std::vector<Use const*> const& things) {
    Outlets const own = outlets_of(building, circuit);
    std::vector<Outlets> all{own};
    for (Use const* thing : things) {
        // "Lights, cafe and counter" are lights there.
        bool const only_lit = circuit.use && circuit.use->lighting && thing->demand == Demand::small_appliance;
        if (thing == circuit.use || (only_lit && !names_receptacles(circuit.name))) continue;
        all.push_back(own);
        all.back().use = thing;
        all.back().places = places_of(thing, circuit.name, circuit.room, circuit.stands_in());
        if (!thing->receptacle) all.back().types.clear();
    }
    return all;
}

} // namespace legwork
