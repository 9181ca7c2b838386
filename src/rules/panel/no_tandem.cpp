// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/panel/list.h"
#include "rules/panel/places.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace legwork {

namespace {
// Circuits of one panel whose breakers are half-size in spaces that take none, breakers that share a space together.
struct SharedSpaces {
    std::set<int> spaces;
    std::vector<std::string> circuits;
};

void add(std::vector<SharedSpaces>& found, SharedSpaces one) {
    auto const same = std::ranges::find_if(found, [&](SharedSpaces const& h) {
        return std::ranges::any_of(one.spaces, [&](int s) { return h.spaces.contains(s); });
    });
    if (same == found.end()) return found.push_back(std::move(one));
    same->spaces.merge(one.spaces);
    same->circuits.push_back(one.circuits.front());
}

std::vector<SharedSpaces> halves_where_none_fit(Case const& c, Panel const& panel, Inspection& seen) {
    std::vector<SharedSpaces> found;
    for (Circuit const* circuit : panel.circuits) {
        auto const slots = slots_of(c, circuit->mark);
        if (std::ranges::all_of(slots, [](Spot s) { return s.half == 0; })) continue;
        seen.looked();
        SharedSpaces one{{}, {circuit->mark}};
        for (Spot const s : slots)
            if (s.half != 0 && !panel.layout.is_tandem(s.space)) one.spaces.insert(s.space);
        if (!one.spaces.empty()) add(found, std::move(one));
    }
    return found;
}

template <class Numbers>
std::string space_list(Numbers const& spaces) {
    std::vector<std::string> names;
    for (int const s : spaces) names.push_back(std::to_string(s));
    return (names.size() == 1 ? "space " : "spaces ") + listed(names);
}

Finding say(Case const& c, Panel const& panel, SharedSpaces const& h) {
    auto f = finding(c, panel_no_tandem, Gravity::usual, {panel.name, h.circuits, "space"});
    auto const takes = panel.tandem.empty() ? std::string("in no space") : "only in " + space_list(panel.tandem);
    f.message = fmt::format("{} {} half-size in {}, but panel \"{}\" takes half-size breakers {}", listed(h.circuits),
                            h.circuits.size() == 1 ? "is" : "are", space_list(h.spaces), panel.name, takes);
    f.fix = "Move them to full-size spaces or to spaces that take half-size breakers (the label in the panel's door "
            "says which; list them under `tandem`)";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels)
        for (SharedSpaces const& h : halves_where_none_fit(c, panel, seen)) seen.found(say(c, panel, h));
    return seen.verdict();
}
} // namespace

constinit Rule const panel_no_tandem{
    .id = "panel-no-tandem",
    .asks = "Half-size breakers stand only where the panel takes them.",
    .why = "The panel's maker lists the spaces whose bus and rating allow two circuits. Elsewhere a half-size breaker "
           "may fit by force and make poor contact.",
    .remedy = "Use a full-size space, or a space that the label in the door shows as taking half-size breakers.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .judge = judge,
};

} // namespace legwork
