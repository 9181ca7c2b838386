// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/home.h"

#include "panel/fed_from.h"
#include "panel/feeds.h"
#include "reckon/wire_rating.h"
#include "rules/need/named_things.h"

#include <algorithm>

namespace legwork {

namespace {
bool feeds_nothing_here(Case const& c, Circuit const& circuit) {
    Use const* use = use_of(circuit);
    return fed_panel(c.job, circuit) || on_dc(c, circuit) ||
           (use && (use->source || use->name == "feeder" || use->name == "spare" || use->demand == Demand::none));
}

bool feeds_receptacles(Circuit const& c, std::vector<Use const*> const& things, RoomPlaces places) {
    if (c.use.empty() && things.empty()) return true;
    if (std::ranges::any_of(things, &Use::receptacle)) return true;
    bool const lights = std::ranges::any_of(things, &Use::lighting);
    return c.use_guessed && !lights && places.has(RoomPlace::counter); // "Counter by the fridge" is no refrigerator
}

HomeCircuit seen_as(Case const& c, Circuit const& circuit) {
    Panel const* panel = panel_of(c.job, circuit.panel);
    auto const& building = circuit.building.empty() && panel ? panel->building : circuit.building;
    HomeCircuit home{&circuit, things_of(circuit), places_of(use_of(circuit), circuit.name, circuit.room, building),
                     false};
    home.receptacles = feeds_receptacles(circuit, home.things, home.places);
    return home;
}

// "House panel, basement" feeds it: the rest of the dwelling stands in another list.
bool is_part_of_a_house(Panel const& p) { return named_above(p.fed_from) == Above::panel; }

bool all_dc(Job const& job, Panel const& panel) {
    auto const sources = feeds(job, panel);
    return !sources.empty() && std::ranges::all_of(sources, [](Feed const& f) { return is_dc(f.kind); });
}
} // namespace

std::optional<Home> home_of(Case const& c) {
    if (!c.job.dwelling) return std::nullopt;
    Home home;
    for (Panel const& p : c.job.panels) {
        if (p.existing) home.old = true;
        if (p.feeder || all_dc(c.job, p)) continue;
        if (home.panel.empty()) home.panel = p.name;
        if (is_part_of_a_house(p)) home.whole = false;
    }
    if (home.panel.empty()) return std::nullopt;
    for (Circuit const& circuit : c.job.circuits) {
        if (feeds_nothing_here(c, circuit)) continue;
        home.circuits.push_back(seen_as(c, circuit));
        if (circuit.name.empty() && circuit.room.empty() && circuit.use.empty()) home.unclear = true;
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
