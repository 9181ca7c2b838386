// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/multiwire.h"

#include "check/naming.h"
#include "codebook/cite.h"
#include "codebook/demands.h"
#include "codebook/receptacles.h"
#include "codebook/uses.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr std::array kMembers{&typed::Pair::first, &typed::Pair::second};

bool has_outlet(typed::Circuit const& c, bool (*wanted)(Receptacle const&)) {
    return std::ranges::any_of(c.outlets, [&](std::string const& type) {
        Receptacle const* r = receptacle_named(type);
        return r && wanted(*r);
    });
}
// Between the two hots only, nothing of it on the neutral.
bool is_line_to_line(Receptacle const& r) { return r.hots == 2 && !r.neutral; }
bool is_two_hot(Receptacle const& r) { return r.hots == 2; }
bool is_one_hot(Receptacle const& r) { return r.hots == 1; }

// What a code asks of a pair's disconnection may hang on what the pair feeds.
enum class PairFeeds { both_hots_at_once, fixed_things, lighting_or_receptacles, not_known };

PairFeeds member_feeds(typed::Circuit const& c) {
    if (c.split || has_outlet(c, is_two_hot)) return PairFeeds::both_hots_at_once;
    if (has_outlet(c, is_one_hot)) return PairFeeds::lighting_or_receptacles;
    Use const* use = use_named(c.use);
    if (!use) return PairFeeds::not_known;
    // What is not fastened in place is plugged in, hence on a receptacle.
    bool const plain = use->lighting || use->receptacle || !use->fixed;
    return plain ? PairFeeds::lighting_or_receptacles : PairFeeds::fixed_things;
}

PairFeeds feeds_of(typed::Pair const& p) {
    auto const a = member_feeds(*p.first), b = member_feeds(*p.second);
    for (auto const worst : {PairFeeds::both_hots_at_once, PairFeeds::fixed_things, PairFeeds::not_known})
        if (a == worst || b == worst) return worst;
    return PairFeeds::lighting_or_receptacles;
}

constexpr std::string_view kTwoPole = "Fit a two-pole breaker in two neighbouring spaces of one column";

Finding pair_off_together(Case const& c, typed::Pair const& p, Severity severity, std::string why) {
    auto f = finding(c, "mw-disconnect", severity, about(p, "tie"));
    f.message = fmt::format("{} share a neutral but do not switch off together{}", both(p), why);
    f.fix = kTwoPole;
    if (demands(c.book).tied_singles_count) f.fix += ", or an identified handle tie on the two breakers";
    return f;
}

// A code that asks it of every pair.
Findings always_together(Case const& c, typed::Pair const& p) {
    if (tie_of(p) != Tie::none) return {};
    return {pair_off_together(c, p, unless_existing(existing(p)),
                              ": with one breaker off the cable still holds a live hot, and its neutral can carry "
                              "current")};
}

// A code that asks it by what the pair feeds.
Findings together_by_load(Case const& c, typed::Pair const& p) {
    auto const kind = feeds_of(p);
    if (tie_of(p) == Tie::two_pole_breaker) return {};
    if (tie_of(p) == Tie::handle_tie) {
        if (kind != PairFeeds::both_hots_at_once) return {};
        auto f = finding(c, "mw-disconnect", Severity::warning, about(p, "tie"), "mw-disconnect/tied-singles");
        f.message =
            fmt::format("{} feed a split receptacle or a 240 V load through two one-pole breakers with a handle "
                        "tie; breakers tied on site do not count as one two-pole breaker",
                        both(p));
        f.fix = kTwoPole;
        return {f};
    }
    switch (kind) {
    case PairFeeds::both_hots_at_once:
        return {pair_off_together(c, p, unless_existing(existing(p)),
                                  ", and a split receptacle or a 240 V load hangs on both: half of it stays live")};
    case PairFeeds::fixed_things:
        return {pair_off_together(c, p, Severity::warning,
                                  ": only pairs for fixed lighting or unsplit receptacles are let off")};
    case PairFeeds::not_known:
        return {pair_off_together(c, p, Severity::warning,
                                  "; only pairs for fixed lighting or unsplit receptacles are let off, and what this "
                                  "one feeds is not said")};
    case PairFeeds::lighting_or_receptacles: break;
    }
    auto f = pair_off_together(c, p, Severity::note,
                               ". For fixed lighting and unsplit receptacles nothing more is asked; for whoever opens "
                               "a box of it, a two-pole breaker is safer");
    f.fix = "Consider a two-pole breaker; if a receptacle on it is split, say split = true: then it is asked";
    f.reference = cite(c.book, "mw-disconnect/lighting");
    return {f};
}

std::optional<Finding> lone_two_pole(Case const& c, typed::Circuit const& circuit) {
    if (circuit.poles != 2 || circuit.tie == Tie::two_pole_breaker) return std::nullopt;
    if (circuit.tie == Tie::handle_tie) {
        if (demands(c.book).tied_singles_count) return std::nullopt;
        auto f = finding(c, "mw-disconnect", Severity::warning, about(circuit, "tie"), "mw-disconnect/tied-singles");
        f.message = fmt::format("{} is on two one-pole breakers with a handle tie; breakers tied on site do not count "
                                "as one two-pole breaker",
                                circuit.mark);
        f.fix = kTwoPole;
        return f;
    }
    auto f =
        finding(c, "mw-disconnect", unless_existing(circuit.existing), about(circuit, "tie"), "mw-disconnect/two-pole");
    f.message = fmt::format("{} is on two breakers that switch off one at a time: with one off, what it feeds seems "
                            "dead and is still live",
                            circuit.mark);
    f.fix = kTwoPole;
    return f;
}
} // namespace

