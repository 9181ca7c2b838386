// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_cable.h"
#include "rules/multiwire/pair_place.h"

#include <fmt/format.h>

namespace legwork {

namespace {
std::string name_of_source(Feed const& f) {
    return f.source.empty() ? fmt::format("the supply ({})", name(f.kind))
                            : fmt::format("\"{}\" ({})", f.source, name(f.kind));
}

Finding say(Case const& c, Pair const& p) {
    auto const feed = in_phase_feed(p.first->panel->feeds);
    auto f = finding(c, mw_in_phase_supply, Gravity::usual, about(p, "multiwire"));
    f.message = fmt::format("{} share a neutral, and on {} both legs are in phase, so nothing cancels: {}", both(p),
                            name_of_source(*feed), neutral_carries_the_sum(c, p));
    f.fix = "Give each circuit its own neutral, or feed the panel from a source with two opposite legs; switching one "
            "of them off by hand on that source is no cure";
    return f;
}

Verdict judge(Case const& c) { return judge_place(c, PlaceFault::legs_in_phase, say); }
} // namespace

constinit Rule const mw_in_phase_supply{
    .id = "mw-in-phase-supply",
    .asks = "No multiwire pair is fed by a supply whose two legs are in phase.",
    .why = "A cord inlet, inverter or small generator of 120 V bridged to both buses makes both legs rise and fall "
           "together. The shared neutral then carries the sum of both currents, up to twice what its wire is good for, "
           "with no breaker in the way.",
    .remedy = "Give every circuit of such a panel its own neutral, or use a source of 120/240 V. Switching one of the "
              "two off by hand depends on somebody remembering it, and is no cure.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, kUnseen},
    .judge = judge,
};

} // namespace legwork
