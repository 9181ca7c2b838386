// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/wire_downstream.h"

#include "cable/run.h"
#include "codebook/stock/cables.h"
#include "words/catalogue.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
bool told_by_its_wire(Case const& c, Circuit const& circuit) {
    Use const* use = circuit.use;
    bool const whole_dwelling = c.building.dwelling && circuit.fed_panel();
    return !circuit.is_motor() && !(use && use->duty_cycle) && !circuit.mca && !circuit.mop && !whole_dwelling;
}

std::optional<Amps> largest_breaker(Case const& c, Circuit const& circuit, Gauge gauge) {
    if (!told_by_its_wire(c, circuit)) return std::nullopt;
    auto const rating = wire_rating(c, circuit, gauge);
    if (!rating) return std::nullopt;
    Use const* use = circuit.use;
    return use && use->heating ? heating_breaker(c, *rating) : rating->breaker;
}
} // namespace

std::optional<SmallerWire> smaller_wire(Case const& c, Circuit const& circuit) {
    auto const piece = thinnest_piece(circuit);
    if (!piece || circuit.on_dc()) return std::nullopt;
    SmallerWire found{*piece, piece->gauge, std::nullopt};
    for (std::size_t i = 0; i < static_cast<std::size_t>(piece->segment); ++i)
        if (CableKind const* kind = circuit.run[i].kind; kind && kind->power)
            found.before = std::max(found.before, *kind->gauge);
    if (found.before == piece->gauge) return std::nullopt;
    found.largest_breaker = largest_breaker(c, circuit, piece->gauge);
    return found;
}

Phrase largest_breaker_phrase(SmallerWire const& wire) {
    if (!wire.largest_breaker) return {};
    return say("breaker/largest", said(*wire.largest_breaker),
               with_unit(fmt::format("{} AWG", name(wire.piece.gauge))));
}

std::string largest_breaker_words(SmallerWire const& wire) { return english().words(largest_breaker_phrase(wire)); }

} // namespace legwork
