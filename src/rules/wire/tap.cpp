// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/wire/tap.h"

#include "codebook/branch_limits.h"
#include "reckon/wire_rating.h"
#include "rules/wire/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
// No code says how long serving an appliance may make a tap; beyond this somebody should look. Common practice, no
// source.
constexpr Length kLongTap = from_mm(5000);

struct Tap {
    Circuit const& circuit;
    Piece const& piece;
    std::string from; // "after Oven box"
};

Finding about_tap(Case const& c, Tap const& tap, Gravity::Of of, std::string what, std::string fix) {
    auto f = finding(c, wire_breaker_fits, of, about(tap.circuit, "segments"), "wire-breaker-fits/tap");
    f.message = fmt::format("{}: the tap of {} {}", tap.circuit.mark, tap.piece.called, tap.from) + std::move(what);
    f.fix = std::move(fix);
    return f;
}

constexpr std::string_view kFullSize = "Pull wire of the circuit's size up to the appliance";

Amps limit(Figure const& f) { return Amps{f.value * 1000}; }

// What the code says of it; one fault at most.
std::optional<Finding> fault_of(Case const& c, Tap const& tap) {
    auto const& t = branch_limits(c.book).tap;
    Amps const breaker = *tap.circuit.breaker;
    auto const wire = wire_rating(c, tap.circuit, *tap.piece.kind->gauge);
    if (wire && breaker <= wire->breaker) return std::nullopt; // as large as it need be
    if (!t.least || !t.breaker)
        return about_tap(c, tap, Gravity::doubtful,
                         fmt::format(" is smaller than its {} breaker asks for; separate cooking units count as one "
                                     "appliance, and what size their taps may have was not read",
                                     amps(value(breaker))),
                         fmt::format("Ask the inspector first; else {}", "pull wire of the circuit's size up to it"));
    if (!wire || wire->ampacity < limit(*t.least))
        return about_tap(c, tap, Gravity::usual,
                         fmt::format(" is good for {}; a tap to a cooking appliance carries {} or more",
                                     amps(wire ? value(wire->ampacity) : 0), amps(value(limit(*t.least)))),
                         std::string(kFullSize));
    if (breaker > limit(*t.breaker))
        return about_tap(c, tap, Gravity::usual,
                         fmt::format(" leaves a circuit of {}; taps leave cooking circuits of {} at most",
                                     amps(value(breaker)), amps(value(limit(*t.breaker)))),
                         std::string(kFullSize));
    if (t.exactly && breaker < limit(*t.breaker))
        return about_tap(c, tap, Gravity::doubtful,
                         fmt::format(" leaves a circuit of {}; this edition speaks of taps from one of {} only",
                                     amps(value(breaker)), amps(value(limit(*t.breaker)))),
                         fmt::format("Ask the inspector whether it may stand; else {}",
                                     "pull wire of the circuit's size up to the appliance"));
    if (tap.piece.length && *tap.piece.length > kLongTap)
        return about_tap(c, tap, Gravity::doubtful, " is long; it is no longer than serving the appliance takes",
                         "Bring the circuit's own wire to a box beside the appliance");
    return std::nullopt;
}
} // namespace

bool judge_taps(Case const& c, Circuit const& circuit, Inspection& seen) {
    bool any = false;
    for (std::size_t i = 1; i < circuit.run.size(); ++i) {
        Piece const& piece = circuit.run[i];
        if (!is_cooking_tap(circuit, i) || !piece.kind || !piece.kind->power) continue;
        any = true;
        auto const& before = circuit.run[i - 1].to;
        seen.found(fault_of(c, {circuit, piece, before.empty() ? fmt::format("after box {}", i) : "after " + before}));
    }
    return any;
}

} // namespace legwork