Findings mw_disconnect(Case const& c) {
    Findings found;
    for (typed::Pair const& p : pairs(c.job)) {
        auto some = demands(c.book).every_pair_off_together ? always_together(c, p) : together_by_load(c, p);
        std::ranges::move(some, std::back_inserter(found));
    }
    for (typed::Circuit const& circuit : c.job.circuits)
        if (auto f = lone_two_pole(c, circuit)) found.push_back(std::move(*f));
    return found;
}

Findings mw_line_to_line(Case const& c) {
    Findings found;
    auto const say = [&](Where where, std::string const& who_feeds) {
        auto f = finding(c, "mw-line-to-line", Severity::error, std::move(where));
        f.message = fmt::format("{} a 240 V outlet beside 120 V ones; with separate or tied one-pole breakers a "
                                "fault trips one of them and the other keeps feeding through the 240 V load",
                                who_feeds);
        f.fix = "Fit a two-pole breaker whose poles trip together; a handle tie is not enough";
        found.push_back(std::move(f));
    };
    for (typed::Pair const& p : pairs(c.job))
        if (tie_of(p) != Tie::two_pole_breaker &&
            std::ranges::any_of(kMembers, [&](auto m) { return has_outlet(*(p.*m), is_line_to_line); }))
            say(about(p, "tie"), both(p) + " feed");
    for (typed::Circuit const& circuit : c.job.circuits)
        if (circuit.poles == 2 && circuit.tie != Tie::two_pole_breaker && has_outlet(circuit, is_two_hot) &&
            has_outlet(circuit, is_one_hot))
            say(about(circuit, "tie"), circuit.mark + " feeds");
    return found;
}

Findings mw_unequal(Case const& c) {
    Findings found;
    for (typed::Pair const& p : pairs(c.job)) {
        auto const a = p.first->breaker, b = p.second->breaker;
        if (!a || !b || *a == *b) continue;
        auto f = finding(c, "mw-unequal", Severity::warning, about(p, "breaker"));
        f.message = fmt::format("{} share a neutral on breakers of {} and {}; a two-pole breaker has one rating, and "
                                "handle ties are made for two alike",
                                both(p), amps(value(*a)), amps(value(*b)));
        f.fix = fmt::format("Use {} for both if wire and outlets allow it", amps(value(std::min(*a, *b))));
        found.push_back(std::move(f));
    }
    return found;
}

Findings mw_one_pole_gfci(Case const& c) {
    Findings found;
    for (typed::Pair const& p : pairs(c.job)) {
        if (tie_of(p) == Tie::two_pole_breaker) continue;
        Where ground_fault = about(p, "gfci"), arc_fault = about(p, "afci");
        ground_fault.circuits.clear();
        arc_fault.circuits.clear();
        for (auto const m : kMembers) {
            typed::Circuit const& one = *(p.*m);
            if (one.gfci == Protection::breaker)
                ground_fault.circuits.push_back(one.mark);
            else if (one.afci == Protection::breaker)
                arc_fault.circuits.push_back(one.mark);
        }
        bool const sure = !ground_fault.circuits.empty();
        Where const& where = sure ? ground_fault : arc_fault;
        if (where.circuits.empty()) continue;
        auto f = finding(c, "mw-one-pole-gfci", sure ? Severity::error : Severity::warning, where);
        f.message = fmt::format("{} on a one-pole {} breaker, but {} a neutral: the current that comes back "
                                "through it is not the current that went out, so {}",
                                listed(where.circuits) + (where.circuits.size() == 1 ? " is" : " are each"),
                                sure ? "GFCI" : "AFCI", where.circuits.size() == 1 ? both(p) + " share" : "they share",
                                sure ? "it trips or does not protect" : "one that also senses ground faults trips");
        f.fix = fmt::format("Fit one two-pole {} breaker for both, or protect each circuit by a device after the "
                            "neutrals part ({} = \"outlet\")",
                            sure ? "GFCI" : "AFCI", sure ? "gfci" : "afci");
        found.push_back(std::move(f));
    }
    return found;
}

Findings mw_keep_on(Case const& c) {
    Findings found;
    for (typed::Pair const& p : pairs(c.job)) {
        if (tie_of(p) == Tie::none) continue;
        bool const first = must_stay_on(*p.first), second = must_stay_on(*p.second);
        if (first == second) continue; // two that nobody switches off do not harm each other
        typed::Circuit const& kept = first ? *p.first : *p.second;
        typed::Circuit const& switched = first ? *p.second : *p.first;
        auto f = finding(c, "mw-keep-on", Severity::warning, about(kept, "multiwire"));
        f.message = fmt::format("{} ({}) must stay on, and goes off whenever somebody switches off {}{}", kept.mark,
                                kept.name.empty() ? kept.use : kept.name, switched.mark,
                                switched.name.empty() ? "" : fmt::format(" ({})", switched.name));
        f.fix =
            fmt::format("Give {} its own cable and breaker, or pair it with a circuit that also stays on", kept.mark);
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
