// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/wire_fit.h"

#include "reckon/say.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::string_view if_remembered(Source s) { return s == Source::memory ? " (from memory)" : ""; }

// A motor alone on its circuit: said so, or a pump on a circuit of its own. Compressors go by their nameplate (mca,
// mop); receptacles, and a neutral shared with something else, by their wire.
bool only_a_motor(Circuit const& circuit) {
    Use const* use = circuit.use;
    bool const compressor = use && (use->demand == Demand::cooling || use->demand == Demand::heat_pump);
    bool const motor = circuit.motor.value_or(use && use->motor && use->dedicated);
    return motor && !compressor && !(use && use->receptacle) && circuit.outlets.size() < 2 && !circuit.partner();
}

Easement heating(Case const& c, WireRating const& wire) {
    auto const up_to = heating_breaker(c, wire);
    return {up_to, up_to, "wire-breaker-fits/heating", c.book.heating_breaker_percent.source,
            fmt::format("{} for fixed heating", amps(value(up_to)))};
}

// The largest breaker on a motor that will not start. A large one may be set less far above the motor's current.
struct MotorMost {
    Amps any, large; // whatever its size; where a large one is held closer, else the same
    bool sure;       // that it is held closer
};
MotorMost motor_most(CodeBook const& book, Amps current) {
    auto const below = [&](Figure const& share) {
        return standard_breaker_at_or_below(book, percent(current, share.value)).value_or(0_A);
    };
    constexpr Amps large_above = 100_A;
    auto const any = below(book.motor_breaker_most_percent);
    auto const& large = book.motor_breaker_most_above_100_a;
    if (!large || any <= large_above) return {any, any, true};
    return {any, std::max(large_above, below(*large)), !only_warns(large->source)};
}

Easement motor(Case const& c, Amps current) {
    auto const& usual = c.book.motor_breaker_percent;
    auto const up_to = standard_breaker_at_or_above(c.book, percent(current, usual.value)).value_or(0_A);
    auto const most = motor_most(c.book, current);
    auto words = fmt::format("{} for its motor of {}", amps(value(up_to)), amps(value(current)));
    if (most.large < most.any)
        words += fmt::format(", {} where it will not start", amps(value(std::max(up_to, most.large))));
    return {up_to, std::max(up_to, most.sure ? most.large : most.any), "wire-breaker-fits/motor", usual.source, words,
            false};
}

Easement welder(Case const& c, WireRating const& wire) {
    auto const& share = c.book.welder_breaker_percent;
    return {0_A, percent(wire.base, share.value), "wire-breaker-fits/welder", share.source,
            fmt::format("a welder's wire may stand on {} % of its rating{}, by the welder's nameplate only",
                        share.value, if_remembered(share.source))};
}

// A feeder that carries all of one dwelling: the only load of its panel.
Easement dwelling_feeder_of(Case const& c, Circuit const& circuit, WireRating const& wire) {
    if (!c.building.dwelling || !circuit.panel || !circuit.fed_panel()) return {};
    bool const alone = std::ranges::none_of(circuit.panel->circuits, [&](Circuit const* o) {
        return o->number != circuit.number && !o->is_spare() && !o->is_source();
    });
    if (!alone) return {};
    auto const row = dwelling_feeder(c.book, *circuit.breaker);
    if (!row) return {};
    auto const least = circuit.metal == Metal::copper ? row->copper : row->aluminium;
    if (!least || wire.gauge < *least) return {};
    if (wire.cable_held) // argued about; nobody holds that it surely may
        return {0_A,
                *circuit.breaker,
                "wire-breaker-fits/dwelling-sheathed",
                row->source,
                fmt::format("the table for a whole dwelling's feeder would let it stand, and the rule that holds "
                            "sheathed cable to its {} °C column does not",
                            wire.celsius),
                false};
    bool const sure = !only_warns(row->source);
    return {sure ? *circuit.breaker : 0_A, *circuit.breaker, "wire-breaker-fits/dwelling-feeder", row->source,
            fmt::format("as a feeder of a whole dwelling it may do{}", if_remembered(row->source))};
}

// Ratings that may stand on a breaker of this size: the row of the next circuit size; above the table its own.
ReceptacleRow row_for(CodeBook const& book, int breaker) {
    for (ReceptacleRow const& row : book.receptacles)
        if (row.circuit >= breaker) return row;
    return {breaker, breaker, breaker, Source::memory};
}

// The one receptacle of a circuit, and not a duplex.
bool is_lone(Circuit const& c, Receptacle const& r) {
    return (c.single || r.single) && c.outlets.size() == 1 && c.outlet_count.value_or(1) <= 1;
}
} // namespace

Easement easement(Case const& c, Circuit const& circuit, WireRating const& wire) {
    Use const* use = circuit.use;
    if (use && use->heating && c.book.heating_breaker_percent.value > 100) return heating(c, wire);
    if (use && use->duty_cycle) return welder(c, wire);
    if (auto const draw = draw_of(c, circuit); draw && draw->current > 0_A && only_a_motor(circuit))
        return motor(c, draw->current);
    return dwelling_feeder_of(c, circuit, wire);
}

NameplateFit by_nameplate(Circuit const& circuit, WireRating const& wire) {
    return {circuit.mop && *circuit.breaker > *circuit.mop, circuit.mca && wire.ampacity < *circuit.mca,
            circuit.mop && circuit.mca};
}

std::optional<std::string_view> stands_by(Case const& c, Circuit const& circuit, WireRating const& wire) {
    auto const plate = by_nameplate(circuit, wire);
    if (plate.breaker_too_large || plate.wire_too_small) return std::nullopt;
    if (plate.both_said) return "wire-breaker-fits/nameplate";
    if (*circuit.breaker <= wire.breaker) return wire.topic;
    Easement const ease = easement(c, circuit, wire);
    bool const eased = *circuit.breaker <= ease.up_to && !only_warns(ease.source) && ease.to_build_by;
    return eased ? std::optional(ease.topic) : std::nullopt;
}

OutletFit outlet_fit(Case const& c, Circuit const& circuit, Receptacle const& r) {
    Amps const breaker = *circuit.breaker;
    auto const row = row_for(c.book, static_cast<int>((breaker.count + 999) / 1000));
    bool const lone = c.book.lone_receptacle && is_lone(circuit, r);
    bool const fits = lone ? Amps{r.amps * 1000} >= breaker : r.amps >= row.least && r.amps <= row.most;
    bool const disputed = !fits && !lone && row.larger_disputed && r.amps > row.most;
    return {fits, disputed, lone, row, lone ? *c.book.lone_receptacle : row.source};
}

bool outlets_take_breaker(Case const& c, Circuit const& circuit) {
    auto const fits = [&](Receptacle const* r) { return outlet_fit(c, circuit, *r).fits; };
    return !circuit.breaker || std::ranges::all_of(circuit.outlets, fits);
}

} // namespace legwork
