// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_cable.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Verdict judge(Case const& c) {
    Inspection seen;
    for (Pair const& p : c.building.pairs) {
        auto const run = home_run(*p.first);
        if (!run) continue;
        seen.looked();
        if (run->insulated >= 3) continue;
        auto f = finding(c, mw_conductors, Gravity::usual, about(p, "cable"));
        f.message = fmt::format("{} share one cable, {}, which has {} for power; two hots and their neutral need three",
                                both(p), run->kind, plural(static_cast<std::size_t>(run->insulated), "insulated wire"));
        f.fix = "Pull a cable with three insulated wires, or a cable of its own for each circuit";
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const mw_conductors{
    .id = "mw-conductors",
    .asks = "The cable of a multiwire pair has an insulated wire for each hot and one for the neutral.",
    .why = "Two hots and a neutral are three wires besides the ground. With two, either the neutral or a hot is "
           "missing, and the ground wire must never stand in for it.",
    .remedy = "Pull a three-conductor cable (14/3, 12/3), or a two-conductor cable for each circuit.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, kAtOnce},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
