// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "building/resolve.h"

#include "building/resolving.h"

#include <algorithm>

namespace legwork {

namespace {

void take_heading(typed::Job const& job, Building& b) {
    b.name = job.name;
    b.code = job.code;
    b.revision = job.revision;
    b.date = job.date;
    b.languages = job.languages;
    b.units = job.units;
    b.tails = job.tails;
    b.loop = job.loop;
    b.asked = job.asked;
}

void take_supplies(Resolving& r) {
    for (typed::Supply const& s : r.job.supplies)
        r.building.supplies.push_back({s.name, s.kind, s.amps, s.leg, s.off, s.asked});
}

// Every panel and circuit with what it is called, so that all may point at each other.
void name_all(typed::Job const& job, Building& b) {
    for (typed::Panel const& p : job.panels) (p.listed ? b.panels : b.unlisted).emplace_back().name = p.name;
    for (typed::Circuit const& c : job.circuits) b.circuits.emplace_back().mark = c.mark;
    for (typed::Panel const& p : job.panels)
        if (has_feeder_of_its_own(job, p)) b.circuits.emplace_back().mark = p.feeder->mark;
    for (std::size_t i = 0; i < b.circuits.size(); ++i) b.circuits[i].number = i;
    for (std::size_t i = 0; i < b.panels.size(); ++i) b.panels[i].number = i;
    for (std::size_t i = 0; i < b.unlisted.size(); ++i) b.unlisted[i].number = b.panels.size() + i;
}

// A mark beats a use.
std::int64_t share_of(typed::Situation const& s, typed::Circuit const& c) {
    if (auto const at = s.by_mark.find(c.mark); at != s.by_mark.end()) return at->second;
    if (auto const at = s.by_use.find(c.use); !c.use.empty() && at != s.by_use.end()) return at->second;
    return s.other;
}

void take_situations(Resolving& r) {
    for (typed::Situation const& s : r.job.situations) {
        Situation situation{s.name, {}};
        for (typed::Circuit const& c : r.job.circuits) situation.share.push_back(share_of(s, c));
        situation.share.resize(r.building.circuits.size(), s.other);
        share_power_supplies(r, s, situation);
        for (Supply const& supply : r.building.supplies)
            if (!s.supply.empty() && supply.name == s.supply) situation.supply = &supply;
        r.building.situations.push_back(std::move(situation));
    }
}

void take_accepts(Resolving& r) {
    for (typed::Accept const& a : r.job.accepts) {
        Accepted accepted{a.rule, a.why, a.by, r.circuit(a.circuit), r.panel(a.panel)};
        accepted.of_nothing = (!a.circuit.empty() && !accepted.circuit) || (!a.panel.empty() && !accepted.panel);
        r.building.accepts.push_back(std::move(accepted));
    }
}

} // namespace

Circuit* Resolving::circuit(std::string_view mark) {
    auto const at = std::ranges::find(building.circuits, mark, &Circuit::mark);
    return at == building.circuits.end() ? nullptr : &*at;
}

Panel* Resolving::panel(std::string_view name) {
    for (auto* list : {&building.panels, &building.unlisted})
        if (auto const at = std::ranges::find(*list, name, &Panel::name); at != list->end()) return &*at;
    return nullptr;
}

Building resolve(typed::Job const& job) {
    Building b;
    b.said = std::make_shared<typed::Job const>(job);
    name_all(job, b);
    Resolving r{job, b};
    take_heading(job, b);
    take_supplies(r);
    resolve_panels(r);
    resolve_circuits(r);
    resolve_feeders(r);
    resolve_power_supplies(r);
    resolve_pairs(r);
    resolve_runs(r);
    resolve_dwelling(r);
    take_situations(r);
    take_accepts(r);
    return b;
}

} // namespace legwork
