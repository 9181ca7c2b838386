// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The feeder from a panel that is not listed. The file describes it at the panel that it feeds; here it is a circuit
// like other feeders, so that what judges wires, drop and sub-panels meets it. It stands on no space.
#include "building/resolving.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
struct FeederKey {
    std::string_view at_panel, key;
};
constexpr std::array kFeederKeys{FeederKey{"feeder_breaker", "breaker"}, FeederKey{"feeder_cable", "cable"},
                                 FeederKey{"feeder_length", "length"}};

// Two hots, unless the panel has what one brings.
int poles_to(Panel const& fed) {
    auto const both = [](Feed const& f) { return f.kind == SupplyKind::bridged_120 || has_two_hots(f.kind); };
    bool const narrowed = fed.own_supply && !has_two_hots(fed.own_supply->kind);
    return narrowed || std::ranges::none_of(fed.feeds, both) ? 1 : 2;
}

void take(Resolving& r, Circuit& c, typed::Panel const& said) {
    Panel *above = r.panel(said.feeder->panel), *fed = r.panel(said.name);
    c.listed = false;
    c.name = "Panel " + said.name;
    c.use = use_named("feeder");
    c.panel = above;
    above->circuits.push_back(&c);
    c.feeds.push_back(fed);
    c.building = said.building;
    c.poles = poles_to(*fed);
    if (c.poles == 2) c.tie = Tie::two_pole_breaker;
    c.breaker = said.feeder_breaker;
    if (!said.feeder_cable.empty() || said.feeder_length)
        c.run = {{cable_kind_named(said.feeder_cable), said.feeder_cable, said.feeder_length, {}}};
    for (auto const& [at_panel, key] : kFeederKeys)
        if (std::ranges::count(said.asked, at_panel) > 0) c.asked.emplace_back(key);
    c.existing = said.existing;
    c.places = places_of(c.use, c.name, c.room, c.stands_in());
}

} // namespace

std::string_view feeder_key(std::string_view at_panel) {
    auto const at = std::ranges::find(kFeederKeys, at_panel, &FeederKey::at_panel);
    return at == kFeederKeys.end() ? std::string_view() : at->key;
}

bool has_feeder_of_its_own(typed::Job const& job, typed::Panel const& panel) {
    if (!panel.feeder || !panel.listed) return false;
    typed::Panel const* above = panel_of(job, panel.feeder->panel);
    return above && !above->listed;
}

void resolve_feeders(Resolving& r) {
    auto at = r.building.circuits.begin() + static_cast<std::ptrdiff_t>(r.job.circuits.size());
    for (typed::Panel const& p : r.job.panels)
        if (has_feeder_of_its_own(r.job, p)) take(r, *at++, p);
}

} // namespace legwork
