// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/panel/list.h"
#include "rules/panel/places.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        if (panel.legs != Legs::two) continue;
        for (Circuit const* circuit : panel.circuits) {
            auto const at = slots_of(c, circuit->mark);
            if (at.size() != 2 || !all_live(panel, at)) continue;
            seen.looked();
            Leg const leg = panel.layout.leg(at[0].space);
            if (leg != panel.layout.leg(at[1].space)) continue;
            auto f = finding(c, panel_two_legs, Gravity::usual, about(*circuit, "space"));
            f.message = fmt::format("Both poles of {} ({}) are on leg {}: there is no voltage between them",
                                    circuit->mark, spaces_of(c, circuit->mark), letter(leg));
            f.fix = "Move it to two neighbouring spaces of one column on different legs of this panel's bus";
            seen.found(std::move(f));
        }
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_two_legs{
    .id = "panel-two-legs",
    .asks = "A two-pole breaker reaches both legs.",
    .why = "On an odd bus two neighbouring spaces can be on one leg. A 240 V load there gets no voltage, and a pair's "
           "neutral carries the sum.",
    .remedy = "Choose two neighbouring spaces with different leg letters; the directory prints the letters between the "
              "columns.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, kDead},
    .judge = judge,
};

} // namespace legwork
