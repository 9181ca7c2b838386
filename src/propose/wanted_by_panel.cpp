// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a sub-panel asks of its feeder: what its legs draw with everything on, long-running loads and the largest motor
// at a quarter more, no more than its main lets through.
#include "check/leg_amps.h"
#include "check/say.h"
#include "check/wire_need.h"
#include "codebook/cite.h"
#include "propose/wanted.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// The circuits behind a panel's feeder, those of panels further down in place of their feeders.
std::vector<Circuit const*> behind(Case const& c, Panel const& panel) {
    std::vector<Circuit const*> all;
    for (Circuit const& o : c.job.circuits) {
        if (o.panel != panel.name) continue;
        Panel const* below = feeds_loads(c, o) ? fed_panel(c.job, o) : nullptr;
        if (!below) {
            all.push_back(&o);
            continue;
        }
        auto const more = behind(c, *below);
        all.insert(all.end(), more.begin(), more.end());
    }
    return all;
}

bool counts(Circuit const& circuit) {
    Use const* use = use_of(circuit);
    return !circuit.off && !(use && (use->source || (use->demand == Demand::none && !circuit.load)));
}

std::vector<std::string> unknown_loads(std::vector<Circuit const*> const& circuits) {
    std::vector<std::string> marks;
    for (Circuit const* o : circuits)
        if (counts(*o) && !o->load && !o->measured) marks.push_back(o->mark);
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

void enlarge(Circuit& circuit, std::int64_t num, std::int64_t den) {
    if (circuit.load) circuit.load = VoltAmperes{circuit.load->count * num / den};
    if (circuit.measured) circuit.measured = Amps{circuit.measured->count * num / den};
}

// The job with what runs for hours, and the largest motor, at a quarter more.
Job weighed(Case const& c, std::vector<Circuit const*> const& circuits) {
    Job job = c.job;
    Circuit const* motor = nullptr;
    for (Circuit const* o : circuits)
        if (counts(*o) && is_motor(*o) && (!motor || largest_hot(c, *o) > largest_hot(c, *motor))) motor = o;
    for (Circuit& o : job.circuits) {
        bool const here =
            std::ranges::any_of(circuits, [&](Circuit const* b) { return b->mark == o.mark; }) && counts(o);
        if (!here) continue;
        if (continuous(c, o))
            enlarge(o, 100, c.book.continuous_percent.value);
        else if (motor && motor->mark == o.mark)
            enlarge(o, c.book.motor_wire_percent.value, 100);
    }
    return job;
}

// The hot of a feeder that carries most, from the source that makes it so.
struct Heavy {
    std::optional<Feed> feed;
    Leg leg = Leg::a;
    double amps = 0, other = 0; // of the other leg
};
double on_leg(LegAmps const& l, Leg leg) { return leg == Leg::a ? l.a : l.b; }

Heavy heaviest(Case const& c, Panel const& panel, Circuit const& feeder) {
    Heavy worst;
    for (Feed const& feed : feeds(c.job, panel)) {
        if (is_dc(feed.kind)) continue;
        auto const legs = leg_amps(c, panel, nullptr, feed);
        bool const a = legs.a >= legs.b;
        double const amps = feeder.poles == 1 ? legs.a + legs.b : std::max(legs.a, legs.b);
        if (!worst.feed || amps > worst.amps)
            worst = {feed, a ? Leg::a : Leg::b, amps, feeder.poles == 1 ? 0 : std::min(legs.a, legs.b)};
    }
    return worst;
}

// "H1 12.5 A x 125 % + T1 15 A": what each circuit by itself puts on that hot.
std::string sum_words(Case const& c, Job const& heavier, std::vector<Circuit const*> const& circuits,
                      Panel const& panel, Circuit const& feeder, Heavy const& at) {
    auto const alone = [&](Job job, std::string const& mark) {
        for (Circuit& o : job.circuits)
            if (o.mark != mark && std::ranges::find(circuits, o.mark, &Circuit::mark) != circuits.end())
                o.load = VoltAmperes{}, o.measured.reset();
        auto const legs = leg_amps({job, c.plan, c.book}, panel, nullptr, *at.feed);
        return feeder.poles == 1 ? legs.a + legs.b : on_leg(legs, at.leg);
    };
    std::string sum;
    for (Circuit const* o : circuits) {
        double const plain = alone(c.job, o->mark), more = alone(heavier, o->mark);
        if (more < 0.005) continue;
        sum += fmt::format("{}{} {}", sum.empty() ? "" : " + ", o->mark, exact(plain));
        if (more > plain + 0.001) sum += fmt::format(" x {} %", c.book.motor_wire_percent.value);
    }
    return sum;
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
} // namespace

Wanted wanted_by_panel(Case const& c, Panel const& fed) {
    Circuit const& feeder = *circuit_of(c.job, fed.feeder->mark);
    auto const circuits = behind(c, fed);
    Wanted w;
    if (auto const what = lacking(fed, circuits, c); !what.empty()) {
        if (fed.main) return by_main(c, fed, "not known: " + what);
        w.find_out = what + ", or give that panel a main";
        return w;
    }
    Job const heavier = weighed(c, circuits);
    auto const at = heaviest({heavier, c.plan, c.book}, fed, feeder);
    w.whole_panel = true;
    w.topic = "wire-continuous/feeder";
    w.source = cite(c.book, w.topic).source;
    if (!at.feed) {
        w.find_out = fmt::format("a source for panel \"{}\"", fed.name);
        return w;
    }
    auto const hot = feeder.poles == 1 ? "its one hot" : at.leg == Leg::a ? "leg A" : "leg B";
    auto const other =
        feeder.poles == 1 ? std::string() : fmt::format("; leg {} {}", at.leg == Leg::a ? "B" : "A", exact(at.other));
    w.steps.push_back(
        step(c,
             fmt::format("all of panel \"{}\" at once, what runs for hours and the largest motor at {} %, "
                         "no demand factor taken; {}: {} = {}{}",
                         fed.name, c.book.motor_wire_percent.value, hot,
                         sum_words(c, heavier, circuits, fed, feeder, at), exact(at.amps), other),
             w.topic));
    w.breaker = w.wire = Amps{static_cast<std::int64_t>(at.amps * 1000 + 0.999)};
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

} // namespace legwork
