// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/balance.h"

#include "balance/tally.h"

#include <algorithm>
#include <functional>
#include <set>

namespace legwork {

namespace {

// First fit: pairs and two-pole breakers first, then each circuit on the lighter leg.
PanelPlan first_fit(Job const& job, Panel const& panel, std::map<std::string, LegLoads>& below) {
    Layout const layout(panel);
    auto const sources = feeds(job, panel);
    auto const circuits = circuits_of(job, panel);
    auto const loads = circuit_loads(job, panel, below);
    bool const two_legs = std::ranges::any_of(sources, [](Feed const& f) { return has_two_hots(f.kind); });
    PanelPlan plan;
    plan.panel = panel.name;
    std::set<int> taken(panel.blocked.begin(), panel.blocked.end());
    std::vector<std::vector<Spot>> at(circuits.size());
    for (std::size_t i = 0; i < circuits.size(); ++i)
        if (auto const& c = *circuits[i]; c.space) {
            at[i] = slots(layout, *c.space, c.poles);
            for (Spot const s : at[i]) taken.insert(s.space);
        }
    auto const free = [&](int s) { return !taken.contains(s) && is_live(sources, layout, s); };
    std::int64_t difference = 0;
    auto const weigh = [&](std::size_t i) {
        auto const va = loads[i].loads.va[0].a;
        if (loads[i].on_one_leg && !at[i].empty()) difference += layout.leg(at[i][0].space) == Leg::a ? va : -va;
    };
    for (std::size_t i = 0; i < circuits.size(); ++i) weigh(i);
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        Circuit const* mate = partner(job, *circuits[i]);
        auto const j = static_cast<std::size_t>(std::ranges::find(circuits, mate) - circuits.begin());
        bool const pair = mate && j < circuits.size();
        if (!at[i].empty() || (circuits[i]->poles == 1 && !pair)) continue;
        for (int s = 1; s <= panel.spaces; ++s) {
            auto const next = layout.next_in_column(s);
            if (!next || (two_legs && !layout.takes_two_pole(s))) continue;
            auto const put = [&](std::size_t k, std::vector<Spot> where) {
                for (Spot const w : where) taken.insert(w.space);
                at[k] = std::move(where);
                weigh(k);
            };
            if (!pair) {
                if (!free(s) || !free(*next)) continue;
                put(i, {{s, 0}, {*next, 0}});
            } else if (at[j].empty()) {
                if (!free(s) || !free(*next)) continue;
                bool const first_heavier = loads[i].loads.va[0].a > loads[j].loads.va[0].a;
                bool const upper = (layout.leg(s) == Leg::a) == (first_heavier == (difference <= 0));
                put(i, {{upper ? s : *next, 0}});
                put(j, {{upper ? *next : s, 0}});
            } else if (at[j][0].space == s && free(*next))
                put(i, {{*next, 0}});
            else if (at[j][0].space == *next && free(s))
                put(i, {{s, 0}});
            else
                continue;
            break;
        }
    }
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        if (!at[i].empty() || circuits[i]->poles != 1) continue;
        int best = 0;
        for (int s = 1; s <= panel.spaces; ++s) {
            if (!free(s)) continue;
            bool const lighter = (layout.leg(s) == Leg::a) == (difference <= 0);
            if (!best || lighter) best = s;
            if (lighter) break;
        }
        if (!best) continue;
        at[i] = {{best, 0}};
        taken.insert(best);
        weigh(i);
    }
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        auto const& c = *circuits[i];
        Placement p{c.mark, at[i], {}, {}};
        if (c.poles == 1 && !at[i].empty()) p.leg = layout.leg(at[i][0].space);
        if (c.space) p.from = slots(layout, *c.space, c.poles);
        if (at[i].empty()) plan.why = "no free space for " + c.mark;
        plan.placements.push_back(std::move(p));
    }
    auto const legs = leg_loads(job, panel, loads, plan.placements);
    plan.situations = situation_loads(job, panel, legs);
    if (two_legs) {
        plan.imbalance_va = worst_imbalance(plan.situations);
        plan.least_imbalance_va = plan.imbalance_va;
        plan.lower_bound_va = 0;
        plan.proven = false;
        plan.tradeoff = {{0, *plan.imbalance_va}};
    }
    below[panel.name] = legs;
    return plan;
}

Plan first_fit(Job const& job) {
    Plan plan;
    plan.panels.resize(job.panels.size());
    std::map<std::string, LegLoads> below;
    std::vector<bool> done(job.panels.size());
    std::function<void(std::size_t)> visit = [&](std::size_t i) {
        if (done[i]) return;
        done[i] = true;
        for (std::size_t k = 0; k < job.panels.size(); ++k)
            if (job.panels[k].feeder && job.panels[k].feeder->panel == job.panels[i].name) visit(k);
        plan.panels[i] = first_fit(job, job.panels[i], below);
    };
    for (std::size_t i = 0; i < job.panels.size(); ++i) visit(i);
    return plan;
}

} // namespace

Plan balance(Job const& job, BalanceOptions const&) { return first_fit(job); }
Plan as_filed(Job const& job) { return first_fit(job); }
std::vector<std::string> recheck(Job const&, Plan const&, bool) { return {}; }

} // namespace legwork
