// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/dc_run.h"

#include "cable/run.h"
#include "codebook/stock/dc_wire.h"
#include "codebook/stock/strips.h"

#include <algorithm>

namespace legwork {

namespace {
constexpr int kDeepest = 32; // panels below panels

Volts volts_of(Circuit const& c) {
    return c.panel && !c.panel->feeds.empty() ? volts_to_neutral(c.panel->feeds.front().kind) : 0_V;
}

std::optional<double> amps_below(Circuit const& c, int depth) {
    if (volts_of(c) == 0_V) return std::nullopt;
    if (c.feeds_loads() && depth < kDeepest) {
        std::optional<double> sum;
        for (Circuit const* each : c.fed_panel()->circuits) {
            if (each->off || each->is_source()) continue;
            if (auto const one = amps_below(*each, depth + 1)) sum = sum.value_or(0) + *one;
        }
        return sum;
    }
    std::optional<double> most;
    auto const take = [&](double amperes) { most = std::max(most.value_or(0), amperes); };
    if (c.load) take(value(*c.load) / value(volts_of(c)));
    if (c.measured) take(value(*c.measured));
    if (c.mca) take(value(*c.mca));
    return most;
}

double percent_ahead(Circuit const& c, int depth) {
    Circuit const* feeder = c.panel ? c.panel->feeder : nullptr;
    if (!feeder || !feeder->on_dc() || depth > kDeepest) return 0;
    double percent = percent_ahead(*feeder, depth + 1);
    std::vector<DcPiece> pieces;
    for (Piece const& p : feeder->run)
        if (p.kind && p.kind->gauge && p.length) pieces.push_back({*p.kind->gauge, *p.length});
    if (auto const amperes = amps_below(*feeder, 0); amperes && volts_of(*feeder) > 0_V)
        percent += volts_lost(pieces, *amperes) / value(volts_of(*feeder)) * 100;
    return percent;
}
} // namespace

std::optional<DcThinnest> dc_thinnest(Circuit const& circuit) {
    std::optional<DcThinnest> found;
    std::string after;
    for (Piece const& p : circuit.run) {
        if (p.kind && p.kind->gauge && (!found || *p.kind->gauge < found->gauge))
            found = DcThinnest{*p.kind->gauge, p.kind->name, after};
        after = p.to;
    }
    return found;
}

std::optional<double> dc_amps(Circuit const& circuit) { return amps_below(circuit, 0); }

Length DcDrop::length() const {
    Length all;
    for (DcPiece const& p : pieces) all += p.length;
    return all;
}

double volts_lost(std::vector<DcPiece> const& pieces, double amperes) {
    double volts = 0;
    for (DcPiece const& p : pieces) {
        double const ohms = dc_ohms_per_km(p.gauge) * metres(p.length) / 1000;
        volts += strip_drop(amperes, p.channels > 0 ? amperes / p.channels : amperes, ohms);
    }
    return volts;
}

std::optional<DcDrop> dc_drop_of(Circuit const& circuit) {
    auto const amperes = circuit.on_dc() ? dc_amps(circuit) : std::nullopt;
    if (!amperes) return std::nullopt;
    DcDrop d;
    d.whole = !circuit.run.empty();
    for (Piece const& p : circuit.run) {
        if (!p.kind || !p.kind->gauge || !p.length) {
            d.whole = false;
            continue;
        }
        auto const channels = static_cast<int>(channels_of(*p.kind).size());
        d.pieces.push_back({*p.kind->gauge, *p.length, std::max(0, channels - 1)});
    }
    if (d.pieces.empty()) return std::nullopt;
    d.amperes = *amperes;
    d.of = volts_of(circuit);
    d.volts = volts_lost(d.pieces, d.amperes);
    d.ahead_percent = percent_ahead(circuit, 0);
    return d;
}

int dc_drop_limit(Circuit const& circuit) {
    bool const strip =
        std::ranges::any_of(circuit.run, [](Piece const& p) { return p.kind && is_strip_cable(*p.kind); });
    return strip || (circuit.use && circuit.use->lighting) ? 2 : 3;
}

} // namespace legwork
