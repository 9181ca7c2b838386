// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_cable.h"
#include "rules/multiwire/pair_place.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Finding say(Case const& c, Pair const& p) {
    auto f = finding(c, mw_same_space, Gravity::usual, about(p, "space"));
    f.message = fmt::format("{} and {} are halves of one half-size breaker, so both on one leg: {}",
                            place_word(c, *p.first), place_word(c, *p.second), neutral_carries_the_sum(c, p));
    f.fix = "Land them on two neighbouring spaces of one column, one on each leg; a handle tie on the halves of one "
            "space is no cure";
    return f;
}

Verdict judge(Case const& c) { return judge_place(c, PlaceFault::same_space, say); }
} // namespace

constinit Rule const mw_same_space{
    .id = "mw-same-space",
    .asks = "A multiwire pair never sits on the two halves of one half-size (tandem) breaker.",
    .why = "Both halves of a space are fed by the same leg. The two currents then come back through the neutral added "
           "up, not subtracted, and nothing trips: each breaker sees only its own share.",
    .remedy = "Use two full-size spaces next to each other in one column, or the inner or outer halves of a quad, so "
              "that each hot is on its own leg. Tying the halves of one space does not help.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, kUnseen},
    .judge = judge,
};

} // namespace legwork
