// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// wire-breaker-fits: the breaker against the smallest wire of the run. The plain limit first (small-wire limit, else
// the next standard size above the ampacity), then what the code eases for what the circuit feeds.
#include "cable/run.h"
#include "codebook/cables.h"
#include "codebook/cite.h"
#include "reckon/wire_fit.h"
#include "reckon/wire_rating.h"
#include "rules/rule.h"
#include "rules/wire.h"

#include <fmt/format.h>

#include <algorithm>

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
    Finding f = finding(c, "wire-breaker-fits", eased ? Severity::warning : Severity::error, about(circuit, "breaker"),
                        eased ? ease.topic : wire.topic);
    f.reference.source = eased ? ease.source : wire.source;
    if (!eased && wire.source == Source::memory) f.severity = Severity::warning;
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
    Finding f =
        finding(c, "wire-breaker-fits", Severity::error, about(circuit, "metal"), "wire-breaker-fits/aluminium");
    f.message =
        fmt::format("{}: {} is too small for any circuit.", circuit.mark, wire_name(piece.gauge, circuit.metal));
    f.fix = "Pull 12 AWG aluminium or larger, sized for the breaker, or copper.";
    return f;
}

// Extra-low-voltage and data cable on a power circuit. Further out a power supply may stand between: a warning.
std::optional<Finding> no_power_cable(Case const& c, Circuit const& circuit) {
    auto const run = run_of(c.job, circuit);
    for (std::size_t i = 0; i < run.size(); ++i) {
        auto const kind = cable_kind(run[i].kind);
        if (!kind || kind->power) continue;
        Finding f = finding(c, "wire-breaker-fits", i == 0 ? Severity::error : Severity::warning,
                            about(circuit, "cable"), "wire-breaker-fits/kind");
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
        found.push_back(finding(c, "wire-breaker-fits", Severity::error, about(circuit, std::move(key)),
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

void judge(Case const& c, Circuit const& circuit, Findings& found) {
    if (auto f = no_power_cable(c, circuit)) found.push_back(std::move(*f));
    auto const piece = thinnest_piece(c, circuit);
    if (!piece || !circuit.breaker) return;
    auto const wire = wire_rating(c, circuit, piece->gauge);
    if (!wire) return found.push_back(not_made(c, circuit, *piece));
    auto faults = against_nameplate(c, circuit, *wire);
    if (!faults.empty()) return void(std::ranges::move(faults, std::back_inserter(found)));
    if (by_nameplate(circuit, *wire).both_said || *circuit.breaker <= wire->breaker) return;
    Easement const ease = easement(c, circuit, *wire);
    if (*circuit.breaker <= ease.up_to) return;
    found.push_back(too_large(c, circuit, *piece, *wire, ease));
}
} // namespace

Findings wire_breaker_fits(Case const& c) {
    Findings found;
    for (Circuit const& circuit : c.job.circuits)
        if (!on_dc(c, circuit)) judge(c, circuit, found);
    return found;
}

} // namespace legwork
