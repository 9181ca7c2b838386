// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_cable.h"
#include "rules/multiwire/pair_place.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Finding say(Case const& c, Pair const& p) {
    auto f = finding(c, mw_opposite_legs, Gravity::usual, about(p, "space"));
    f.message =
        fmt::format("{} and {} are both on leg {}: {}", place_word(c, *p.first), place_word(c, *p.second),
                    letter(p.first->panel->layout.leg(spot_of(c, *p.first)->space)), neutral_carries_the_sum(c, p));
    f.fix = fmt::format("Keep both off until one is moved: land {} on two neighbouring spaces of one column, one on "
                        "each leg, and measure about 240 V (208 V on a wye) between the two hots",
                        both(p));
    return f;
}

Verdict judge(Case const& c) { return judge_place(c, PlaceFault::same_leg, say); }
} // namespace

constinit Rule const mw_opposite_legs{
    .id = "mw-opposite-legs",
    .asks = "The two hots of a multiwire pair are on different legs.",
    .why = "On opposite legs the two currents meet in the neutral and cancel: it carries their difference. On one leg "
           "it carries their sum, and since no breaker measures the neutral, it overheats inside the wall.",
    .remedy = "Move one of the two to a neighbouring space in the same column, so that a meter reads about 240 V "
              "between the hots (208 V on two phases of a wye). The two spaces of one row are on one leg.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, kUnseen},
    .judge = judge,
};

} // namespace legwork
