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
    auto const at = std::ranges::find(job.circuits, mark, &typed::Circuit::mark);
    return at == job.circuits.end() ? nullptr : &building.circuits[static_cast<std::size_t>(at - job.circuits.begin())];
}

Panel* Resolving::panel(std::string_view name) {
    auto const at = std::ranges::find(job.panels, name, &typed::Panel::name);
    return at == job.panels.end() ? nullptr : &building.panels[static_cast<std::size_t>(at - job.panels.begin())];
}

Building resolve(typed::Job const& job) {
    Building b;
    b.said = std::make_shared<typed::Job const>(job);
    b.panels.resize(job.panels.size());
    b.circuits.resize(job.circuits.size());
    Resolving r{job, b};
    take_heading(job, b);
    take_supplies(r);
    resolve_panels(r);
    resolve_circuits(r);
    resolve_pairs(r);
    resolve_runs(r);
    resolve_dwelling(r);
    take_situations(r);
    take_accepts(r);
    return b;
}

} // namespace legwork
