// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The fuse against the thinnest wire behind it, against the block that it sits in, and against what it carries. One
// finding a fuse: what may burn first.
#include "codebook/stock/dc_wire.h"
#include "reckon/dc_run.h"
#include "reckon/wire_rating.h"
#include "rules/dc/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
constexpr auto by_practice = Gravity::second;
constexpr int kMostLoadPercent = 80; // of a fuse, whose holder else gets hot: common practice

// "pull 12 AWG all the way": the thinnest wire for this fuse; empty where none is thick enough.
std::string wire_for(Amps fuse) {
    for (GaugeName const& g : kGauges)
        if (auto const row = largest_dc_fuse(g.gauge); row && row->largest >= fuse)
            return fmt::format(", or pull {} all the way", wire_name(g.gauge, Metal::copper));
    return {};
}

Finding too_large(Case const& c, Circuit const& circuit, DcThinnest const& wire, DcFuse const& row) {
    bool const practice = row.source == Source::practice;
    bool const small = !row.same_in_all;
    auto f = finding(c, dc_fuse, practice ? by_practice : Gravity::usual, about(circuit, "breaker"),
                     small ? "dc-fuse/small" : "");
    if (!small) f.reference.source = row.source;
    f.message = fmt::format("{}: a {} fuse on {} ({}{}), which is good for {}", circuit.mark,
                            amps(value(*circuit.breaker)), wire_name(wire.gauge, Metal::copper), wire.kind,
                            wire.after.empty() ? "" : " after " + wire.after, amps(value(row.largest)));
    f.fix = fmt::format("Fit a fuse of {} or less{}; or put a fuse of its own where the thin wire begins",
                        amps(value(row.largest)), wire_for(*circuit.breaker));
    return f;
}

Finding above_block(Case const& c, Circuit const& circuit) {
    auto f = finding(c, dc_fuse, by_practice, about(circuit, "breaker"));
    f.reference.source = Source::practice;
    f.message = fmt::format("{}: a {} fuse in a block that is made for {} in all", circuit.mark,
                            amps(value(*circuit.breaker)), amps(value(*circuit.panel->bus)));
    f.fix = "Feed it from the battery by a fuse of its own, or take a larger block";
    return f;
}

Finding too_small(Case const& c, Circuit const& circuit, double amperes) {
    auto f = finding(c, dc_fuse, by_practice, about(circuit, "breaker"));
    f.reference.source = Source::practice;
    f.message = fmt::format("{}: {} on a {} fuse, more than {} % of it", circuit.mark, amps(amperes),
                            amps(value(*circuit.breaker)), kMostLoadPercent);
    f.fix = fmt::format("Take a fuse of {} or more, as the wire allows, or put less on it",
                        amps(amperes * 100 / kMostLoadPercent));
    return f;
}

void judge_fuse(Case const& c, Circuit const& circuit, DcThinnest const& wire, Inspection& seen) {
    auto const row = largest_dc_fuse(wire.gauge);
    if (!row || !circuit.breaker) return;
    Amps const fuse = *circuit.breaker;
    seen.looked();
    if (fuse > row->largest) return seen.found(too_large(c, circuit, wire, *row));
    if (circuit.panel->bus && fuse > *circuit.panel->bus) return seen.found(above_block(c, circuit));
    auto const amperes = dc_amps(circuit);
    if (amperes && *amperes * 100 > value(fuse) * kMostLoadPercent + 0.5)
        return seen.found(too_small(c, circuit, *amperes));
    seen.margin(value(fuse) / value(row->largest), [&] {
        return fmt::format("a fuse of {} on {} of {}", used_of(value(fuse), row->largest),
                           wire_name(wire.gauge, Metal::copper), circuit.mark);
    });
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        if (!circuit.on_dc()) continue;
        if (auto const wire = dc_thinnest(circuit)) judge_fuse(c, circuit, *wire, seen);
    }
    return seen.verdict();
}
} // namespace

constinit Rule const dc_fuse{
    .id = "dc-fuse",
    .asks = "Each wire of a DC circuit has a fuse no larger than the wire is good for, and larger than its load.",
    .why = "A battery gives hundreds of amperes into a short. At 12 V nobody is shocked, but a wire as thin as a "
           "lamp's glows within seconds, and between the battery and the fuse nothing protects it at all. Copper of 18 "
           "AWG takes 7 A, 16 AWG 10 A, 14 AWG 15 A, 12 AWG 20 A, 10 AWG 30 A. A fuse that carries more than 80 % of "
           "its rating for hours heats its holder and ages until it opens for nothing. legwork does not see how far "
           "from the battery a fuse sits, nor whether it is made for the volts: a 32 V blade is none for 48 V.",
    .remedy = "Put the fuse at the battery end, as close to it as can be, sized by the thinnest wire behind it; add a "
              "fuse wherever a thinner wire branches off.",
    .gravity = {.nec = {Grade::error, Grade::warning}, .ce = {Grade::error, Grade::warning}},
    .judge = judge,
};

} // namespace legwork
