// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a wire that is tried would lose, by the reckoning of wire-drop.
#include "propose/sizing.h"
#include "reckon/run_drop.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
using FeederDrops = std::vector<std::optional<FeederDrop>>;

// What is lost ahead of a circuit's panel that its own loss is added to; nothing where a feeder at fault speaks for all
// behind it, or none stands ahead. A circuit without a space may land on either leg.
std::optional<double> lost_ahead(Case const& c, FeederDrops const& feeders, Circuit const& circuit) {
    Panel const* panel = circuit.panel;
    if (!panel || !panel->feeder) return std::nullopt;
    auto const& drop = feeders[panel->number];
    if (!drop || is_at_fault(drop_limits(c.book), *drop) || is_told_ahead(c, feeders, *panel)) return std::nullopt;
    if (circuit.poles == 2) return drop->total.between;
    if (!circuit.space) return std::max(drop->total.a, drop->total.b);
    return panel->layout.leg(circuit.space->space) == Leg::a ? drop->total.a : drop->total.b;
}

// The calculated load beside what the panel draws at once: of each leg what loses more.
void take_calculated(Wanted const& wanted, FeederDrop& d) {
    if (!wanted.calculated) return;
    auto const& at = wanted.calculated->at;
    auto const own = feeder_percents(*d.feeder, at, wanted.calculated->kind, d.run.ohms);
    LegPercents const ahead{d.total.a - d.own.a, d.total.b - d.own.b, d.total.between - d.own.between};
    bool const decides = own.worst() > d.own.worst();
    d.own = {std::max(own.a, d.own.a), std::max(own.b, d.own.b), std::max(own.between, d.own.between)};
    d.total = d.own + ahead;
    if (!decides) return;
    d.at = at;
    d.kind = wanted.calculated->kind;
    d.calculated = true;
}
} // namespace

std::optional<WireRefusal> Sizing::too_lossy(Member const& m, Amps breaker, Gauge gauge) const {
    if (m.wanted.whole_panel || m.circuit->fed_panel()) return feeder_too_lossy(m, breaker, gauge);
    auto const drop = branch_drop(c_, tried(m, breaker, gauge));
    if (!drop) return std::nullopt;
    auto const& limits = drop_limits(c_.book);
    auto const wire = wire_name(gauge, m.circuit->metal);
    if (is_over_limit(drop->percent(), limits.part_percent))
        return WireRefusal{fmt::format("{}{} would lose {}, more than {} %", whose(m), wire, drop_words(c_.book, *drop),
                                       limits.part_percent.value),
                           "wire-drop"};
    auto const ahead = lost_ahead(c_, feeder_drops(c_), *m.circuit);
    if (ahead && is_over_limit(*ahead + drop->percent(), limits.total_percent))
        return WireRefusal{fmt::format("{}{} would lose {}, and with {:.1f} % in the feeder {:.1f} %, more than {} %",
                                       whose(m), wire, drop_words(c_.book, *drop), *ahead, *ahead + drop->percent(),
                                       limits.total_percent.value),
                           "wire-drop/total"};
    return std::nullopt;
}

