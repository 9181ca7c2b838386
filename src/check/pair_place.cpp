// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/pair_place.h"

#include "check/leg_amps.h"
#include "check/wire_rating.h"
#include "codebook/cables.h"
#include "panel/feeds.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::optional<Spot> spot_of(Case const& c, typed::Circuit const& circuit) {
    Placement const* p = placement_of(c.plan, circuit.mark);
    if (!p || p->slots.empty()) return std::nullopt;
    return p->slots.front();
}

// The source under which both hots would rise and fall together, if there is one.
std::optional<Feed> in_phase_feed(typed::Job const& job, typed::Panel const& panel) {
    auto const all = feeds(job, panel);
    auto const at = std::ranges::find_if(
        all, [](Feed const& f) { return phase_degrees(f.kind) == 0 && reaches(f, Leg::a) && reaches(f, Leg::b); });
    return at == all.end() ? std::nullopt : std::optional(*at);
}

// Both currents with everything on, under the source that drives most.
double most_of_both(Case const& c, typed::Pair const& p) {
    double most = 0;
    if (typed::Panel const* panel = panel_of(c.job, p.first->panel))
        for (Feed const& f : feeds(c.job, *panel))
            most = std::max(most, amps_of(*p.first, nullptr, f) + amps_of(*p.second, nullptr, f));
    return most;
}

std::string name_of_source(Feed const& f) {
    return f.source.empty() ? fmt::format("the supply ({})", name(f.kind))
                            : fmt::format("\"{}\" ({})", f.source, name(f.kind));
}

// Two breakers that one tie or one two-pole unit can join: next to each other in a column, both full size, or the
// inner (b, a) or outer (a, b) halves of a quad.
bool can_be_tied(Layout const& layout, Spot s, Spot t) {
    if (!layout.neighbours(s.space, t.space)) return false;
    return (s.half == 0) == (t.half == 0) && (s.half == 0 || s.half != t.half);
}

template <class Say>
Findings each_pair_at(Case const& c, PlaceFault fault, Say say) {
    Findings found;
    for (typed::Pair const& p : pairs(c.job))
        if (place_fault(c, p) == fault) found.push_back(say(p));
    return found;
}

std::string place_word(Case const& c, typed::Circuit const& circuit) {
    return fmt::format("{} ({})", circuit.mark, spaces_of(c, circuit.mark));
}
} // namespace

std::optional<PlaceFault> place_fault(Case const& c, typed::Pair const& p) {
    if (p.first->panel != p.second->panel) return PlaceFault::two_panels;
    typed::Panel const* panel = panel_of(c.job, p.first->panel);
    if (!panel) return std::nullopt;
    auto const s = spot_of(c, *p.first), t = spot_of(c, *p.second);
    if (s && t && s->space == t->space) return PlaceFault::same_space;
    if (in_phase_feed(c.job, *panel)) return PlaceFault::legs_in_phase;
    if (!s || !t) return std::nullopt;
    Layout const layout(*panel);
    auto const sources = feeds(c.job, *panel);
    // A hot on a dead space carries nothing: panel-dead-space speaks.
    if (!is_live(sources, layout, s->space) || !is_live(sources, layout, t->space)) return std::nullopt;
    if (layout.leg(s->space) == layout.leg(t->space)) return PlaceFault::same_leg;
    if (tie_of(p) != Tie::none && !can_be_tied(layout, *s, *t)) return PlaceFault::not_adjacent;
    return std::nullopt;
}

std::optional<Gauge> shared_gauge(typed::Pair const& p) {
    for (typed::Circuit const* c : {p.first, p.second}) {
        if (c->run.empty()) continue;
        auto const kind = cable_kind(c->run.front().kind);
        return kind ? kind->gauge : std::nullopt;
    }
    return std::nullopt;
}

std::optional<Amps> neutral_ampacity(Case const& c, typed::Pair const& p) {
    auto const gauge = shared_gauge(p);
    if (!gauge) return std::nullopt;
    auto const rating = wire_rating(c, p.first->run.empty() ? *p.second : *p.first, *gauge);
    return rating ? std::optional(rating->base) : std::nullopt;
}

