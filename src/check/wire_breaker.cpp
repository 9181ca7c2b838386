// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// wire-breaker-fits: the breaker against the smallest wire of the run. The plain limit first (small-wire limit, else
// the next standard size above the ampacity), then what the code eases for what the circuit feeds.
#include "cable/run.h"
#include "check/say.h"
#include "check/wire.h"
#include "check/wire_fit.h"
#include "check/wire_rating.h"
#include "codebook/cables.h"
#include "codebook/cite.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// Raises a limit for some circuits, or says with how much certainty it does.
struct Easement {
    Amps up_to;             // no finding up to here
    Amps warned_up_to;      // a warning up to here; its number is from memory
    std::string_view topic; // of cite.h; empty: none
    Source source = Source::seen;
    std::string words; // "for fixed heating 25 A"
};

// A motor alone on its circuit: said so, or a pump on a circuit of its own. Compressors go by their nameplate (mca,
// mop); receptacles, and a neutral shared with something else, by their wire.
bool only_a_motor(Case const& c, typed::Circuit const& circuit) {
    Use const* use = use_of(circuit);
    bool const compressor = use && (use->demand == Demand::cooling || use->demand == Demand::heat_pump);
    bool const motor = circuit.motor.value_or(use && use->motor && use->dedicated);
    return motor && !compressor && !(use && use->receptacle) && circuit.outlets.size() < 2 && !partner(c.job, circuit);
}

Easement heating(Case const& c, WireRating const& wire) {
    auto const up_to = heating_breaker(c, wire);
    return {up_to, up_to, "wire-breaker-fits/heating", c.book.heating_breaker_percent.source,
            fmt::format("{} for fixed heating", amps(value(up_to)))};
}

Easement motor(Case const& c, Amps current) {
    auto const& usual = c.book.motor_breaker_percent;
    auto const up_to = standard_breaker_at_or_above(c.book, percent(current, usual.value)).value_or(0_A);
    auto const most = standard_breaker_at_or_below(c.book, percent(current, c.book.motor_breaker_most_percent.value));
    return {up_to, std::max(up_to, most.value_or(0_A)), "wire-breaker-fits/motor", usual.source,
            fmt::format("{} for its motor of {}", amps(value(up_to)), amps(value(current)))};
}

Easement welder(Case const& c, WireRating const& wire) {
    auto const& share = c.book.welder_breaker_percent;
    return {0_A, percent(wire.base, share.value), "wire-breaker-fits/welder", share.source,
            fmt::format("a welder's wire may stand on {} % of its rating (from memory), by the welder's nameplate only",
                        share.value)};
}

// A feeder that carries all of one dwelling: the only load of its panel.
Easement dwelling_feeder_of(Case const& c, typed::Circuit const& circuit, WireRating const& wire) {
    bool const alone = std::ranges::none_of(c.job.circuits, [&](typed::Circuit const& o) {
        Use const* use = use_of(o);
        return o.panel == circuit.panel && o.mark != circuit.mark && o.use != "spare" && !(use && use->source);
    });
    if (!c.job.dwelling || !alone || !fed_panel(c.job, circuit)) return {};
    auto const row = dwelling_feeder(c.book, *circuit.breaker);
    if (!row) return {};
    auto const least = circuit.metal == Metal::copper ? row->copper : row->aluminium;
    if (!least || wire.gauge < *least) return {};
    bool const sure = row->source != Source::memory;
    return {sure ? *circuit.breaker : 0_A, *circuit.breaker, "wire-breaker-fits/dwelling-feeder", row->source,
            "as a feeder of a whole dwelling it may do (from memory)"};
}

Easement easement(Case const& c, typed::Circuit const& circuit, WireRating const& wire) {
    Use const* use = use_of(circuit);
    if (use && use->heating && c.book.heating_breaker_percent.value > 100) return heating(c, wire);
    if (use && use->duty_cycle) return welder(c, wire);
    if (auto const draw = draw_of(c, circuit); draw && draw->current > 0_A && only_a_motor(c, circuit))
        return motor(c, draw->current);
    return dwelling_feeder_of(c, circuit, wire);
}

std::string where_thin(ThinnestPiece const& piece) {
    if (piece.segment == 0) return "";
    return piece.after.empty() ? fmt::format(" after box {}", piece.segment) : " after " + piece.after;
}

