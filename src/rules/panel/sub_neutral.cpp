// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/panel/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
std::string fed_by(Panel const& panel) {
    return panel.feeder_said ? fmt::format("panel \"{}\"", panel.above_called) : fmt::format("\"{}\"", panel.fed_from);
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        bool const below = panel.feeder_said || panel.above_named == Above::panel;
        if (!below || panel.is_dc()) continue;
        seen.looked();
        auto f =
            finding(c, panel_sub_neutral, Gravity::usual, {panel.name, {}, panel.feeder_said ? "feeder" : "fed_from"});
        f.message = fmt::format("Panel \"{}\" is fed from {}: neutral and ground are joined at the service only, and "
                                "kept apart here",
                                panel.name, fed_by(panel));
        f.fix =
            "Take out the bonding screw or strap; land white on the neutral bar, which stands off the box, and bare "
            "and green on a ground bar screwed to the box";
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_sub_neutral{
    .id = "panel-sub-neutral",
    .asks = "Neutral and ground are kept apart in a panel below another.",
    .why = "Joined again in a sub-panel they share the neutral's current: it flows in ground wires, pipes and boxes, "
           "and GFCI breakers ahead trip. They are joined once, at the service.",
    .remedy = "Take out the bonding screw or strap, and give the grounds a bar of their own.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
