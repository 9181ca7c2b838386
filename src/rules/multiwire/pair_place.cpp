// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/pair_place.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// Two breakers that one tie or one two-pole unit can join: next to each other in a column, both full size, or the
// inner (b, a) or outer (a, b) halves of a quad.
bool can_be_tied(Layout const& layout, Spot s, Spot t) {
    if (!layout.neighbours(s.space, t.space)) return false;
    return (s.half == 0) == (t.half == 0) && (s.half == 0 || s.half != t.half);
}

// Asks in order; nothing more is asked once a fault is found.
struct PlaceQuestions {
    PairPlace place{};

    // True when it is a fault.
    bool ask(PlaceFault question, bool is_fault) {
        place.answered[static_cast<std::size_t>(question)] = true;
        if (is_fault) place.fault = question;
        return is_fault;
    }
};
} // namespace

std::optional<Feed> in_phase_feed(std::vector<Feed> const& sources) {
    auto const at = std::ranges::find_if(sources, [](Feed const& f) {
        return phase_degrees(f.kind) == 0 && energizes(f, Leg::a) && energizes(f, Leg::b);
    });
    return at == sources.end() ? std::nullopt : std::optional(*at);
}

std::optional<Spot> spot_of(Case const& c, Circuit const& circuit) {
    Placement const* p = placement_of(c.plan, circuit.mark);
    if (!p || p->slots.empty()) return std::nullopt;
    return p->slots.front();
}

std::string place_word(Case const& c, Circuit const& circuit) {
    return fmt::format("{} ({})", circuit.mark, spaces_of(c, circuit.mark));
}

PairPlace pair_place(Case const& c, Pair const& p) {
    PlaceQuestions at;
    if (at.ask(PlaceFault::two_panels, p.first->panel != p.second->panel)) return at.place;
    Panel const* panel = p.first->panel;
    if (!panel) return at.place;
    auto const s = spot_of(c, *p.first), t = spot_of(c, *p.second);
    if (s && t && at.ask(PlaceFault::same_space, s->space == t->space)) return at.place;
    if (!panel->feeds.empty() && at.ask(PlaceFault::legs_in_phase, in_phase_feed(panel->feeds).has_value()))
        return at.place;
    if (!s || !t) return at.place;
    // A hot on a dead space carries nothing: panel-dead-space speaks.
    if (!panel->is_live(s->space) || !panel->is_live(t->space)) return at.place;
    Layout const& layout = panel->layout;
    if (at.ask(PlaceFault::same_leg, layout.leg(s->space) == layout.leg(t->space))) return at.place;
    if (p.tie != Tie::none) at.ask(PlaceFault::not_adjacent, !can_be_tied(layout, *s, *t));
    return at.place;
}

std::optional<PlaceFault> place_fault(Case const& c, Pair const& p) { return pair_place(c, p).fault; }

Verdict judge_place(Case const& c, PlaceFault question, Finding (*say)(Case const& c, Pair const& p)) {
    Inspection seen;
    for (Pair const& p : c.building.pairs) {
        auto const place = pair_place(c, p);
        if (place.is_answered(question)) seen.looked();
        if (place.fault == question) seen.found(say(c, p));
    }
    return seen.verdict();
}

} // namespace legwork
