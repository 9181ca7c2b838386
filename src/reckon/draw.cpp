// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/draw.h"

namespace legwork {

namespace {
Volts volts_of(Circuit const& circuit, Feed const& feed) {
    if (circuit.poles == 1) return volts_to_neutral(feed.kind);
    return has_two_hots(feed.kind) ? volts_between_legs(feed.kind) : 240_V;
}

VoltAmperes nameplate(Case const& c, Circuit const& circuit) {
    return circuit.use && circuit.use->branch_demand ? range_demand(c.book, *circuit.load) : *circuit.load;
}

Draw by_load(Circuit const& circuit, VoltAmperes load, Volts volts) {
    VoltAmperes const counted = gives_less_on_less(circuit) ? heat_at(load, volts) : load;
    return {counted / volts, counted, volts, load < *circuit.load};
}

// A current said as such is that current, whatever the volts.
Draw by_current(Circuit const& circuit, Amps current, Draw::By by) {
    Volts const volts = lowest_volts(circuit);
    return {current, volts * current, volts, false, by};
}

void take_larger(std::optional<Draw>& most, Draw const& draw) {
    if (!most || draw.current > most->current) most = draw;
}
} // namespace

bool is_draw_known(Circuit const& c) { return c.load || c.measured || c.mca; }

bool is_resistance_heat(Circuit const& c) {
    if (c.poles != 2 || !c.use) return false;
    return c.use->heating || c.use->demand == Demand::water_heating || c.use->demand == Demand::tankless ||
           c.use->demand == Demand::space_heat;
}

bool gives_less_on_less(Circuit const& c) { return is_resistance_heat(c) && !c.load_in_amperes; }

VoltAmperes heat_at(VoltAmperes at_240, Volts volts) {
    return {at_240.count * volts.count * volts.count / (240 * 240)};
}

Volts lowest_volts(Circuit const& circuit) {
    Volts least = 0_V;
    if (Panel const* panel = circuit.panel)
        for (Feed const& feed : panel->feeds)
            if (Volts const volts = volts_of(circuit, feed); least == 0_V || volts < least) least = volts;
    return least;
}

std::optional<Draw> draw_of(Case const& c, Circuit const& circuit) {
    std::optional<Draw> most;
    if (!circuit.panel || circuit.panel->feeds.empty()) return most;
    if (circuit.load)
        for (Feed const& feed : circuit.panel->feeds)
            take_larger(most, by_load(circuit, nameplate(c, circuit), volts_of(circuit, feed)));
    if (circuit.measured) take_larger(most, by_current(circuit, *circuit.measured, Draw::By::reading));
    if (circuit.mca) take_larger(most, by_current(circuit, *circuit.mca, Draw::By::nameplate));
    return most;
}

} // namespace legwork
