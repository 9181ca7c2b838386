// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/panel/list.h"
#include "rules/panel/places.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::string where_dead(Layout const& layout, Spot s) {
    if (layout.is_dead(s.space)) return fmt::format("space {}, which the bus does not reach", text(s));
    return fmt::format("space {} of leg {}, and no source feeds that leg", text(s), letter(layout.leg(s.space)));
}

Finding say(Case const& c, Circuit const& circuit, Layout const& layout, Spot dead) {
    auto f = finding(c, panel_dead_space, Gravity::usual, about(circuit, "space"));
    f.message = fmt::format("{} stands on {}", circuit.mark, where_dead(layout, dead));
    f.fix = circuit.poles == 2 ? "It needs two live legs: feed the panel from a source that has them, or replace it by "
                                 "a 120 V load"
                               : "Move it to a space of the leg that is fed";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        for (Circuit const* circuit : panel.circuits) {
            auto const slots = slots_of(c, circuit->mark);
            if (circuit->is_spare() || slots.empty()) continue;
            seen.looked();
            auto const dead = std::ranges::find_if(slots, [&](Spot s) { return !panel.is_live(s.space); });
            if (dead != slots.end()) seen.found(say(c, *circuit, panel.layout, *dead));
        }
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_dead_space{
    .id = "panel-dead-space",
    .asks = "Every circuit stands on a space that a bus and a source reach.",
    .why = "A cord of one hot feeds one bus, and the spaces of the other leg stay dead. Some panels also have "
           "positions that no bus finger reaches.",
    .remedy = "Move the circuit to a live space. Going down a column the spaces alternate between the legs.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, kDead},
    .judge = judge,
};

} // namespace legwork
