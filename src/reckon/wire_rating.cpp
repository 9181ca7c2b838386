// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/wire_rating.h"

#include "cable/run.h"
#include "codebook/stock/cables.h"
#include "codebook/stock/receptacles.h"
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

// All of its cable, as far as it is known: armour gives its heat off, and goes by its terminals.
bool has_armour(Circuit const& circuit) {
    auto const is = [](Piece const& p) {
        return p.kind && (p.kind->type == CableType::armoured || p.kind->type == CableType::metal_clad ||
                          p.kind->type == CableType::teck);
    };
    return !circuit.run.empty() && std::ranges::all_of(circuit.run, is);
}

// Non-metallic sheathed cable is made of copper up to 2 AWG; larger, and aluminium, is service-entrance cable.
bool is_sheathed_cable(Circuit const& circuit, Gauge gauge) {
    return circuit.wiring == Wiring::cable && circuit.metal == Metal::copper && gauge <= Gauge::awg2 &&
           !has_armour(circuit);
}

int terminal_column(Case const& c, Circuit const& circuit, Gauge gauge) {
    bool const large = gauge > Gauge::awg1 || circuit.breaker.value_or(0_A) > 100_A;
    return large ? std::max(circuit.terminals, c.book.terminals_above_100_a) : circuit.terminals;
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

bool is_cooking_tap(Circuit const& circuit, std::size_t piece) {
    return piece > 0 && circuit.run[piece].tap && circuit.use && circuit.use->cooking;
}

std::optional<ThinnestPiece> thinnest_piece(Circuit const& circuit) {
    std::optional<ThinnestPiece> thinnest;
    auto const& run = circuit.run;
    for (std::size_t i = 0; i < run.size(); ++i) {
        CableKind const* kind = run[i].kind;
        if (!kind || !kind->power || is_cooking_tap(circuit, i) || (thinnest && *kind->gauge >= thinnest->gauge))
            continue;
        thinnest = ThinnestPiece{*kind->gauge, kind->name, static_cast<int>(i), i > 0 ? run[i - 1].to : std::string()};
    }
    return thinnest;
}

} // namespace legwork
