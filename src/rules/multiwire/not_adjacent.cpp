// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_place.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Finding say(Case const& c, Pair const& p) {
    auto f = finding(c, mw_not_adjacent, Gravity::usual, about(p, "space"));
    bool const unit = p.tie == Tie::two_pole_breaker;
    f.message = fmt::format("{} and {} are said to be {}, which cannot reach both places: it joins two spaces next to "
                            "each other in one column",
                            place_word(c, *p.first), place_word(c, *p.second),
                            unit ? "one two-pole breaker" : "joined by a handle tie");
    f.fix = "Land them on two neighbouring spaces of one column";
    return f;
}

Verdict judge(Case const& c) { return judge_place(c, PlaceFault::not_adjacent, say); }
} // namespace

constinit Rule const mw_not_adjacent{
    .id = "mw-not-adjacent",
    .asks = "A tied pair sits on neighbouring spaces of one column.",
    .why = "A two-pole breaker or a handle tie reaches only from one space to the next one in its column. A pair that "
           "stands apart cannot really be tied, whatever the list says.",
    .remedy = "Move one of the two next to the other, then fit the tie or the two-pole breaker.",
    .gravity = {.nec = {Grade::error_on_new_work}, .ce = {Grade::error_on_new_work}},
    .judge = judge,
};

} // namespace legwork
