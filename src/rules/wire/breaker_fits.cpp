// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The breaker against the smallest wire of the run. The plain limit first (small-wire limit, else the next standard
// size above the ampacity), then what the code eases for what the circuit feeds.
#include "reckon/wire_fit.h"
#include "reckon/wire_rating.h"
#include "rules/wire/list.h"
#include "rules/wire/tap.h"

#include <fmt/format.h>

namespace legwork {

namespace {
std::string where_thin(ThinnestPiece const& piece) {
    if (piece.segment == 0) return "";
    return piece.after.empty() ? fmt::format(" after box {}", piece.segment) : " after " + piece.after;
}

std::string remedy(Case const& c, Circuit const& circuit, WireRating const& wire) {
    auto const draw = draw_of(c, circuit);
    auto const gauge = gauge_for(c, circuit, *circuit.breaker, 0_A);
    std::string larger =
        gauge ? fmt::format("pull {} all the way", wire_name(*gauge, wire.metal)) : "split the circuit";
    if (draw && draw->current > wire.breaker) {
        larger.front() = static_cast<char>(larger.front() - 'a' + 'A');
        return larger + ".";
    }
    return fmt::format("Fit a {} breaker, or {}.", amps(value(wire.breaker)), larger);
}

Finding too_large(Case const& c, Circuit const& circuit, ThinnestPiece const& piece, WireRating const& wire,
                  Easement const& ease) {
    bool const eased = !ease.topic.empty() && *circuit.breaker <= ease.doubtful_up_to;
    Finding f = finding(c, wire_breaker_fits, eased ? Gravity::doubtful : Gravity::usual, about(circuit, "breaker"),
                        eased ? ease.topic : wire.topic);
    f.reference.source = eased ? ease.source : wire.source;
    f.message = fmt::format("{}: a {} breaker on {} ({}{}), good for {}", circuit.mark, amps(value(*circuit.breaker)),
                            wire_name(wire.gauge, wire.metal), piece.kind, where_thin(piece), amps(value(wire.base)));
    if (wire.base < wire.breaker) f.message += fmt::format(" and so for a {} breaker", amps(value(wire.breaker)));
    if (wire.cable_held) f.message += fmt::format(" (sheathed cable: {} °C column)", wire.celsius);
    if (!ease.words.empty()) f.message += "; " + ease.words;
    f.message += ".";
    f.fix = remedy(c, circuit, wire);
    return f;
}

Finding not_made(Case const& c, Circuit const& circuit, ThinnestPiece const& piece) {
    Finding f = finding(c, wire_breaker_fits, Gravity::usual, about(circuit, "metal"), "wire-breaker-fits/aluminium");
    f.message =
        fmt::format("{}: {} is too small for any circuit.", circuit.mark, wire_name(piece.gauge, circuit.metal));
    f.fix = "Pull 12 AWG aluminium or larger, sized for the breaker, or copper.";
    return f;
}

// Extra-low-voltage and data cable on a power circuit. Further out a power supply may stand between: a warning.
std::optional<Finding> no_power_cable(Case const& c, Circuit const& circuit) {
    for (std::size_t i = 0; i < circuit.run.size(); ++i) {
        CableKind const* kind = circuit.run[i].kind;
        if (!kind || kind->power) continue;
        Finding f = finding(c, wire_breaker_fits, i == 0 ? Gravity::usual : Gravity::doubtful, about(circuit, "cable"),
                            "wire-breaker-fits/kind");
        f.message = fmt::format("{}: {} is no power cable, and {} a {} V circuit.", circuit.mark, kind->name,
                                i == 0 ? "carries" : "stands at the end of", circuit.poles == 2 ? 240 : 120);
        f.fix = i == 0 ? "Pull a power cable (14/2, 12/2) sized for the breaker."
                       : "If a power supply stands between, list the cable as a [[cable]]; else pull a power cable.";
        return f;
    }
    return std::nullopt;
}

// What the nameplate of an air conditioner or heat pump has against it.
Findings against_nameplate(Case const& c, Circuit const& circuit, WireRating const& wire) {
    Findings found;
    auto const report = [&](std::string message, std::string fix, std::string key) {
        found.push_back(finding(c, wire_breaker_fits, Gravity::usual, about(circuit, std::move(key)),
                                "wire-breaker-fits/nameplate"));
        found.back().message = std::move(message);
        found.back().fix = std::move(fix);
    };
    auto const fit = by_nameplate(circuit, wire);
    if (fit.breaker_too_large)
        report(fmt::format("{}: a {} breaker; the nameplate allows {} at most (mop).", circuit.mark,
                           amps(value(*circuit.breaker)), amps(value(*circuit.mop))),
               fmt::format("Fit a breaker of {} or less.", amps(value(*circuit.mop))), "breaker");
    if (fit.wire_too_small) {
        auto const gauge = gauge_for(c, circuit, 0_A, *circuit.mca);
        report(fmt::format("{}: {} carries {}; the nameplate asks for {} (mca).", circuit.mark,
                           wire_name(wire.gauge, wire.metal), amps(value(wire.ampacity)), amps(value(*circuit.mca))),
               gauge ? fmt::format("Pull {} all the way.", wire_name(*gauge, wire.metal)) : "Pull larger wire.",
               "cable");
    }
    return found;
}

// The breaker on the smallest wire that is known, and on a nameplate.
void judge_breaker(Case const& c, Circuit const& circuit, ThinnestPiece const& piece, Inspection& seen) {
    auto const wire = wire_rating(c, circuit, piece.gauge);
    if (!wire) return seen.found(not_made(c, circuit, piece));
    auto faults = against_nameplate(c, circuit, *wire);
    if (!faults.empty()) return seen.found(std::move(faults));
    Amps most = wire->breaker;
    if (by_nameplate(circuit, *wire).both_said) {
        most = *circuit.mop;
    } else if (*circuit.breaker > most) {
        Easement const ease = easement(c, circuit, *wire);
        if (*circuit.breaker > ease.up_to) return seen.found(too_large(c, circuit, piece, *wire, ease));
        most = ease.up_to;
    }
    seen.margin(value(*circuit.breaker) / value(most), [&] {
        return fmt::format("a breaker of {} on {} of {}", used_of(value(*circuit.breaker), most),
                           wire_name(wire->gauge, wire->metal), circuit.mark);
    });
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.on_dc()) continue;
        auto foreign = no_power_cable(c, circuit);
        auto const piece = thinnest_piece(circuit);
        bool const is_known = piece && circuit.breaker;
        bool const has_tap = circuit.breaker && judge_taps(c, circuit, seen);
        if (foreign || is_known || has_tap) seen.looked();
        seen.found(std::move(foreign));
        if (is_known) judge_breaker(c, circuit, *piece, seen);
    }
    return seen.verdict();
}
} // namespace

constinit Rule const wire_breaker_fits{
    .id = "wire-breaker-fits",
    .asks = "The breaker is no larger than the smallest wire of the whole run allows.",
    .why = "A breaker protects the wire, not the thing plugged in. Too large a breaker lets a wire in the wall get hot "
           "for hours without tripping, and one thin piece behind a box is enough. Copper of 14 AWG stands on 15 A, 12 "
           "AWG on 20 A, 10 AWG on 30 A. Motors and air conditioners go by their own rules and nameplates (mca, mop), "
           "and the CE Code lets fixed heating stand on the next breaker at or above 125 % of its wire.",
    .remedy = "Fit the smaller breaker, or pull the larger wire all the way to the last box.",
    .gravity = {.nec = {Grade::error},
                .ce = {Grade::error},
                .doubt = "sections of the code stand against each other, a tap's size was not read, a power supply may "
                         "stand before what is no power cable, or a motor that does not start or a welder's nameplate "
                         "may let the breaker be"},
    .accept = {Acceptance::Of::none, kUnseen},
    .judge = judge,
};

} // namespace legwork
