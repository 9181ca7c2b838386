// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/loads.h"

#include <algorithm>

namespace legwork {

namespace {

constexpr std::int64_t kWhole = 1'000'000; // share 1, in millionths

std::int64_t share_of(typed::Circuit const& c, typed::Situation const& s) {
    if (auto const at = s.by_mark.find(c.mark); at != s.by_mark.end()) return at->second;
    if (!c.use.empty())
        if (auto const at = s.by_use.find(c.use); at != s.by_use.end()) return at->second;
    return s.other;
}

// Exact: dropping what is below a thousandth of a VA cannot change which whole VA is nearest.
std::int64_t shared_va(VoltAmperes load, std::int64_t share) {
    return whole_va({load.count / kWhole * share + load.count % kWhole * share / kWhole});
}

template <class Each>
void for_situations(typed::Job const& job, Each each) {
    each(std::size_t{0}, static_cast<typed::Situation const*>(nullptr));
    for (std::size_t i = 0; i < job.situations.size(); ++i) each(i + 1, &job.situations[i]);
}

std::vector<typed::Panel const*> panels_below(typed::Job const& job, typed::Circuit const& c) {
    std::vector<typed::Panel const*> found;
    for (typed::Panel const& p : job.panels)
        if (p.feeder && p.feeder->panel == c.panel && p.feeder->mark == c.mark) found.push_back(&p);
    return found;
}

bool is_off(Feed const& feed, typed::Circuit const& c) { return std::ranges::count(feed.off, c.mark) > 0; }

void add(BySituation& to, BySituation const& what) {
    for (std::size_t i = 0; i < to.size() && i < what.size(); ++i) to[i] += what[i];
}

bool is_dc_panel(std::vector<Feed> const& sources) { return !sources.empty() && is_dc(sources.front().kind); }

// Both legs of what is below on the one hot of its feeder.
void put_on_one_leg(LegLoads& loads) {
    auto const fold = [](BySituation& all) {
        for (LegVa& v : all) v = {v.a + v.b, 0};
    };
    fold(loads.va);
    std::ranges::for_each(loads.to_neutral, fold);
}

LegLoads own_load(typed::Job const& job, typed::Circuit c, std::vector<Feed> const& sources, LegLoads blank) {
    if (is_dc_panel(sources)) c.poles = 1; // both poles of a DC circuit carry the same current of one bus
    Volts const volts = volts_to_neutral(sources.empty() ? SupplyKind::split_120_240 : sources.front().kind);
    for_situations(job, [&](std::size_t i, typed::Situation const* s) {
        auto const va = pole_va(c, s, volts);
        blank.va[i] = {va, c.poles == 1 ? 0 : va};
        if (c.poles != 1) return;
        for (std::size_t f = 0; f < sources.size(); ++f)
            if (!is_off(sources[f], c)) blank.to_neutral[f][i].a = va;
    });
    return blank;
}

} // namespace

std::vector<std::string> situation_names(typed::Job const& job) {
    std::vector<std::string> names{"connected"};
    for (typed::Situation const& s : job.situations) names.push_back(s.name);
    return names;
}

std::int64_t pole_va(typed::Circuit const& c, typed::Situation const* situation, Volts to_neutral) {
    if (c.off) return 0;
    auto const share = situation ? share_of(c, *situation) : kWhole;
    if (c.measured) return shared_va(to_neutral * *c.measured, share);
    if (!c.load) return 0;
    auto const va = shared_va(*c.load, share);
    return c.poles == 1 ? va : (va + 1) / 2;
}

std::vector<typed::Circuit const*> circuits_of(typed::Job const& job, typed::Panel const& panel) {
    std::vector<typed::Circuit const*> found;
    for (typed::Circuit const& c : job.circuits)
        if (c.panel == panel.name) found.push_back(&c);
    return found;
}

std::vector<CircuitLoad> circuit_loads(typed::Job const& job, typed::Panel const& panel,
                                       std::map<std::string, LegLoads> const& below) {
    auto const sources = feeds(job, panel);
    BySituation const zero(job.situations.size() + 1);
    LegLoads const blank{zero, std::vector<BySituation>(sources.size(), zero)};
    std::vector<CircuitLoad> all;
    for (typed::Circuit const* c : circuits_of(job, panel)) {
        LegLoads sum = blank;
        bool feeds_something = false;
        for (typed::Panel const* p : panels_below(job, *c)) {
            auto const at = below.find(p->name);
            if (at == below.end() || circuits_of(job, *p).empty()) continue;
            feeds_something = true;
            if (c->off) continue;
            add(sum.va, at->second.va);
            for (std::size_t f = 0; f < sources.size() && f < at->second.to_neutral.size(); ++f)
                if (!is_off(sources[f], *c)) add(sum.to_neutral[f], at->second.to_neutral[f]);
        }
        if (!feeds_something) sum = own_load(job, *c, sources, blank);
        bool const one_leg = c->poles == 1 || is_dc_panel(sources);
        if (one_leg) put_on_one_leg(sum);
        all.push_back({one_leg, std::move(sum)});
    }
    return all;
}

} // namespace legwork
