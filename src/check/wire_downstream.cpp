// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/wire_downstream.h"

#include "cable/run.h"
#include "check/say.h"
#include "check/wire.h"
#include "codebook/cables.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
bool told_by_its_wire(Case const& c, typed::Circuit const& circuit) {
    Use const* use = use_of(circuit);
    bool const whole_dwelling = c.job.dwelling && fed_panel(c.job, circuit);
    return !is_motor(circuit) && !(use && use->duty_cycle) && !circuit.mca && !circuit.mop && !whole_dwelling;
}

std::optional<Amps> largest_breaker(Case const& c, typed::Circuit const& circuit, Gauge gauge) {
    if (!told_by_its_wire(c, circuit)) return std::nullopt;
    auto const rating = wire_rating(c, circuit, gauge);
    if (!rating) return std::nullopt;
    Use const* use = use_of(circuit);
    return use && use->heating ? heating_breaker(c, *rating) : rating->breaker;
}

std::string where_it_begins(ThinnestPiece const& piece) {
    return piece.after.empty() ? fmt::format("box {}", piece.segment) : piece.after;
}
} // namespace

std::optional<SmallerWire> smaller_wire(Case const& c, typed::Circuit const& circuit) {
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

Findings wire_smaller_downstream(Case const& c) {
    Findings found;
    for (typed::Circuit const& circuit : c.job.circuits) {
        auto const wire = smaller_wire(c, circuit);
        if (!wire) continue;
        if (wire->largest_breaker && circuit.breaker > *wire->largest_breaker) continue; // wire-breaker-fits speaks
        Finding f = finding(c, "wire-smaller-downstream", Severity::note, about(circuit, "segments"));
        f.message =
            fmt::format("{}: {} ({}) follows {} after {}", circuit.mark, wire_name(wire->piece.gauge, circuit.metal),
                        wire->piece.kind, wire_name(wire->before, circuit.metal), where_it_begins(wire->piece));
        if (wire->largest_breaker) {
            f.message += fmt::format(": its breaker is {} at most, whatever the wire in the panel is good for.",
                                     amps(value(*wire->largest_breaker)));
            f.fix = fmt::format("The directory states it (\"{}\"): keep that line when the breaker is changed.",
                                largest_breaker_words(*wire));
        } else {
            f.message += "; its breaker goes by a motor, a nameplate or a whole dwelling's load, so the directory "
                         "states no largest one.";
            f.fix = "Say in its `note` where the smaller wire begins: the directory prints it.";
        }
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
