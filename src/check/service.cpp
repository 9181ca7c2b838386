// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/service.h"

#include "panel/feeds.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
void hold_within(ServiceFacts& facts, std::optional<Amps> amps, std::string what) {
    if (!amps || (facts.rating && *facts.rating <= *amps)) return;
    facts.rating = amps;
    facts.rated_by = std::move(what);
}
} // namespace

std::optional<ServiceFacts> service_facts(Job const& job, Plan const& plan, Panel const& panel) {
    auto const all = feeds(job, panel);
    auto const two_hots = std::ranges::find_if(all, [](Feed const& f) { return has_two_hots(f.kind); });
    if (all.empty() || is_dc(all.front().kind)) return std::nullopt;
    Feed const& feed = two_hots != all.end() ? *two_hots : all.front();
    ServiceFacts facts;
    facts.three_wire = has_two_hots(feed.kind);
    facts.volts = facts.three_wire ? volts_between_legs(feed.kind) : volts_to_neutral(feed.kind);
    facts.wye = feed.kind == SupplyKind::wye_120_208;
    hold_within(facts, panel.main, "the main");
    if (panel.feeder) {
        if (Circuit const* c = circuit_of(job, panel.feeder->mark))
            hold_within(facts, c->breaker, "the feeder " + c->mark);
    } else {
        hold_within(facts, feed.amps, feed.source.empty() ? "the supply" : fmt::format("\"{}\"", feed.source));
    }
    if (facts.three_wire)
        for (PanelPlan const& p : plan.panels)
            for (Placement const& at : p.placements)
                if (at.leg) facts.legs.emplace(at.circuit, *at.leg);
    return facts;
}

Panel const* service_panel(Job const& job) {
    auto const at = std::ranges::find_if(job.panels, [&](Panel const& p) {
        return !p.feeder && std::ranges::none_of(feeds(job, p), [](Feed const& f) { return is_dc(f.kind); });
    });
    return at == job.panels.end() ? nullptr : &*at;
}

PanelLoad panel_load(Job const& job, Plan const& plan, CodeBook const& book, Panel const& panel,
                     std::optional<LoadMethod> asked) {
    PanelLoad p;
    p.panel = &panel;
    auto const facts = service_facts(job, plan, panel);
    if (!facts) {
        p.why =
            fmt::format("panel \"{}\" is on DC, and the code reckons the load of AC services and feeders", panel.name);
        p.fix = "name a panel on AC with --panel; a DC panel's load is what its situations add up to";
        return p;
    }
    p.facts = *facts;
    LoadQuestion const q{job, book, panel, *facts};
    auto reckoned = reckon(q, asked);
    p.load = std::move(reckoned.load);
    p.why = std::move(reckoned.why);
    p.fix = std::move(reckoned.fix);
    if (p.load) {
        p.size = service_size(q, *p.load);
        p.results = load_results(q, *p.load, p.size);
        p.verdict = verdict(q, *p.load, p.size);
    }
    return p;
}

} // namespace legwork
