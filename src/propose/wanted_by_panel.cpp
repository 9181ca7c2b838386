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

LegAmps worst_legs(Case const& c, Panel const& panel, Circuit const& feeder) {
    LegAmps worst;
    auto const heavier = [&](LegAmps const& l) { return feeder.poles == 1 ? l.a + l.b : std::max(l.a, l.b); };
    for (Feed const& feed : feeds(c.job, panel)) {
        if (is_dc(feed.kind)) continue;
        auto const legs = leg_amps(c, panel, nullptr, feed);
        if (heavier(legs) > heavier(worst)) worst = legs;
    }
    return worst;
}

std::string legs_words(LegAmps const& legs, Circuit const& feeder) {
    if (feeder.poles == 1) return exact(legs.a + legs.b);
    return fmt::format("leg A {}, leg B {}", exact(legs.a), exact(legs.b));
}

Wanted by_main(Case const& c, Panel const& fed, std::string why) {
    Wanted w;
    w.whole_panel = true;
    w.breaker = w.wire = *fed.main;
    w.topic = "panel-main-overloaded";
    w.steps.push_back(step(c, fmt::format("{}; its main lets {} through", std::move(why), text(*fed.main)), w.topic));
    return w;
}
} // namespace

Wanted wanted_by_panel(Case const& c, Panel const& fed) {
    Circuit const& feeder = *circuit_of(c.job, fed.feeder->mark);
    auto const circuits = behind(c, fed);
    auto const unknown = unknown_loads(circuits), nowhere = without_space(c, circuits);
    if (!unknown.empty() || !nowhere.empty()) {
        auto const lacking =
            unknown.empty() ? fmt::format("{} of panel \"{}\" found no space", listed(nowhere), fed.name)
                            : fmt::format("the load of {} in panel \"{}\" is not known", listed(unknown), fed.name);
        if (fed.main) return by_main(c, fed, lacking);
        Wanted w;
        w.find_out = unknown.empty() ? fmt::format("a space for {} in panel \"{}\"", listed(nowhere), fed.name)
                                     : fmt::format("the load of {} in panel \"{}\", or give that panel a main",
                                                   listed(unknown), fed.name);
        return w;
    }
    auto const legs = worst_legs(c, fed, feeder);
    Job const heavier = weighed(c, circuits);
    auto const weighed_legs = worst_legs({heavier, c.plan, c.book}, fed, feeder);
    auto const most = [&](LegAmps const& l) { return feeder.poles == 1 ? l.a + l.b : std::max(l.a, l.b); };
    Wanted w;
    w.whole_panel = true;
    w.topic = "wire-continuous";
    w.source = cite(c.book, w.topic).source;
    w.steps.push_back(
        arithmetic(fmt::format("panel \"{}\" with everything on: {}", fed.name, legs_words(legs, feeder))));
    if (most(weighed_legs) > most(legs))
        w.steps.push_back(step(c,
                               fmt::format("what runs for hours, and the largest motor, at {} %: {}",
                                           c.book.motor_wire_percent.value, legs_words(weighed_legs, feeder)),
                               w.topic));
    w.breaker = w.wire = Amps{static_cast<std::int64_t>(most(weighed_legs) * 1000 + 0.999)};
    if (fed.main && *fed.main < w.breaker) {
        auto capped = by_main(c, fed, "never all of it at once");
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