// Reckoned in a whole building, since what a feeder loses hangs on everything behind it.
std::optional<WireRefusal> Sizing::feeder_too_lossy(Member const& m, Amps breaker, Gauge gauge) const {
    Building const trial = building_with(m, breaker, gauge);
    Case const c{trial, c_.plan, c_.book};
    auto drops = feeder_drops(c);
    std::optional<WireRefusal> refused;
    auto const& limits = drop_limits(c.book);
    for (std::size_t i = 0; i < drops.size() && !refused; ++i) {
        auto& d = drops[i];
        if (!d || d->feeder->number != m.circuit->number) continue;
        take_calculated(m.wanted, *d);
        auto const wire = wire_name(gauge, m.circuit->metal);
        if (is_over_limit(d->own.worst(), limits.part_percent))
            refused = WireRefusal{fmt::format("{} would lose {}, more than {} %", wire, drop_words(c.book, *d),
                                              limits.part_percent.value),
                                  "wire-drop/feeder"};
        else if (is_over_limit(d->total.worst(), limits.total_percent))
            refused = WireRefusal{fmt::format("{} would lose {:.1f} % with the feeders ahead of it, more than {} %",
                                              wire, d->total.worst(), limits.total_percent.value),
                                  "wire-drop/feeder"};
        double worst = 0;
        for (Circuit const* o : trial.panels[i].circuits) {
            auto const own = branch_drop(c, *o);
            auto const ahead = own ? lost_ahead(c, drops, *o) : std::nullopt;
            if (ahead && !is_over_limit(own->percent(), limits.part_percent))
                worst = std::max(worst, own->percent() + *ahead);
        }
        if (!refused && is_over_limit(worst, limits.total_percent))
            refused = WireRefusal{fmt::format("{} would lose {:.1f} % with the branches behind it, more than {} %",
                                              wire, worst, limits.total_percent.value),
                                  "wire-drop/total"};
    }
    return refused;
}

void Sizing::say_drop(Member const& m, Amps breaker, Gauge gauge, std::vector<Step>& steps) const {
    auto const circuit = tried(m, breaker, gauge);
    auto const run = run_length(circuit);
    if (!run.whole)
        return steps.push_back(arithmetic(whose(m) + "a length is not known, so its voltage drop was not reckoned"));
    bool const feeder = m.wanted.whole_panel || circuit.fed_panel();
    auto const drop = feeder ? std::nullopt : branch_drop(c_, circuit);
    if (!feeder && !drop) return;
    auto resistance = resistance_step(run, c_.building.units);
    auto const differs = [&](Member const& o) {
        return resistance_step(run_length(tried(o, breaker, gauge)), c_.building.units).says != resistance.says;
    };
    if (std::ranges::any_of(members_, differs)) resistance.says = whose(m) + resistance.says;
    auto const said = [&](Step const& s) { return s.says == resistance.says; };
    if (std::ranges::none_of(steps, said)) steps.push_back(resistance);
    if (feeder) return say_feeder_drop(m, breaker, gauge, steps);
    auto const& limits = drop_limits(c_.book);
    steps.push_back(step(c_,
                         fmt::format("{}it loses {}; {}", whose(m), drop_words(c_.book, *drop),
                                     limit_words(limits, limits.part_percent)),
                         "wire-drop"));
    if (auto const ahead = lost_ahead(c_, feeder_drops(c_), *m.circuit))
        steps.push_back(step(c_,
                             fmt::format("{}with {:.1f} % in the feeder: {:.1f} %; {}", whose(m), *ahead,
                                         *ahead + drop->percent(), limit_words(limits, limits.total_percent)),
                             "wire-drop/total"));
}

void Sizing::say_feeder_drop(Member const& m, Amps breaker, Gauge gauge, std::vector<Step>& steps) const {
    Building const trial = building_with(m, breaker, gauge);
    auto const& limits = drop_limits(c_.book);
    for (auto d : feeder_drops({trial, c_.plan, c_.book})) {
        if (!d || d->feeder->number != m.circuit->number) continue;
        take_calculated(m.wanted, *d);
        bool const beside = m.wanted.calculated && !d->calculated; // say which of the two decides
        steps.push_back(step(c_,
                             fmt::format("it loses {}{}; {}", drop_words(c_.book, *d),
                                         beside ? ", which is more than with the calculated load" : "",
                                         limit_words(limits, limits.part_percent)),
                             "wire-drop/feeder"));
        if (d->total.worst() > d->own.worst() + 0.005)
            steps.push_back(step(c_,
                                 fmt::format("with the feeders ahead of it {:.1f} %; {}", d->total.worst(),
                                             limit_words(limits, limits.total_percent)),
                                 "wire-drop/feeder"));
    }
}

} // namespace legwork
