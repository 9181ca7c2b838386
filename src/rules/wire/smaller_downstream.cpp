// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/wire_downstream.h"
#include "rules/wire/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::string where_it_begins(ThinnestPiece const& piece) {
    return piece.after.empty() ? fmt::format("box {}", piece.segment) : piece.after;
}

Finding say(Case const& c, Circuit const& circuit, SmallerWire const& wire) {
    Finding f = finding(c, wire_smaller_downstream, Gravity::usual, about(circuit, "segments"));
    f.message = fmt::format("{}: {} ({}) follows {} after {}", circuit.mark, wire_name(wire.piece.gauge, circuit.metal),
                            wire.piece.kind, wire_name(wire.before, circuit.metal), where_it_begins(wire.piece));
    if (wire.largest_breaker) {
        f.message += fmt::format(": its breaker is {} at most, whatever the wire in the panel is good for.",
                                 amps(value(*wire.largest_breaker)));
        f.fix = fmt::format("The directory states it (\"{}\"): keep that line when the breaker is changed.",
                            largest_breaker_words(wire));
    } else {
        f.message += "; its breaker goes by a motor, a nameplate or a whole dwelling's load, so the directory "
                     "states no largest one.";
        f.fix = "Say in its `note` where the smaller wire begins: the directory prints it.";
    }
    return f;
}

// The cable of its run changes on the way, or may.
bool has_pieces(Circuit const& circuit) {
    return std::ranges::count_if(circuit.run, [](Piece const& p) { return p.kind && p.kind->power; }) > 1;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.on_dc() || !has_pieces(circuit)) continue;
        auto const wire = smaller_wire(c, circuit);
        if (wire && wire->largest_breaker && circuit.breaker > *wire->largest_breaker)
            continue; // wire-breaker-fits speaks
        seen.looked();
        if (wire) seen.found(say(c, circuit, *wire));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const wire_smaller_downstream{
    .id = "wire-smaller-downstream",
    .asks = "Where a smaller cable follows a larger one, the directory states the largest breaker.",
    .why = "Years later somebody opens the panel, sees 12 AWG on a 15 A breaker, and fits 20 A. Behind the first box "
           "lies 14 AWG that nobody sees. The directory is the one place where they will read of it.",
    .remedy = "Leave the line in the directory, or pull the larger wire all the way.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
