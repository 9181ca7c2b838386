// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
Verdict judge(Case const& c) {
    Inspection seen;
    for (Pair const& p : c.building.pairs) {
        auto const a = p.first->breaker, b = p.second->breaker;
        if (!a || !b) continue;
        seen.looked();
        if (*a == *b) continue;
        auto f = finding(c, mw_unequal, Gravity::usual, about(p, "breaker"));
        f.message = fmt::format("{} share a neutral on breakers of {} and {}; a two-pole breaker has one rating, and "
                                "handle ties are made for two alike",
                                both(p), amps(value(*a)), amps(value(*b)));
        f.fix = fmt::format("Use {} for both if wire and outlets allow it", amps(value(std::min(*a, *b))));
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const mw_unequal{
    .id = "mw-unequal",
    .asks = "Both breakers of a multiwire pair have the same rating.",
    .why = "A two-pole breaker has one rating, and handle ties are made for two breakers alike. Two ratings on one "
           "cable are usually a sign that one of them was swapped without thinking of the other.",
    .remedy = "Choose the smaller rating for both if the loads allow it, else give the larger load its own cable.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
