// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/loads.h"

#include <algorithm>

namespace legwork {

namespace {

constexpr std::int64_t kWhole = 1'000'000; // share 1, in millionths

// Exact: dropping what is below a thousandth of a VA cannot change which whole VA is nearest.
std::int64_t shared_va(VoltAmperes load, std::int64_t share) {
    return whole_va({load.count / kWhole * share + load.count % kWhole * share / kWhole});
}

template <class Each>
void for_situations(Building const& building, Each each) {
    each(std::size_t{0}, static_cast<Situation const*>(nullptr));
    for (std::size_t i = 0; i < building.situations.size(); ++i) each(i + 1, &building.situations[i]);
}

void add(BySituation& to, BySituation const& what) {
    for (std::size_t i = 0; i < to.size() && i < what.size(); ++i) to[i] += what[i];
}

// Both legs of what is below on the one hot of its feeder.
void put_on_one_leg(LegLoads& loads) {
    auto const fold = [](BySituation& all) {
        for (LegVa& v : all) v = {v.a + v.b, 0};
    };
    fold(loads.va);
    std::ranges::for_each(loads.to_neutral, fold);
}

LegLoads own_load(Building const& building, Panel const& panel, Circuit c, LegLoads blank) {
    auto const& sources = panel.feeds;
    if (panel.is_dc()) c.poles = 1; // both poles of a DC circuit carry the same current of one bus
    Volts const volts = volts_to_neutral(sources.empty() ? SupplyKind::split_120_240 : sources.front().kind);
    for_situations(building, [&](std::size_t i, Situation const* s) {
        auto const va = pole_va(c, s, volts);
        blank.va[i] = {va, c.poles == 1 ? 0 : va};
        if (c.poles != 1) return;
        for (std::size_t f = 0; f < sources.size(); ++f)
            if (!is_off(sources[f], c)) blank.to_neutral[f][i].a = va;
    });
    return blank;
}

} // namespace

std::vector<std::string> situation_names(Building const& building) {
    std::vector<std::string> names{"connected"};
    for (Situation const& s : building.situations) names.push_back(s.name);
    return names;
}

std::int64_t pole_va(Circuit const& c, Situation const* situation, Volts to_neutral) {
    if (c.off) return 0;
    auto const share = situation ? situation->share[c.number] : kWhole;
    if (c.measured) return shared_va(to_neutral * *c.measured, share);
    if (!c.load) return c.mca ? shared_va(to_neutral * *c.mca, share) : 0;
    auto const va = shared_va(*c.load, share);
    return c.poles == 1 ? va : (va + 1) / 2;
}

std::vector<CircuitLoad> circuit_loads(Building const& building, Panel const& panel,
                                       std::map<std::string, LegLoads> const& below) {
    auto const& sources = panel.feeds;
    BySituation const zero(building.situations.size() + 1);
    LegLoads const blank{zero, std::vector<BySituation>(sources.size(), zero)};
    std::vector<CircuitLoad> all;
    for (Circuit const* c : panel.circuits) {
        LegLoads sum = blank;
        bool feeds_something = false;
        for (Panel const* p : c->feeds) {
            auto const at = below.find(p->name);
            if (at == below.end() || p->circuits.empty()) continue;
            feeds_something = true;
            if (c->off) continue;
            add(sum.va, at->second.va);
            for (std::size_t f = 0; f < sources.size() && f < at->second.to_neutral.size(); ++f)
                if (!is_off(sources[f], *c)) add(sum.to_neutral[f], at->second.to_neutral[f]);
        }
        if (!feeds_something) sum = own_load(building, panel, *c, blank);
        bool const one_leg = c->poles == 1 || panel.is_dc();
        if (one_leg) put_on_one_leg(sum);
        all.push_back({one_leg, std::move(sum)});
    }
    return all;
}

} // namespace legwork
