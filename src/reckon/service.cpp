// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/service.h"

#include "codebook/stock/source_words.h"
#include "panel/feeds.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
void hold_within(ServiceFacts& facts, std::optional<Amps> amps, Phrase what) {
    if (!amps || (facts.rating && *facts.rating <= *amps)) return;
    facts.rating = amps;
    facts.rated_by = std::move(what);
}

// Of the sources of two hots that with the most amperes: a generator is for the days when the other is gone.
std::vector<Feed>::const_iterator usual_source(std::vector<Feed> const& all) {
    auto usual = all.end();
    for (auto f = all.begin(); f != all.end(); ++f)
        if (has_two_hots(f->kind) && (usual == all.end() || (usual->amps && f->amps && *f->amps > *usual->amps)))
            usual = f;
    return usual;
}
} // namespace

bool stands_alone(Panel const& panel) {
    bool const fed_so = named_source(panel.fed_from) == NamedSource::stand_alone;
    return !panel.feeder_said && !panel.feeds.empty() && std::ranges::all_of(panel.feeds, [&](Feed const& f) {
        auto const named = named_source(f.source);
        return named == NamedSource::stand_alone || (named == NamedSource::unsaid && f.source.empty() && fed_so);
    });
}

std::optional<ServiceFacts> service_facts(Plan const& plan, Panel const& panel) {
    auto const& all = panel.feeds;
    auto const two_hots = usual_source(all);
    if (all.empty() || panel.is_dc()) return std::nullopt;
    Feed const& feed = two_hots != all.end() ? *two_hots : all.front();
    ServiceFacts facts;
    facts.three_wire = has_two_hots(feed.kind);
    facts.volts = facts.three_wire ? volts_between_legs(feed.kind) : volts_to_neutral(feed.kind);
    facts.wye = feed.kind == SupplyKind::wye_120_208;
    facts.stands_alone = stands_alone(panel);
    if (!facts.stands_alone) hold_within(facts, panel.main, say("load/the-main"));
    if (panel.feeder) {
        hold_within(facts, panel.feeder->breaker, say("load/the-feeder", panel.feeder->mark));
    } else if (!panel.feeder_said && !facts.stands_alone) {
        hold_within(facts, feed.amps,
                    feed.source.empty() ? say("load/the-supply") : say("load/the-source", feed.source));
    }
    if (facts.three_wire)
        for (PanelPlan const& p : plan.panels)
            for (Placement const& at : p.placements)
                if (at.leg) facts.legs.emplace(at.circuit, *at.leg);
    return facts;
}

Panel const* service_panel(Building const& building) {
    // Else the first of those behind a panel that is not listed.
    for (bool const behind : {false, true})
        for (Panel const& p : building.panels)
            if (!p.is_dc() && (behind ? p.above && !p.above->listed : !p.feeder_said)) return &p;
    return nullptr;
}

PanelLoad panel_load(Building const& building, Plan const& plan, CodeBook const& book, Panel const& panel,
                     std::optional<LoadMethod> asked) {
    PanelLoad p;
    p.panel = &panel;
    auto const facts = service_facts(plan, panel);
    if (!facts) {
        p.why =
            fmt::format("panel \"{}\" is on DC, and the code reckons the load of AC services and feeders", panel.name);
        p.fix = "name a panel on AC with --panel; a DC panel's load is what its situations add up to";
        return p;
    }
    p.facts = *facts;
    LoadQuestion const q{building, book, panel, *facts};
    auto reckoned = reckon(q, asked);
    p.load = std::move(reckoned.load);
    p.why = std::move(reckoned.why);
    p.fix = std::move(reckoned.fix);
    if (p.load && facts->stands_alone) p.load->notes.push_back(say("load/stands-alone"));
    if (p.load) {
        p.size = service_size(q, *p.load);
        p.results = load_results(q, *p.load, p.size);
        p.verdict = verdict(q, *p.load, p.size);
    }
    return p;
}

PanelLoad permitted_load(Building const& building, Plan const& plan, CodeBook const& book, Panel const& panel) {
    auto usual = panel_load(building, plan, book, panel);
    if (!usual.load || usual.size.fits || !usual.load->unknown.empty()) return usual;
    for (auto const& method : load_method_names()) {
        auto other = panel_load(building, plan, book, panel, load_method(method));
        if (!other.load || !other.size.fits || !other.load->unknown.empty()) continue;
        other.load->why = say("load/why-other", phrase(usual.load->method));
        return other;
    }
    return usual;
}

} // namespace legwork
