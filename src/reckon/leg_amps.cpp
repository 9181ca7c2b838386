// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/leg_amps.h"

#include "balance/loads.h"
#include "codebook/stock/uses.h"
#include "reckon/draw.h"

#include <algorithm>

namespace legwork {

namespace {
struct Adding {
    Case const& c;
    Situation const* situation;
    Feed const& feed;
    Layout const& layout;
    LegAmps sum;

    void on(Leg leg, double amperes) {
        if (is_dc(feed.kind)) leg = Leg::a;
        if (energizes(feed, leg)) (leg == Leg::a ? sum.a : sum.b) += amperes;
    }

    void own(Circuit const& circuit, std::vector<Spot> const& slots) {
        double const each = amps_of(circuit, situation, feed);
        for (Spot const s : slots) on(layout.leg(s.space), each);
    }

    void feeder(Circuit const& circuit, std::vector<Spot> const& slots, Panel const& fed) {
        auto const& below = fed.feeds;
        auto const same = std::ranges::find(below, feed.source, &Feed::source);
        if (is_off(feed, circuit) || same == below.end()) return;
        auto const [a, b] = leg_amps(c, fed, situation, *same);
        if (slots.size() == 1) return on(layout.leg(slots.front().space), a + b);
        on(Leg::a, a); // leg A of a sub-panel is leg A of the panel above
        on(Leg::b, b);
    }
};
} // namespace

std::vector<Situation const*> situations(Building const& building) {
    std::vector<Situation const*> all{nullptr};
    for (Situation const& s : building.situations) all.push_back(&s);
    return all;
}

std::string_view name_of(Situation const* situation) {
    return situation ? std::string_view(situation->name) : "connected";
}

double amps_of(Circuit const& c, Situation const* situation, Feed const& feed) {
    if (is_off(feed, c)) return 0;
    auto const va = static_cast<double>(pole_va(c, situation, volts_to_neutral(feed.kind)));
    if (c.poles == 1 || is_dc(feed.kind)) return va / value(volts_to_neutral(feed.kind));
    if (!has_two_hots(feed.kind)) return 0;
    double const between = value(volts_between_legs(feed.kind));
    if (c.measured || !c.load) return va / value(volts_to_neutral(feed.kind)); // said as a current
    double const part = gives_less_on_less(c) ? std::min(1.0, between * between / (240.0 * 240.0)) : 1.0;
    return 2 * va * part / between;
}

LegAmps leg_amps(Case const& c, Panel const& panel, Situation const* situation, Feed const& feed) {
    Adding adding{c, situation, feed, panel.layout, {}};
    for (Circuit const* circuit : panel.circuits) {
        Placement const* at = placement_of(c.plan, circuit->mark);
        if (!at || at->slots.empty()) continue;
        if (circuit->feeds_loads())
            adding.feeder(*circuit, at->slots, *circuit->fed_panel());
        else
            adding.own(*circuit, at->slots);
    }
    return adding.sum;
}

} // namespace legwork