std::string remedy(Case const& c, typed::Circuit const& circuit, WireRating const& wire) {
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

Finding too_large(Case const& c, typed::Circuit const& circuit, ThinnestPiece const& piece, WireRating const& wire,
                  Easement const& ease) {
    bool const eased = !ease.topic.empty() && *circuit.breaker <= ease.warned_up_to;
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

Finding not_made(Case const& c, typed::Circuit const& circuit, ThinnestPiece const& piece) {
    Finding f =
        finding(c, "wire-breaker-fits", Severity::error, about(circuit, "metal"), "wire-breaker-fits/aluminium");
    f.message =
        fmt::format("{}: {} is too small for any circuit.", circuit.mark, wire_name(piece.gauge, circuit.metal));
    f.fix = "Pull 12 AWG aluminium or larger, sized for the breaker, or copper.";
    return f;
}

// Extra-low-voltage and data cable on a power circuit. Further out a power supply may stand between: a warning.
std::optional<Finding> no_power_cable(Case const& c, typed::Circuit const& circuit) {
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

// Of an air conditioner or heat pump: breaker up to mop, wire from mca. True when the nameplate settles both.
bool by_nameplate(Case const& c, typed::Circuit const& circuit, WireRating const& wire, Findings& found) {
    auto const report = [&](std::string message, std::string fix, std::string key) {
        found.push_back(finding(c, "wire-breaker-fits", Severity::error, about(circuit, std::move(key)),
                                "wire-breaker-fits/nameplate"));
        found.back().message = std::move(message);
        found.back().fix = std::move(fix);
    };
    auto const before = found.size();
    if (circuit.mop && *circuit.breaker > *circuit.mop)
        report(fmt::format("{}: a {} breaker; the nameplate allows {} at most (mop).", circuit.mark,
                           amps(value(*circuit.breaker)), amps(value(*circuit.mop))),
               fmt::format("Fit a breaker of {} or less.", amps(value(*circuit.mop))), "breaker");
    if (circuit.mca && wire.ampacity < *circuit.mca) {
        auto const gauge = gauge_for(c, circuit, 0_A, *circuit.mca);
        report(fmt::format("{}: {} carries {}; the nameplate asks for {} (mca).", circuit.mark,
                           wire_name(wire.gauge, wire.metal), amps(value(wire.ampacity)), amps(value(*circuit.mca))),
               gauge ? fmt::format("Pull {} all the way.", wire_name(*gauge, wire.metal)) : "Pull larger wire.",
               "cable");
    }
    return found.size() > before || (circuit.mop && circuit.mca);
}

void judge(Case const& c, typed::Circuit const& circuit, Findings& found) {
    if (auto f = no_power_cable(c, circuit)) found.push_back(std::move(*f));
    auto const piece = thinnest_piece(c, circuit);
    if (!piece || !circuit.breaker) return;
    auto const wire = wire_rating(c, circuit, piece->gauge);
    if (!wire) return found.push_back(not_made(c, circuit, *piece));
    if (by_nameplate(c, circuit, *wire, found) || *circuit.breaker <= wire->breaker) return;
    Easement const ease = easement(c, circuit, *wire);
    if (*circuit.breaker <= ease.up_to) return;
    found.push_back(too_large(c, circuit, *piece, *wire, ease));
}
} // namespace

std::optional<std::string_view> stands_by(Case const& c, typed::Circuit const& circuit, WireRating const& wire) {
    Findings faults;
    bool const settled = by_nameplate(c, circuit, wire, faults);
    if (!faults.empty()) return std::nullopt;
    if (settled) return "wire-breaker-fits/nameplate";
    if (*circuit.breaker <= wire.breaker) return wire.topic;
    Easement const ease = easement(c, circuit, wire);
    bool const eased = *circuit.breaker <= ease.up_to && ease.source != Source::memory;
    return eased ? std::optional(ease.topic) : std::nullopt;
}

Findings wire_breaker_fits(Case const& c) {
    Findings found;
    for (typed::Circuit const& circuit : c.job.circuits)
        if (!on_dc(c, circuit)) judge(c, circuit, found);
    return found;
}

} // namespace legwork
