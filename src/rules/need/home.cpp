// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/home.h"

#include "rules/need/named_things.h"

#include <algorithm>

namespace legwork {

namespace {
bool feeds_nothing_here(Circuit const& c) {
    return c.fed_panel() || c.on_dc() || c.is_source() || c.is(PanelPart::feeder) || c.is_spare() ||
           (c.use && c.use->demand == Demand::none);
}

bool feeds_receptacles(Circuit const& c, std::vector<Use const*> const& things, RoomPlaces places) {
    if (!c.use && things.empty()) return true;
    if (std::ranges::any_of(things, &Use::receptacle)) return true;
    bool const lights = std::ranges::any_of(things, &Use::lighting);
    return c.use_guessed && !lights && places.has(RoomPlace::counter); // "Counter by the fridge" is no refrigerator
}

HomeCircuit seen_as(Circuit const& circuit) {
    auto things = things_of(circuit);
    bool const receptacles = feeds_receptacles(circuit, things, circuit.places);
    return {&circuit, std::move(things), circuit.places, receptacles};
}

// "House panel, basement" feeds it: the rest of the dwelling stands in another list.
bool is_part_of_a_house(Panel const& p) { return p.above_named == Above::panel; }
} // namespace

std::optional<Home> home_of(Case const& c) {
    if (!c.building.dwelling) return std::nullopt;
    Home home;
    for (Panel const& p : c.building.panels) {
        if (p.existing) home.old = true;
        if (p.feeder_said || p.is_dc()) continue;
        if (!home.panel) home.panel = &p;
        if (is_part_of_a_house(p)) home.whole = false;
    }
    if (!home.panel) return std::nullopt;
    home.flat = is_wye(home.panel->feeds);
    for (Circuit const& circuit : c.building.circuits) {
        if (feeds_nothing_here(circuit)) continue;
        home.circuits.push_back(seen_as(circuit));
        if (circuit.name.empty() && circuit.room.empty() && !circuit.use) home.unclear = true;
    }
    if (!home.circuits.empty() &&
        std::ranges::all_of(home.circuits, [](HomeCircuit const& h) { return h.circuit->existing; }))
        home.old = true;
    return home;
}

RoomPlaces places_of(Household part) {
    using enum RoomPlace;
    switch (part) {
    case Household::kitchen: return {kitchen, counter};
    case Household::laundry: return {laundry};
    case Household::utility: return {utility};
    case Household::bath: return {bathroom};
    case Household::garage: return {garage};
    case Household::outdoor: break;
    }
    return {outdoor, dock};
}

std::vector<std::string> names_of(RoomPlaces places, RoomPlaces but) {
    std::vector<std::string> names;
    for (int i = 0; i <= static_cast<int>(RoomPlace::boat_hoist); ++i)
        if (auto const p = static_cast<RoomPlace>(i); places.has(p) && !but.has(p)) names.emplace_back(name(p));
    return names;
}

bool is_named(HomeCircuit const& h, std::string_view use) {
    return std::ranges::any_of(h.things, [&](Use const* u) { return u->name == use; });
}

} // namespace legwork
