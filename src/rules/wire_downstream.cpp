// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/wire_downstream.h"

#include "rules/rule.h"
#include "rules/wire.h"

#include <fmt/format.h>

namespace legwork {

namespace {
std::string where_it_begins(ThinnestPiece const& piece) {
    return piece.after.empty() ? fmt::format("box {}", piece.segment) : piece.after;
}
} // namespace

Findings wire_smaller_downstream(Case const& c) {
    Findings found;
    for (Circuit const& circuit : c.job.circuits) {
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
