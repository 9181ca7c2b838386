// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The wires that bring power to a panel below another.
#include "cable/run.h"
#include "rules/panel/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// The first piece of the feeder that lacks a conductor.
CableRun const* lacking(std::vector<CableRun> const& runs, Circuit const& feeder) {
    auto const at = std::ranges::find_if(runs, [&](CableRun const& run) {
        return run.missing_hots + run.missing_neutrals > 0 && run.is_only_of(feeder);
    });
    return at == runs.end() ? nullptr : &*at;
}

Finding feeder_finding(Case const& c, Circuit const& feeder, std::string key) {
    return finding(c, panel_feeder_wires, Gravity::usual, about(feeder, std::move(key)));
}

Finding one_hot_for_two(Case const& c, Panel const& panel, Circuit const& feeder) {
    auto f = feeder_finding(c, feeder, "poles");
    f.message =
        fmt::format("Panel \"{}\" is taken to have two hots, and its feeder {} has one pole", panel.name, feeder.mark);
    f.fix = fmt::format("Feed it by two poles on three insulated wires and ground (poles = 2); if it has 120 V only, "
                        "write supply = \"120 on both legs\" for panel \"{}\"",
                        panel.name);
    return f;
}

Finding too_few_wires(Case const& c, Panel const& panel, Circuit const& feeder, CableRun const& run) {
    auto f = feeder_finding(c, feeder, "cable");
    auto const insulated =
        std::ranges::count_if(run.conductors, [](Conductor const& w) { return w.job != ConductorJob::ground; });
    f.message = fmt::format("The feeder {} of panel \"{}\" needs {}, a neutral and a ground; its {} has {}",
                            feeder.mark, panel.name, feeder.poles == 2 ? "two hots" : "a hot", run.kind,
                            plural(static_cast<std::size_t>(insulated), "insulated wire"));
    f.fix = fmt::format("Pull a cable of {} insulated wires and ground; the ground never stands in for the neutral",
                        feeder.poles == 2 ? "three" : "two");
    return f;
}

bool is_known(std::vector<CableRun> const& runs, Circuit const& feeder) {
    return std::ranges::any_of(runs,
                               [&](CableRun const& run) { return !run.conductors.empty() && run.is_only_of(feeder); });
}

Verdict judge(Case const& c) {
    Inspection seen;
    std::vector<CableRun> runs; // of all cables, reckoned when the first feeder asks for them
    for (Panel const& panel : c.building.panels) {
        Circuit const* feeder = panel.feeder;
        if (!feeder || panel.is_dc()) continue;
        if (runs.empty()) runs = cable_runs(c.building, c.book);
        bool const lacks_a_hot = feeder->poles == 1 && panel.legs == Legs::two;
        CableRun const* run = lacking(runs, *feeder);
        if (!lacks_a_hot && !run && !is_known(runs, *feeder)) continue;
        seen.looked();
        if (lacks_a_hot)
            seen.found(one_hot_for_two(c, panel, *feeder));
        else if (run)
            seen.found(too_few_wires(c, panel, *feeder, *run));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_feeder_wires{
    .id = "panel-feeder-wires",
    .asks = "A feeder brings its panel every wire that the panel lands: hots, neutral and ground.",
    .why =
        "A sub-panel of 120/240 V lands two hots, a neutral and a ground; one of 120 V a hot, a neutral and a ground. "
        "Without a neutral, 120 V loads return over the ground, and every metal thing in the building is live.",
    .remedy = "Pull a feeder with a wire for each, or let the panel say the supply it really has.",
    .gravity = {.nec = {Grade::error_on_new_work}, .ce = {Grade::error_on_new_work}},
    .judge = judge,
};

} // namespace legwork
