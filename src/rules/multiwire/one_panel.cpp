// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_place.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Finding say(Case const& c, Pair const& p) {
    auto f = finding(c, mw_one_panel, Gravity::usual, about(p, "panel"));
    f.message = fmt::format("{} share a neutral, but {} starts in panel \"{}\" and {} in panel \"{}\": whoever "
                            "switches off at one panel still finds the neutral live from the other",
                            both(p), p.first->mark, panel_name(*p.first), p.second->mark, panel_name(*p.second));
    f.fix = "Start both hots and their neutral in one panel, or give each circuit its own cable and neutral";
    return f;
}

Verdict judge(Case const& c) { return judge_place(c, PlaceFault::two_panels, say); }
} // namespace

constinit Rule const mw_one_panel{
    .id = "mw-one-panel",
    .asks = "Both hots of a multiwire pair, and their neutral, start in one panel.",
    .why = "Two circuits that share a neutral are one cable and must be dead as one. If one hot comes from another "
           "panel, somebody who switches off at the panel in front of them opens a box whose neutral is still live, "
           "and the two currents need not cancel.",
    .remedy = "Land both hots in the panel where the neutral is landed, or run a separate cable to each panel.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, kUnseen},
    .judge = judge,
};

} // namespace legwork
