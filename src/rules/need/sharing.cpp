// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/sharing.h"

#include "rules/need/named_things.h"

#include <algorithm>

namespace legwork {

bool is_among(std::span<std::string_view const> uses, std::string_view use) {
    return std::ranges::find(uses, use) != uses.end();
}

void say_if_existing(Finding& f, Circuit const& c) {
    if (c.existing) f.message += " (asked of new work; this was there before)";
}

bool is_counter_circuit(HomeCircuit const& h, CounterCircuit const& counter) {
    if (h.circuit->poles != 1) return false;
    if (is_named(h, "kitchen counter")) return true;
    return counter.wall_receptacles_count && h.receptacles && h.places.any_of(places_of(Household::kitchen)) &&
           std::ranges::any_of(h.things, &Use::receptacle);
}

std::vector<std::string> strangers_at_counter(HomeCircuit const& h, CounterCircuit const& counter) {
    std::vector<std::string> strangers;
    if (!is_counter_circuit(h, counter)) return strangers;
    for (Use const* use : h.things)
        if (!use->receptacle && !is_among(counter.with_uses, use->name)) strangers.push_back(thing_name(*use));
    RoomPlaces allowed = counter.with_places;
    allowed.add({RoomPlace::house, RoomPlace::sink});
    auto const beside = places_beside(h.circuit->name, places_of(Household::kitchen));
    for (auto const& place : names_of(beside, allowed)) strangers.push_back("the " + place);
    return strangers;
}

} // namespace legwork
