// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [[panel]]: its geometry, and the tree of what feeds what.
#include "building/resolving.h"

namespace legwork {

namespace {

void take_geometry(Panel& p, typed::Panel const& said) {
    p.layout = Layout(said);
    p.spaces = said.spaces;
    p.handles.assign(1, OnIs::sideways);
    for (int space = 1; space <= said.spaces; ++space) p.handles.push_back(on_is(said, space));
    p.numbering = said.numbering;
    p.first = said.first;
    p.hang = said.hang;
    p.main_at = said.main_at;
    p.bus_legs = said.bus_legs;
    p.row_legs = said.row_legs;
    p.tandem = said.tandem;
    p.blocked = said.blocked;
    p.dead = said.dead;
}

void take_feeds(Resolving& r, Panel& p, typed::Panel const& said) {
    p.feeds = feeds(r.job, said);
    p.legs = legs(p.feeds);
    p.lines = pair_lines(said, p.legs);
    p.takes_two_poles = takes_two_poles(said, p.legs);
    if (said.supply)
        p.own_supply = {said.supply->name, said.supply->kind, said.supply->amps,
                        said.supply->leg,  said.supply->off,  {}};
    for (std::string const& name : said.supplies)
        for (Supply const& s : r.building.supplies)
            if (s.name == name) p.supplies.push_back(&s);
    p.fed_from = said.fed_from;
    p.above_named = named_above(said.fed_from);
    if (!said.feeder) return;
    if (has_power_supply(r.job, said)) {
        p.power_supply = r.circuit(said.feeder->mark);
        p.efficiency = said.efficiency.value_or(p.efficiency);
        return;
    }
    p.feeder_said = true;
    p.above_called = said.feeder->panel;
    p.feeder = r.circuit(said.feeder->mark);
    if (Panel* above = r.panel(said.feeder->panel)) {
        p.above = above;
        above->below.push_back(&p);
    }
}

void take_ratings(Panel& p, typed::Panel const& said) {
    p.main = said.main;
    p.bus = said.bus;
    p.output = said.output;
    p.circuits_max = said.circuits_max;
    p.neutral_terminals = said.neutral_terminals;
    p.existing = said.existing;
}

} // namespace

void resolve_panels(Resolving& r) {
    auto listed = r.building.panels.begin(), unlisted = r.building.unlisted.begin();
    for (typed::Panel const& said : r.job.panels) {
        Panel& p = said.listed ? *listed++ : *unlisted++;
        p.listed = said.listed;
        p.building = said.building;
        for (std::string const& key : said.asked) // the feeder's own are asked of it
            if (feeder_key(key).empty()) p.asked.push_back(key);
        take_geometry(p, said);
        take_feeds(r, p, said);
        take_ratings(p, said);
    }
}

} // namespace legwork
