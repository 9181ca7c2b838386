// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_outlets.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Finding say(Case const& c, Where where, std::string const& who_feeds) {
    auto f = finding(c, mw_line_to_line, Gravity::usual, std::move(where));
    f.message =
        fmt::format("{} a 240 V outlet beside 120 V ones; with separate or tied one-pole breakers a fault trips "
                    "one of them and the other keeps feeding through the 240 V load",
                    who_feeds);
    f.fix = "Fit a two-pole breaker whose poles trip together; a handle tie is not enough";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Pair const& p : c.building.pairs) {
        if (!has_outlet(*p.first, is_line_to_line) && !has_outlet(*p.second, is_line_to_line)) continue;
        seen.looked();
        if (p.tie != Tie::two_pole_breaker) seen.found(say(c, about(p, "tie"), both(p) + " feed"));
    }
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.poles != 2 || !has_outlet(circuit, is_two_hot) || !has_outlet(circuit, is_one_hot)) continue;
        seen.looked();
        if (circuit.tie != Tie::two_pole_breaker) seen.found(say(c, about(circuit, "tie"), circuit.mark + " feeds"));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const mw_line_to_line{
    .id = "mw-line-to-line",
    .asks = "A 240 V outlet beside 120 V outlets on one circuit has a breaker whose poles trip together.",
    .why = "A handle tie makes people switch both off, but a fault may still trip one breaker alone. The 240 V load "
           "then feeds its open side from the other leg, and things that should be dead are not.",
    .remedy = "Fit one two-pole breaker of the common-trip kind, which is what a two-pole breaker in one case is.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, "After a trip what looks dead is fed through the load between the two hots."},
    .judge = judge,
};

} // namespace legwork
