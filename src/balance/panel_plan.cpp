// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/panel_plan.h"

#include "balance/tally.h"

#include <algorithm>

namespace legwork {

std::optional<Slots> laid_out(PanelModel const& model, LegProblem const& problem, Room const& room,
                              Assignment const& choice, Effort& effort) {
    auto const signs = signs_of(model, problem, choice);
    auto const rooming = room.rooming(signs, effort);
    if (!rooming) return {};
    return place(model, signs, *rooming);
}

void fill(PanelPlan& plan, PanelModel const& m, Slots const& slots) {
    Layout const& layout = m.panel->layout;
    bool const dc = m.panel->is_dc();
    plan.placements.clear();
    for (std::size_t i = 0; i < m.circuits.size(); ++i) {
        Circuit const& c = *m.circuits[i];
        Placement p{c.mark, slots[i], {}, {}};
        if (c.poles == 1 && !dc && !p.slots.empty()) p.leg = layout.leg(p.slots.front().space);
        if (c.space) p.from = legwork::slots(layout, *c.space, c.poles);
        plan.placements.push_back(std::move(p));
    }
    plan.situations =
        situation_loads(*m.building, *m.panel, leg_loads(*m.building, *m.panel, m.loads, plan.placements));
    plan.moves = moves_of(plan.placements);
    bool const complete = std::ranges::none_of(slots, [](auto const& s) { return s.empty(); });
    if (m.legs == Legs::two && complete) plan.imbalance_va = worst_imbalance(plan.situations);
}

void fill_front(PanelPlan& plan, PanelModel const& m, Front const& front, Effort& effort) {
    if (m.legs != Legs::two || front.steps.empty()) return;
    plan.least_imbalance_va = front.least;
    plan.lower_bound_va = front.lower_bound;
    // What was proven holds for full-size breakers; half-size ones may do better, down to what the loads alone allow.
    if (m.halves_left_alone && front.lower_bound > 0) {
        auto const relaxed = least_worst(relaxed_leg_problem(m), effort);
        plan.lower_bound_va = std::min(front.lower_bound, relaxed.lower_bound);
    }
    plan.proven = *plan.lower_bound_va == front.least;
    plan.tradeoff.clear();
    for (auto const& step : front.steps) plan.tradeoff.push_back({step.moves, step.worst});
    plan.tradeoff_proven_to = m.halves_left_alone ? -1 : front.proven_to;
}

LegLoads carried(PanelModel const& m, PanelPlan const& plan) {
    auto legs = leg_loads(*m.building, *m.panel, m.loads, plan.placements);
    auto const add_halves = [](BySituation& to, BySituation const& what, bool on_one_leg) {
        for (std::size_t i = 0; i < to.size(); ++i) {
            // Nobody knows on which leg it will land.
            auto const half = (what[i].a + 1) / 2;
            to[i] += on_one_leg ? LegVa{half, half} : what[i];
        }
    };
    for (std::size_t i = 0; i < m.loads.size(); ++i) {
        if (i < plan.placements.size() && !plan.placements[i].slots.empty()) continue;
        auto const& load = m.loads[i];
        add_halves(legs.va, load.loads.va, load.on_one_leg);
        for (std::size_t f = 0; f < legs.to_neutral.size(); ++f)
            add_halves(legs.to_neutral[f], load.loads.to_neutral[f], load.on_one_leg);
    }
    return legs;
}

} // namespace legwork