std::string neutral_carries_the_sum(Case const& c, typed::Pair const& p) {
    std::string words = "the shared neutral carries both currents added up";
    if (p.first->breaker && p.second->breaker)
        words = fmt::format("the shared neutral can carry {} before a breaker trips",
                            amps(value(*p.first->breaker + *p.second->breaker)));
    if (double const sum = most_of_both(c, p); sum > 0) words += fmt::format(", {} at the loads given", amps(sum));
    auto const gauge = shared_gauge(p);
    auto const limit = neutral_ampacity(c, p);
    if (gauge && limit) words += fmt::format(", on {} AWG good for {}", name(*gauge), amps(value(*limit)));
    return words;
}

Findings mw_one_panel(Case const& c) {
    return each_pair_at(c, PlaceFault::two_panels, [&](typed::Pair const& p) {
        auto f = finding(c, "mw-one-panel", Severity::error, about(p, "panel"));
        f.message = fmt::format("{} share a neutral, but {} starts in panel \"{}\" and {} in panel \"{}\": whoever "
                                "switches off at one panel still finds the neutral live from the other",
                                both(p), p.first->mark, p.first->panel, p.second->mark, p.second->panel);
        f.fix = "Start both hots and their neutral in one panel, or give each circuit its own cable and neutral";
        return f;
    });
}

Findings mw_same_space(Case const& c) {
    return each_pair_at(c, PlaceFault::same_space, [&](typed::Pair const& p) {
        auto f = finding(c, "mw-same-space", Severity::error, about(p, "space"));
        f.message = fmt::format("{} and {} are halves of one half-size breaker, so both on one leg: {}",
                                place_word(c, *p.first), place_word(c, *p.second), neutral_carries_the_sum(c, p));
        f.fix =
            "Land them on two neighbouring spaces of one column, one on each leg; a handle tie on the halves of one "
            "space is no cure";
        return f;
    });
}

Findings mw_in_phase_supply(Case const& c) {
    return each_pair_at(c, PlaceFault::legs_in_phase, [&](typed::Pair const& p) {
        typed::Panel const& panel = *panel_of(c.job, p.first->panel);
        auto const feed = in_phase_feed(c.job, panel);
        auto f = finding(c, "mw-in-phase-supply", Severity::error, about(p, "multiwire"));
        f.message = fmt::format("{} share a neutral, and on {} both legs are in phase, so nothing cancels: {}", both(p),
                                name_of_source(*feed), neutral_carries_the_sum(c, p));
        f.fix = "Give each circuit its own neutral, or feed the panel from a source with two opposite legs; "
                "switching one of them off by hand on that source is no cure";
        return f;
    });
}

Findings mw_opposite_legs(Case const& c) {
    return each_pair_at(c, PlaceFault::same_leg, [&](typed::Pair const& p) {
        Layout const layout(*panel_of(c.job, p.first->panel));
        auto f = finding(c, "mw-opposite-legs", Severity::error, about(p, "space"));
        f.message = fmt::format("{} and {} are both on leg {}: {}", place_word(c, *p.first), place_word(c, *p.second),
                                letter(layout.leg(spot_of(c, *p.first)->space)), neutral_carries_the_sum(c, p));
        f.fix = fmt::format("Keep both off until one is moved: land {} on two neighbouring spaces of one column, one "
                            "on each leg, and measure about 240 V (208 V on a wye) between the two hots",
                            both(p));
        return f;
    });
}

Findings mw_not_adjacent(Case const& c) {
    return each_pair_at(c, PlaceFault::not_adjacent, [&](typed::Pair const& p) {
        auto f = finding(c, "mw-not-adjacent", unless_existing(existing(p)), about(p, "space"));
        bool const unit = tie_of(p) == Tie::two_pole_breaker;
        f.message = fmt::format("{} and {} are said to be {}, which cannot reach both places: it joins two spaces next "
                                "to each other in one column",
                                place_word(c, *p.first), place_word(c, *p.second),
                                unit ? "one two-pole breaker" : "joined by a handle tie");
        f.fix = "Land them on two neighbouring spaces of one column";
        return f;
    });
}

} // namespace legwork
