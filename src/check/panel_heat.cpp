// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// panel-208-heat: heaters made for 240 V between two phases of a wye.
#include "check/panel_rules.h"
#include "check/wire_rating.h"
#include "panel/feeds.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// Plain resistance, sold for one voltage. Ranges and dryers mostly name both on their plates.
bool is_heater(typed::Circuit const& circuit) {
    Use const* use = use_of(circuit);
    if (circuit.poles != 2 || !use) return false;
    return use->heating || use->demand == Demand::water_heating || use->demand == Demand::tankless ||
           use->demand == Demand::space_heat;
}

struct Lessened {
    std::vector<std::string> marks, words; // "H1 1127 VA of 1500 VA"
};

Lessened lessened(Case const& c, typed::Panel const& panel, Feed const& feed) {
    Lessened found;
    auto const volts = volts_between_legs(feed.kind).count;
    for (typed::Circuit const& circuit : c.job.circuits) {
        bool const off = std::ranges::find(feed.off, circuit.mark) != feed.off.end();
        if (circuit.panel != panel.name || off || !is_heater(circuit)) continue;
        found.marks.push_back(circuit.mark);
        if (!circuit.load) {
            found.words.push_back(circuit.mark);
            continue;
        }
        VoltAmperes const gives{circuit.load->count * volts * volts / (240 * 240)};
        found.words.push_back(
            fmt::format("{} {} VA of its {} VA", circuit.mark, whole_va(gives), whole_va(*circuit.load)));
    }
    return found;
}
} // namespace

Findings panel_208_heat(Case const& c) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels)
        for (Feed const& feed : feeds(c.job, panel)) {
            auto const volts = volts_between_legs(feed.kind);
            if (volts == 0_V || volts >= 240_V) continue;
            auto heaters = lessened(c, panel, feed);
            if (heaters.marks.empty()) continue;
            auto f = finding(c, "panel-208-heat", Severity::warning, {panel.name, heaters.marks, "load"});
            f.message =
                fmt::format("{}gives {} V between the hots: a heater made for 240 V gives {:.0f} % of its power "
                            "there: {}",
                            feed.source.empty() ? "The supply " : fmt::format("\"{}\" ", feed.source), volts.count,
                            100.0 * value(volts) * value(volts) / (240 * 240), listed(heaters.words));
            f.fix = fmt::format(
                "Fit heaters made for {} V, or count on that much less heat; where they are made for it, say "
                "so in an [[accept]]",
                volts.count);
            found.push_back(std::move(f));
            break;
        }
    return found;
}

} // namespace legwork
