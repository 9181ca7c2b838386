// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/wire_rating.h"

#include "cable/run.h"
#include "codebook/cables.h"
#include "codebook/receptacles.h"
#include "panel/feeds.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// More than one receptacle for what people plug in; a duplex counts as two.
bool several_receptacles(Circuit const& c) {
    if (c.outlet_count.value_or(0) > 1) return true;
    int count = 0;
    for (Receptacle const* r : c.outlets) count += r->single || c.single ? 1 : 2;
    return count > 1 || (!c.lists_outlets && c.use && c.use->receptacle);
}

// Non-metallic sheathed cable is made of copper up to 2 AWG; larger, and aluminium, is service-entrance cable.
bool is_sheathed_cable(Circuit const& circuit, Gauge gauge) {
    return circuit.wiring == Wiring::cable && circuit.metal == Metal::copper && gauge <= Gauge::awg2;
}

int terminal_column(Case const& c, Circuit const& circuit, Gauge gauge) {
    bool const large = gauge > Gauge::awg1 || circuit.breaker.value_or(0_A) > 100_A;
    return large ? std::max(circuit.terminals, c.book.terminals_above_100_a) : circuit.terminals;
}

Volts volts_of(Circuit const& circuit, Feed const& feed) {
    if (circuit.poles == 1) return volts_to_neutral(feed.kind);
    return has_two_hots(feed.kind) ? volts_between_legs(feed.kind) : 240_V;
}

// Between the phases of a wye, resistance heat made for 240 V gives less.
VoltAmperes drawn(Circuit const& circuit, VoltAmperes load, Volts volts) {
    if (circuit.poles == 1 || volts == 240_V || circuit.load_in_amperes || !circuit.use || !circuit.use->heating)
        return load;
    return {load.count * volts.count * volts.count / (240 * 240)};
}
} // namespace

std::optional<WireRating> wire_rating(Case const& c, Circuit const& circuit, Gauge gauge) {
    WireRating r;
    r.gauge = gauge;
    r.metal = circuit.metal;
    r.celsius = terminal_column(c, circuit, gauge);
    r.topic = "wire-breaker-fits/large";
    r.source = c.book.ampacities_source;
    if (c.book.cable_column && *c.book.cable_column < r.celsius && is_sheathed_cable(circuit, gauge)) {
        r.celsius = *c.book.cable_column;
        r.cable_held = true;
        r.topic = "wire-breaker-fits/cable";
    }
    auto const carries = ampacity(c.book, gauge, r.metal, r.celsius);
    if (!carries) return std::nullopt;
    r.ampacity = r.base = *carries;
    if (auto const small = small_wire(c.book, gauge, r.metal)) {
        r.base = std::min(*carries, small->breaker);
        r.breaker = small->breaker;
        r.source = small->source;
        r.topic = "wire-breaker-fits";
        return r;
    }
    bool const next_size = c.book.next_size_up_on_receptacles || !several_receptacles(circuit);
    auto const size =
        next_size ? standard_breaker_at_or_above(c.book, r.ampacity) : standard_breaker_at_or_below(c.book, r.ampacity);
    r.breaker = size.value_or(r.ampacity);
    return r;
}

std::optional<Gauge> gauge_for(Case const& c, Circuit const& circuit, Amps breaker, Amps carries) {
    for (auto const& g : kGauges) {
        auto const rating = wire_rating(c, circuit, g.gauge);
        if (rating && rating->breaker >= breaker && rating->base >= carries) return g.gauge;
    }
    return std::nullopt;
}

Amps heating_breaker(Case const& c, WireRating const& wire) {
    auto const share = c.book.heating_breaker_percent.value;
    if (share <= 100) return wire.breaker;
    return standard_breaker_at_or_above(c.book, percent(wire.base, share)).value_or(wire.breaker);
}

std::string wire_name(Gauge gauge, Metal metal) {
    return fmt::format("{} AWG{}", name(gauge), metal == Metal::aluminium ? " aluminium" : "");
}

std::optional<ThinnestPiece> thinnest_piece(Circuit const& circuit) {
    std::optional<ThinnestPiece> thinnest;
    auto const& run = circuit.run;
    for (std::size_t i = 0; i < run.size(); ++i) {
        CableKind const* kind = run[i].kind;
        if (!kind || !kind->power || (thinnest && *kind->gauge >= thinnest->gauge)) continue;
        thinnest = ThinnestPiece{*kind->gauge, kind->name, static_cast<int>(i), i > 0 ? run[i - 1].to : std::string()};
    }
    return thinnest;
}

Volts lowest_volts(Circuit const& circuit) {
    Volts least = 0_V;
    if (Panel const* panel = circuit.panel)
        for (Feed const& feed : panel->feeds)
            if (Volts const volts = volts_of(circuit, feed); least == 0_V || volts < least) least = volts;
    return least;
}

std::optional<Draw> draw_of(Case const& c, Circuit const& circuit) {
    Panel const* panel = circuit.panel;
    if (!panel || (!circuit.load && !circuit.measured)) return std::nullopt;
    Draw most;
    if (circuit.load) {
        bool const range = circuit.use && circuit.use->branch_demand;
        VoltAmperes const load = range ? range_demand(c.book, *circuit.load) : *circuit.load;
        for (Feed const& feed : panel->feeds) {
            Volts const volts = volts_of(circuit, feed);
            VoltAmperes const counted = drawn(circuit, load, volts);
            if (auto const current = counted / volts; most.volts == 0_V || current > most.current)
                most = {current, counted, volts, load < *circuit.load};
        }
    }
    if (circuit.measured && *circuit.measured > most.current) {
        Volts const volts = circuit.poles == 2 ? 240_V : 120_V;
        most = {*circuit.measured, volts * *circuit.measured, volts, false};
    }
    if (most.volts == 0_V) return std::nullopt; // no source
    return most;
}

} // namespace legwork
