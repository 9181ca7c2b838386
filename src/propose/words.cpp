// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "propose/words.h"

#include "codebook/cite.h"
#include "codebook/stock/wire_data.h"
#include "reckon/say.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace legwork {

Step step(Case const& c, std::string says, std::string_view topic) { return {std::move(says), cite(c.book, topic)}; }
Step arithmetic(std::string says) { return {std::move(says), {}}; }

std::string figure(double value, int decimals) {
    double const grain = std::pow(10, decimals);
    auto words = fmt::format("{:.{}f}", std::round(value * grain) / grain, decimals);
    if (decimals > 0) words.erase(words.find_last_not_of('0') + 1);
    if (words.ends_with('.')) words.pop_back();
    return words;
}
std::string exact(Amps a) { return exact(value(a)); }
std::string exact(double a) { return figure(a, 2) + " A"; }

std::string_view use_name(Circuit const& circuit) { return circuit.use ? circuit.use->name : std::string_view(); }

std::string outlets_words(Circuit const& circuit) {
    std::vector<std::string> names;
    for (Receptacle const* r : circuit.outlets)
        if (std::ranges::find(names, r->name) == names.end()) names.emplace_back(r->name);
    return listed(names);
}

std::string range_words(CodeBook const& book, VoltAmperes nameplate) {
    RangeDemand const& r = book.range;
    VoltAmperes const base{r.base_va.value * 1000}, base_up_to{r.base_up_to_va.value * 1000};
    auto const demand = text(range_demand(book, nameplate));
    auto const whole = text(nameplate);
    if (nameplate > base_up_to) {
        if (!r.per_kilowatt)
            return fmt::format("a range of {}: {} + {} % of the {} above {} = {}", whole, text(base),
                               r.excess_percent.value, text(nameplate - base_up_to), text(base_up_to), demand);
        auto const more = ((nameplate - base_up_to).count + 500'000) / 1'000'000;
        return fmt::format("a range of {}: {} + {} x {} % x {}, one for each kW above {} to the nearest, = {}", whole,
                           text(base), more, r.excess_percent.value, text(base), text(base_up_to), demand);
    }
    if (r.small_up_to_va && nameplate <= VoltAmperes{r.small_up_to_va->value * 1000} &&
        range_demand(book, nameplate) < std::min(base, nameplate))
        return fmt::format("a range of {} x {} % = {}", whole, r.small_percent->value, demand);
    return fmt::format("a range of {}: {} for any of up to {}", whole, demand, text(base_up_to));
}

namespace {
// What the lighter leg does to the neutral's part of the heavier one's loss.
std::string neutral_words(double light, int phase_degrees) {
    if (light < 0.005) return {};
    if (phase_degrees == 120) return fmt::format(" - {} / 2", exact(light));
    return (phase_degrees == 0 ? " + " : " - ") + exact(light);
}

std::string ohms_words(double ohms) { return fmt::format("{:.4g} ohm", ohms); }

// Pieces of one wire taken together.
std::vector<DropPiece> by_wire(std::vector<DropPiece> const& run) {
    std::vector<DropPiece> all;
    for (DropPiece const& p : run) {
        auto const same =
            std::ranges::find_if(all, [&](DropPiece const& o) { return o.gauge == p.gauge && o.metal == p.metal; });
        if (same == all.end())
            all.push_back(p);
        else
            same->length += p.length;
    }
    return all;
}
} // namespace

Step resistance_step(RunLength const& run, UnitSystem units) {
    bool const metric = units == UnitSystem::metric;
    std::string sum;
    for (DropPiece const& p : by_wire(run.pieces)) {
        double const per_km = ohms_per_km(p.gauge, p.metal, usual_stranding(p.gauge), kDropCelsius).value_or(0);
        sum += fmt::format("{}{} {} of {} x {}", sum.empty() ? "" : " + ",
                           figure(metric ? metres(p.length) : feet(p.length), 2), metric ? "m" : "ft",
                           wire_name(p.gauge, p.metal),
                           metric ? fmt::format("{:.4g}", per_km) : fmt::format("{:.3g}", per_km * 0.3048));
    }
    return {fmt::format("one wire at {:.0f} °C: {} ohm/{} = {}", kDropCelsius, sum, metric ? "km" : "1000 ft",
                        ohms_words(run.ohms)),
            resistance_reference()};
}

std::string drop_words(CodeBook const& book, BranchDrop const& d) {
    auto const unknown =
        d.load_known ? std::string() : fmt::format(" ({} % of the breaker)", drop_limits(book).unknown_percent.value);
    return fmt::format("2 x {}{} x {} = {:.2f} V, {:.1f} % of {}", exact(d.amperes), unknown, ohms_words(d.run.ohms),
                       d.volts, d.percent(), text(d.of));
}

namespace {
// Where the amperes of a feeder come from, when not from all of its loads at once.
std::string origin(CodeBook const& book, FeederDrop const& d) {
    auto const share = drop_limits(book).unknown_percent.value;
    if (d.calculated) return " (the calculated load)";
    if (!d.load_known) return fmt::format(" (at {} % of its breaker, not every load being known)", share);
    if (d.held)
        return d.in_situation ? " (as much as its breaker lets through)"
                              : fmt::format(" (at {} % of its breaker)", share);
    return d.in_situation ? fmt::format(" ({})", d.when) : std::string();
}
} // namespace

std::string drop_words(CodeBook const& book, FeederDrop const& d) {
    auto const volts = volts_to_neutral(d.kind);
    auto const lost = fmt::format("{} = {:.2f} V, {:.1f} % of {}{}", ohms_words(d.run.ohms),
                                  d.own.worst() / 100 * value(volts), d.own.worst(), text(volts), origin(book, d));
    if (d.feeder->poles == 1) return fmt::format("2 x {} x {}", exact(d.at.a + d.at.b), lost);
    bool const a = d.at.a >= d.at.b;
    double const heavy = a ? d.at.a : d.at.b, light = a ? d.at.b : d.at.a;
    return fmt::format("on leg {} (2 x {}{}) x {}", a ? "A" : "B", exact(heavy),
                       neutral_words(light, phase_degrees(d.kind)), lost);
}

std::string limit_words(DropLimits const& limits, Figure const& limit) {
    return limits.demanded ? fmt::format("at most {} %", limit.value)
                           : fmt::format("up to {} % is advised", limit.value);
}

} // namespace legwork
