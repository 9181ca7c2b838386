// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/wire_downstream.h"

#include "cable/run.h"
#include "codebook/cables.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
bool told_by_its_wire(Case const& c, Circuit const& circuit) {
    Use const* use = use_of(circuit);
    bool const whole_dwelling = c.job.dwelling && fed_panel(c.job, circuit);
    return !is_motor(circuit) && !(use && use->duty_cycle) && !circuit.mca && !circuit.mop && !whole_dwelling;
}

std::optional<Amps> largest_breaker(Case const& c, Circuit const& circuit, Gauge gauge) {
    if (!told_by_its_wire(c, circuit)) return std::nullopt;
    auto const rating = wire_rating(c, circuit, gauge);
    if (!rating) return std::nullopt;
    Use const* use = use_of(circuit);
    return use && use->heating ? heating_breaker(c, *rating) : rating->breaker;
}
} // namespace

std::optional<SmallerWire> smaller_wire(Case const& c, Circuit const& circuit) {
    auto const piece = thinnest_piece(c, circuit);
    if (!piece || on_dc(c, circuit)) return std::nullopt;
    SmallerWire found{*piece, piece->gauge, std::nullopt};
    auto const run = run_of(c.job, circuit);
    for (std::size_t i = 0; i < static_cast<std::size_t>(piece->segment); ++i)
        if (auto const kind = cable_kind(run[i].kind); kind && kind->power)
            found.before = std::max(found.before, *kind->gauge);
    if (found.before == piece->gauge) return std::nullopt;
    found.largest_breaker = largest_breaker(c, circuit, piece->gauge);
    return found;
}

std::string largest_breaker_words(SmallerWire const& wire) {
    if (!wire.largest_breaker) return {};
    return fmt::format("max {}: {} AWG downstream", text(*wire.largest_breaker), name(wire.piece.gauge));
}

} // namespace legwork
