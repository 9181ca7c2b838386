// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/leg_amps.h"

#include "balance/loads.h"
#include "codebook/stock/uses.h"
#include "demand/items.h"
#include "reckon/draw.h"
#include "reckon/say.h"

#include <fmt/format.h>

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

bool is_judged_on(Situation const& s, Panel const& panel, Feed const& feed) {
    if (s.supply) return s.supply->name == feed.source;
    return !panel.feeds.empty() && panel.feeds.front().source == feed.source;
}

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

namespace {
Feed const* feed_from(Panel const& panel, Feed const& source) {
    auto const at = std::ranges::find(panel.feeds, source.source, &Feed::source);
    return at == panel.feeds.end() ? nullptr : &*at;
}

// On the legs of `panel` while nothing else runs: the load's own panel, then up from feeder to feeder.
LegAmps alone(Case const& c, Panel const& panel, Circuit const& one, Feed const& feed) {
    Panel const* at = one.panel;
    Placement const* place = placement_of(c.plan, one.mark);
    Feed const* from = at ? feed_from(*at, feed) : nullptr;
    if (!place || !from) return {};
    Adding own{c, nullptr, *from, at->layout, {}};
    own.own(one, place->slots);
    LegAmps legs = own.sum;
    for (std::size_t steps = 0; at != &panel; ++steps) {
        Circuit const* feeder = at->feeder;
        if (!feeder || !feeder->panel || steps > c.building.panels.size()) return {};
        at = feeder->panel;
        place = placement_of(c.plan, feeder->mark);
        from = feed_from(*at, feed);
        if (!place || place->slots.empty() || !from || is_off(*from, *feeder)) return {};
        Adding above{c, nullptr, *from, at->layout, {}};
        if (place->slots.size() == 1) {
            above.on(at->layout.leg(place->slots.front().space), legs.a + legs.b);
        } else {
            above.on(Leg::a, legs.a);
            above.on(Leg::b, legs.b);
        }
        legs = above.sum;
    }
    return legs;
}

// What runs through the feeder of a panel that lists no circuits is the feeder's own load.
LegAmps through(Case const& c, Panel const& panel, Situation const* s, Feed const& feed) {
    Circuit const* feeder = panel.feeder;
    if (!feeder || feeder->feeds_loads()) return leg_amps(c, panel, s, feed);
    double const own = amps_of(*feeder, s, feed);
    return feeder->poles == 2 ? LegAmps{own, own} : LegAmps{own, 0};
}
} // namespace

std::string words(InUse const& use) {
    if (use.alone) return fmt::format("with {} alone, which is in no situation", use.alone->mark);
    return in_situation(name_of(use.situation));
}

std::vector<InUse> in_use(Case const& c, Panel const& panel, Feed const& feed) {
    std::vector<InUse> all;
    for (Situation const& s : c.building.situations)
        if (is_judged_on(s, panel, feed)) all.push_back({through(c, panel, &s, feed), &s});
    bool const is_first = !panel.feeds.empty() && panel.feeds.front().source == feed.source;
    if (!is_first) return all;
    if (all.empty()) return {{through(c, panel, nullptr, feed), nullptr, nullptr, true}};
    auto const named = all;
    auto const in_none = [&](Circuit const& one) {
        return !one.off && !one.is_source() &&
               std::ranges::all_of(named, [&](InUse const& use) { return use.situation->share[one.number] == 0; });
    };
    Circuit const* feeder = panel.feeder;
    if (feeder && !feeder->feeds_loads()) {
        if (in_none(*feeder)) all.push_back({through(c, panel, nullptr, feed), nullptr, feeder});
        return all;
    }
    for (Circuit const* one : circuits_under(panel))
        if (in_none(*one))
            if (auto const legs = alone(c, panel, *one, feed); legs.a + legs.b > 0) all.push_back({legs, nullptr, one});
    return all;
}

} // namespace legwork
