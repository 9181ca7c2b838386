// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a sub-panel asks of its feeder: its load calculation where the code takes demand factors for it, else what its
// legs draw with everything on, long-running loads and the largest motor at a quarter more, no more than its main lets
// through.
#include "codebook/cite.h"
#include "propose/wanted.h"
#include "reckon/draw.h"
#include "reckon/leg_amps.h"
#include "reckon/say.h"
#include "reckon/wire_need.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace legwork {

namespace {
// The circuits behind a panel's feeder, those of panels further down in place of their feeders.
std::vector<Circuit const*> behind(Panel const& panel) {
    std::vector<Circuit const*> all;
    for (Circuit const* o : panel.circuits) {
        if (!o->feeds_loads()) {
            all.push_back(o);
            continue;
        }
        auto const more = behind(*o->fed_panel());
        all.insert(all.end(), more.begin(), more.end());
    }
    return all;
}

bool counts(Circuit const& circuit) {
    Use const* use = circuit.use;
    return !circuit.off && !(use && (use->source || (use->demand == Demand::none && !circuit.load)));
}

std::vector<std::string> unknown_loads(std::vector<Circuit const*> const& circuits) {
    std::vector<std::string> marks;
    for (Circuit const* o : circuits)
        if (counts(*o) && !is_draw_known(*o)) marks.push_back(o->mark);
    return marks;
}

std::vector<std::string> without_space(Case const& c, std::vector<Circuit const*> const& circuits) {
    std::vector<std::string> marks;
    for (Circuit const* o : circuits)
        if (auto const* at = placement_of(c.plan, o->mark); counts(*o) && (!at || at->slots.empty()))
            marks.push_back(o->mark);
    return marks;
}

double largest_hot(Case const& c, Circuit const& circuit) {
    auto const draw = draw_of(c, circuit);
    return draw ? value(draw->current) : 0;
}

// What one circuit by itself puts on the legs of its panel's feeder, and for how much it counts.
struct Share {
    Circuit const* circuit;
    LegAmps legs;
    double percent = 100;
};

// In a situation in which nothing else runs.
LegAmps alone(Case const& c, Circuit const& one, Panel const& panel, Feed const& feed) {
    Situation situation{{}, std::vector<std::int64_t>(c.building.circuits.size())};
    situation.share[one.number] = 1'000'000;
    return leg_amps(c, panel, &situation, feed);
}

// What runs for hours, and the largest motor, at a quarter more.
std::vector<Share> shares(Case const& c, std::vector<Circuit const*> const& circuits, Panel const& panel,
                          Feed const& feed) {
    Circuit const* motor = nullptr;
    for (Circuit const* o : circuits)
        if (counts(*o) && o->is_motor() && (!motor || largest_hot(c, *o) > largest_hot(c, *motor))) motor = o;
    std::vector<Share> all;
    for (Circuit const* o : circuits) {
        if (!counts(*o)) continue;
        Share s{o, alone(c, *o, panel, feed)};
        auto const why = continuous(c, *o);
        if (why && why->breaker != Continuous::Breaker::no)
            s.percent = 10000.0 / static_cast<double>(c.book.continuous_percent.value);
        else if (o == motor)
            s.percent = static_cast<double>(c.book.motor_wire_percent.value);
        all.push_back(s);
    }
    return all;
}

// The hot of a feeder that carries most, from the source that makes it so.
struct Heavy {
    std::vector<Share> shares;
    Leg leg = Leg::a;
    double amps = 0, other = 0; // of the other leg
};
// Of the one hot of a one-pole feeder both legs of its panel.
double on_hot(LegAmps const& l, Leg leg, Circuit const& feeder) {
    if (feeder.poles == 1) return l.a + l.b;
    return leg == Leg::a ? l.a : l.b;
}

std::optional<Heavy> heaviest(Case const& c, std::vector<Circuit const*> const& circuits, Panel const& panel,
                              Circuit const& feeder) {
    std::optional<Heavy> worst;
    for (Feed const& feed : panel.feeds) {
        if (is_dc(feed.kind)) continue;
        auto const all = shares(c, circuits, panel, feed);
        LegAmps sum;
        for (Share const& s : all) sum.a += s.legs.a * s.percent / 100, sum.b += s.legs.b * s.percent / 100;
        Leg const leg = sum.a >= sum.b ? Leg::a : Leg::b;
        if (double const amps = on_hot(sum, leg, feeder); !worst || amps > worst->amps)
            worst = Heavy{all, leg, amps, std::min(sum.a, sum.b)};
    }
    return worst;
}

// "leg A: H1 12.5 A x 125 % + T1 15 A = 30.63 A; leg B 15.63 A"
std::string sum_words(Heavy const& h, Circuit const& feeder) {
    std::string sum;
    for (Share const& s : h.shares) {
        double const amps = on_hot(s.legs, h.leg, feeder);
        if (amps < 0.005) continue;
        sum += fmt::format("{}{} {}", sum.empty() ? "" : " + ", s.circuit->mark, exact(amps));
        if (s.percent > 100) sum += fmt::format(" x {} %", figure(s.percent, 1));
    }
    sum += (sum.empty() ? "" : " = ") + exact(h.amps);
    if (feeder.poles == 1) return "its one hot: " + sum;
    bool const a = h.leg == Leg::a;
    return fmt::format("leg {}: {}; leg {} {}", a ? "A" : "B", sum, a ? "B" : "A", exact(h.other));
}

Wanted by_main(Case const& c, Panel const& fed, std::string why) {
    Wanted w;
    w.whole_panel = true;
    w.breaker = w.wire = *fed.main;
    w.topic = "panel-main-overloaded";
    w.steps.push_back(step(c, fmt::format("{}; its main lets {} through", std::move(why), text(*fed.main)), w.topic));
    return w;
}

// Why nothing can be summed up; empty where it can.
std::string lacking(Panel const& fed, std::vector<Circuit const*> const& circuits, Case const& c) {
    auto const unknown = unknown_loads(circuits), nowhere = without_space(c, circuits);
    if (std::ranges::none_of(circuits, [](Circuit const* o) { return counts(*o); }))
        return fmt::format("the circuits of panel \"{}\" and what they draw", fed.name);
    if (!unknown.empty()) return fmt::format("the load of {} in panel \"{}\"", listed(unknown), fed.name);
    return nowhere.empty() ? std::string() : fmt::format("a space for {} in panel \"{}\"", listed(nowhere), fed.name);
}

Wanted wanted_at_once(Case const& c, Panel const& fed) {
    Circuit const& feeder = *fed.feeder;
    auto const circuits = behind(fed);
    Wanted w;
    if (auto const what = lacking(fed, circuits, c); !what.empty()) {
        if (fed.main) return by_main(c, fed, "not known: " + what);
        w.find_out = what + ", or give that panel a main";
        return w;
    }
    auto const heavy = heaviest(c, circuits, fed, feeder);
    if (!heavy) {
        w.find_out = fmt::format("a source for panel \"{}\"", fed.name);
        return w;
    }
    w.whole_panel = true;
    w.topic = "wire-continuous/feeder";
    w.source = cite(c.book, w.topic).source;
    w.steps.push_back(
        step(c,
             fmt::format("all of panel \"{}\" at once, what runs for hours and the largest motor at {} %, "
                         "no demand factor taken; {}",
                         fed.name, c.book.motor_wire_percent.value, sum_words(*heavy, feeder)),
             w.topic));
    w.breaker = w.wire = Amps{std::llround(heavy->amps * 100) * 10}; // as printed
    if (fed.main && *fed.main < w.breaker) {
        auto capped = by_main(c, fed, "less at any time");
        capped.steps.insert(capped.steps.begin(), w.steps.begin(), w.steps.end());
        return capped;
    }
    if (fed.bus && !fed.main) {
        w.most = *fed.bus;
        w.steps.push_back(
            arithmetic(fmt::format("its bus, with no main ahead of it, takes {} at most", text(*fed.bus))));
    }
    return w;
}
} // namespace

Wanted wanted_by_panel(Case const& c, Panel const& fed) {
    if (auto calculated = wanted_by_calculation(c, fed)) return std::move(*calculated);
    auto w = wanted_at_once(c, fed);
    if (auto what = lacking_in_calculation(c, fed); !what.empty()) w.steps.push_back(arithmetic(std::move(what)));
    return !fed.feeder->breaker && w.find_out.empty() ? unopposed(c, fed, std::move(w)) : w;
}

} // namespace legwork
