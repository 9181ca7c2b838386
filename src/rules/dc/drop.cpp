// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Volts lost out and back. One finding a fault: a feeder by itself speaks for what hangs on it.
#include "reckon/dc_run.h"
#include "reckon/wire_rating.h"
#include "rules/dc/list.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace legwork {

namespace {
std::string percent(double p) { return fmt::format("{:.1f} %", p); }
// As printed: what reads "3.0 %" is not more than 3 %.
bool is_over(double p, int limit) { return std::round(p * 10) > limit * 10; }

std::string sizes(DcDrop const& d) {
    std::vector<std::string> names;
    for (DcPiece const& p : d.pieces)
        if (auto name = wire_name(p.gauge, Metal::copper); std::ranges::find(names, name) == names.end())
            names.push_back(std::move(name));
    return listed(names);
}

bool is_strip(DcDrop const& d) {
    return std::ranges::any_of(d.pieces, [](DcPiece const& p) { return p.channels > 0; });
}

// "Pull 8 AWG all the way (2.5 %)": the thinnest wire that brings it within the limit.
std::string cure(DcDrop const& d, int limit) {
    for (GaugeName const& g : kGauges) {
        auto larger = d.pieces;
        for (DcPiece& p : larger) p.gauge = std::max(p.gauge, g.gauge);
        double const then = volts_lost(larger, d.amperes) / value(d.of) * 100 + d.ahead_percent;
        if (is_over(then, limit)) continue;
        return fmt::format("Pull {} all the way ({}), shorten the way, or use more volts",
                           wire_name(g.gauge, Metal::copper), percent(then));
    }
    return "Bring the source nearer to the load, divide the load, or use more volts";
}

Finding lost(Case const& c, Circuit const& circuit, DcDrop const& d, int limit) {
    auto f = finding(c, dc_drop, Gravity::usual, about(circuit, "length"));
    f.message = fmt::format("{} loses {} of its voltage ({:.2f} V of {} V) at {} over {}{} of {}, out and back{}, wire "
                            "at 75 °C: more than {} %",
                            circuit.mark, percent(d.percent()), d.percent() / 100 * value(d.of), d.of.count,
                            amps(d.amperes), d.whole ? "" : "at least ", text(d.length(), c.building.units), sizes(d),
                            is_strip(d) ? ", the plus carrying all and each channel its part" : "", limit);
    if (d.ahead_percent > 0) f.message += fmt::format(", {} of it in its feeder", percent(d.ahead_percent));
    f.fix = cure(d, limit);
    return f;
}

// Its feeder alone loses too much, and tells it.
bool is_told_ahead(DcDrop const& d, int limit) { return is_over(d.ahead_percent, limit); }

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        if (!circuit.on_dc() || circuit.off) continue;
        auto const d = dc_drop_of(circuit);
        if (!d) continue;
        int const limit = dc_drop_limit(circuit);
        bool const over = is_over(d->percent(), limit);
        if (!d->whole && !over) continue; // what the rest loses is not known
        seen.looked();
        bool const told = is_told_ahead(*d, limit) && !is_over(d->own_percent(), limit);
        if (over && !told) seen.found(lost(c, circuit, *d, limit));
        seen.margin(d->percent() / limit,
                    [&] { return fmt::format("drop {} of {} % on {}", percent(d->percent()), limit, circuit.mark); });
    }
    return seen.verdict();
}
} // namespace

constinit Rule const dc_drop{
    .id = "dc-drop",
    .asks = "No more than 3 % of the voltage is lost on the way to the load of a DC circuit, 2 % to lights and strips.",
    .why = "3 V lost of 240 V is nothing; 3 V lost of 12 V is a quarter. The same power at 12 V draws ten times the "
           "current of 120 V, so a wire that is safe for its fuse may still leave a pump that stalls and a lamp that "
           "is brown. The way out counts and the way back: twice the length. Of a strip of several colours the plus "
           "carries all of it, each colour its own part back. The limits are common practice.",
    .remedy =
        "Reckon with the way out and back, not just out. Pull thicker wire, shorten the way, or use 24 V or 48 V.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
