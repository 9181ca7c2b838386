// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Off together: asked of every pair by one family of codes, by the other of those that what they feed makes
// dangerous; and of a lone circuit of two poles.
#include "codebook/cite.h"
#include "codebook/demands.h"
#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_outlets.h"

#include <fmt/format.h>

#include <optional>

namespace legwork {

namespace {
// CE only: what hangs on the pair does not make it plain, or two singles are tied; what nothing is asked of.
constexpr auto less_plain = Gravity::second, advised = Gravity::third;

// What a code asks of a pair's disconnection may hang on what the pair feeds.
enum class PairFeeds { both_hots_at_once, fixed_things, lighting_or_receptacles, not_known };

PairFeeds member_feeds(Circuit const& c) {
    if (c.split || has_outlet(c, is_two_hot)) return PairFeeds::both_hots_at_once;
    if (has_outlet(c, is_one_hot)) return PairFeeds::lighting_or_receptacles;
    if (!c.use) return PairFeeds::not_known;
    // What is not fastened in place is plugged in, hence on a receptacle.
    bool const plain = c.use->lighting || c.use->receptacle || !c.use->fixed;
    return plain ? PairFeeds::lighting_or_receptacles : PairFeeds::fixed_things;
}

PairFeeds feeds_of(Pair const& p) {
    auto const a = member_feeds(*p.first), b = member_feeds(*p.second);
    for (auto const worst : {PairFeeds::both_hots_at_once, PairFeeds::fixed_things, PairFeeds::not_known})
        if (a == worst || b == worst) return worst;
    return PairFeeds::lighting_or_receptacles;
}

constexpr std::string_view kTwoPole = "Fit a two-pole breaker in two neighbouring spaces of one column";

Finding not_off_together(Case const& c, Pair const& p, Gravity::Of of, std::string_view why) {
    auto f = finding(c, mw_disconnect, of, about(p, "tie"));
    f.message = fmt::format("{} share a neutral but do not switch off together{}", both(p), why);
    f.fix = kTwoPole;
    if (demands(c.book).tied_singles_count) f.fix += ", or an identified handle tie on the two breakers";
    return f;
}

// A code that asks it of every pair.
std::optional<Finding> always_together(Case const& c, Pair const& p) {
    if (p.tie != Tie::none) return std::nullopt;
    return not_off_together(c, p, Gravity::usual,
                            ": with one breaker off the cable still holds a live hot, and its neutral can carry "
                            "current");
}

Finding tied_on_site(Case const& c, Where where, std::string message) {
    auto f = finding(c, mw_disconnect, less_plain, std::move(where), "mw-disconnect/tied-singles");
    f.message = std::move(message);
    f.fix = kTwoPole;
    if (auto const others = demands(c.book).singles_that_count; !others.empty())
        f.fix += fmt::format(", or {}", others);
    return f;
}

// A code that asks it by what the pair feeds.
std::optional<Finding> together_by_load(Case const& c, Pair const& p) {
    auto const kind = feeds_of(p);
    if (p.tie == Tie::two_pole_breaker) return std::nullopt;
    if (p.tie == Tie::handle_tie) {
        if (kind != PairFeeds::both_hots_at_once) return std::nullopt;
        return tied_on_site(
            c, about(p, "tie"),
            fmt::format("{} feed a split receptacle or a 240 V load through two one-pole breakers with a handle tie; "
                        "breakers tied on site do not count as one two-pole breaker",
                        both(p)));
    }
    switch (kind) {
    case PairFeeds::both_hots_at_once:
        return not_off_together(c, p, Gravity::usual,
                                ", and a split receptacle or a 240 V load hangs on both: half of it stays live");
    case PairFeeds::fixed_things:
        return not_off_together(c, p, less_plain, ": only pairs for fixed lighting or unsplit receptacles are let off");
    case PairFeeds::not_known:
        return not_off_together(c, p, less_plain,
                                "; only pairs for fixed lighting or unsplit receptacles are let off, and what this "
                                "one feeds is not said");
    case PairFeeds::lighting_or_receptacles: break;
    }
    auto f = not_off_together(c, p, advised,
                              ". For fixed lighting and unsplit receptacles nothing more is asked; for whoever opens "
                              "a box of it, a two-pole breaker is safer");
    f.fix = "Consider a two-pole breaker; if a receptacle on it is split, say split = true: then it is asked";
    f.reference = cite(c.book, "mw-disconnect/lighting");
    return f;
}

std::optional<Finding> lone_two_pole(Case const& c, Circuit const& circuit) {
    if (circuit.tie == Tie::two_pole_breaker) return std::nullopt;
    if (circuit.tie == Tie::handle_tie) {
        if (demands(c.book).tied_singles_count) return std::nullopt;
        return tied_on_site(c, about(circuit, "tie"),
                            fmt::format("{} is on two one-pole breakers with a handle tie; breakers tied on site do "
                                        "not count as one two-pole breaker",
                                        circuit.mark));
    }
    auto f = finding(c, mw_disconnect, Gravity::usual, about(circuit, "tie"), "mw-disconnect/two-pole");
    f.message = fmt::format("{} is on two breakers that switch off one at a time: with one off, what it feeds seems "
                            "dead and is still live",
                            circuit.mark);
    f.fix = kTwoPole;
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Pair const& p : c.building.pairs) {
        seen.looked();
        seen.found(demands(c.book).every_pair_off_together ? always_together(c, p) : together_by_load(c, p));
    }
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.poles != 2) continue;
        seen.looked();
        seen.found(lone_two_pole(c, circuit));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const mw_disconnect{
    .id = "mw-disconnect",
    .asks = "Both hots of a shared cable switch off together.",
    .why = "Whoever works on the circuit switches off the breaker that is named for it. If the other hot of the same "
           "cable stays on, the box they open is half live, and the neutral they part carries the other circuit's "
           "current. The NEC asks it of every multiwire circuit. The CE Code asks a two-pole breaker where a split "
           "receptacle or a 240 V load hangs on it, and lets fixed lighting and unsplit receptacles off.",
    .remedy = "Fit a two-pole breaker. Under the NEC an identified handle tie, made for those breakers, does too; "
              "nails and wire never did.",
    .gravity = {.nec = {Grade::error_on_new_work}, .ce = {Grade::error_on_new_work, Grade::warning, Grade::note}},
    .judge = judge,
};

} // namespace legwork
