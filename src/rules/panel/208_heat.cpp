// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Heaters made for 240 V between two phases of a wye.
#include "reckon/draw.h"
#include "rules/panel/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
struct Lessened {
    std::vector<std::string> marks, words; // "H1 1127 VA of 1500 VA"
};

Lessened lessened(Panel const& panel, Feed const& feed) {
    Lessened found;
    auto const volts = volts_between_legs(feed.kind);
    for (Circuit const* circuit : panel.circuits) {
        if (is_off(feed, *circuit) || !is_resistance_heat(*circuit)) continue;
        found.marks.push_back(circuit->mark);
        if (!circuit->load || circuit->load_in_amperes) {
            found.words.push_back(circuit->mark);
            continue;
        }
        VoltAmperes const gives = heat_at(*circuit->load, volts);
        found.words.push_back(
            fmt::format("{} {} VA of its {} VA", circuit->mark, whole_va(gives), whole_va(*circuit->load)));
    }
    return found;
}

Finding say(Case const& c, Panel const& panel, Feed const& feed, Lessened const& heaters) {
    auto const volts = volts_between_legs(feed.kind);
    auto f = finding(c, panel_208_heat, Gravity::usual, {panel.name, heaters.marks, "load"});
    f.message =
        fmt::format("{}gives {} V between the hots: a heater made for 240 V gives {:.0f} % of its power there: {}",
                    feed.source.empty() ? "The supply " : fmt::format("\"{}\" ", feed.source), volts.count,
                    100.0 * value(volts) * value(volts) / (240 * 240), listed(heaters.words));
    f.fix =
        fmt::format("Fit heaters made for {} V, or count on that much less heat; where they are made for it, say so "
                    "in an [[accept]]",
                    volts.count);
    return f;
}

// By the first source that has less between its hots and heaters on them; they are told once.
void judge_panel(Case const& c, Panel const& panel, Inspection& seen) {
    for (Feed const& feed : panel.feeds) {
        auto const volts = volts_between_legs(feed.kind);
        if (volts == 0_V || volts >= 240_V) continue;
        auto const heaters = lessened(panel, feed);
        if (heaters.marks.empty()) continue;
        seen.looked(static_cast<int>(heaters.marks.size()));
        return seen.found(say(c, panel, feed, heaters));
    }
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) judge_panel(c, panel, seen);
    return seen.verdict();
}
} // namespace

constinit Rule const panel_208_heat{
    .id = "panel-208-heat",
    .asks = "Heaters that hang between two phases of a wye are made for its voltage.",
    .why = "Between two phases of 120/208 there are 208 V. A heater made for 240 V gives (208/240)², three quarters of "
           "its power there: nothing is unsafe, and the room stays cold in January.",
    .remedy = "Fit heaters made for 208 V, or choose them a third larger.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
