// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the panel's own label says of it.
#include "rules/panel/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
// Every breaker of the panel, on a full-size space or half of one; the main is not counted among them.
int poles_of(Panel const& panel) {
    int poles = 0;
    for (Circuit const* c : panel.circuits)
        if (!c->is(PanelPart::main)) poles += c->poles;
    return poles;
}

Finding say(Case const& c, Panel const& panel, int poles) {
    auto f = finding(c, panel_circuits, Gravity::usual, {panel.name, {}, "circuits_max"});
    f.message =
        fmt::format("Panel \"{}\" is marked for at most {}, and its breakers have {} (a two-pole breaker counts "
                    "2, each half of a half-size one counts 1)",
                    panel.name, plural(static_cast<std::size_t>(*panel.circuits_max), "pole"), poles);
    f.fix = fmt::format("Take out {}, or put those circuits in a sub-panel or a larger panel",
                        plural(static_cast<std::size_t>(poles - *panel.circuits_max), "pole"));
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        if (!panel.circuits_max) continue;
        seen.looked();
        int const poles = poles_of(panel), most = *panel.circuits_max;
        if (poles > most) seen.found(say(c, panel, poles));
        seen.margin(static_cast<double>(poles) / most,
                    [&] { return fmt::format("{} of {} poles in panel \"{}\"", poles, most, panel.name); });
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_circuits{
    .id = "panel-circuits",
    .asks = "The breakers have no more poles than the panel is marked for.",
    .why = "A panel is built and tested for a number of circuits: the heat of its bus, its neutral bar and the room "
           "for wires all go by it. Half-size breakers make it easy to exceed. A two-pole breaker counts 2, each half "
           "counts 1.",
    .remedy = "Read the number on the label in the door; put what is too much in a sub-panel or a larger panel.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .judge = judge,
};

} // namespace legwork
