// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// panel-feeder-wires and panel-sub-neutral: the wires that bring power to a panel below another.
#include "cable/run.h"
#include "check/panel_rules.h"
#include "check/wire_rating.h"
#include "panel/fed_from.h"
#include "panel/feeds.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
bool takes_two_hots(Case const& c, typed::Panel const& panel) {
    auto const sources = feeds(c.job, panel);
    return std::ranges::any_of(sources, [](Feed const& f) { return has_two_hots(f.kind); });
}

// The first piece of the feeder that lacks a conductor.
CableRun const* lacking(std::vector<CableRun> const& runs, typed::Circuit const& feeder) {
    auto const at = std::ranges::find_if(runs, [&](CableRun const& run) {
        return run.missing_hots + run.missing_neutrals > 0 && run.circuits == std::vector{feeder.mark};
    });
    return at == runs.end() ? nullptr : &*at;
}

Finding feeder_finding(Case const& c, typed::Circuit const& feeder, std::string key) {
    return finding(c, "panel-feeder-wires", unless_existing(feeder.existing), about(feeder, std::move(key)));
}

Finding one_hot_for_two(Case const& c, typed::Panel const& panel, typed::Circuit const& feeder) {
    auto f = feeder_finding(c, feeder, "poles");
    f.message =
        fmt::format("Panel \"{}\" is taken to have two hots, and its feeder {} has one pole", panel.name, feeder.mark);
    f.fix = fmt::format("Feed it by two poles on three insulated wires and ground (poles = 2); if it has 120 V only, "
                        "write supply = \"120 on both legs\" for panel \"{}\"",
                        panel.name);
    return f;
}

Finding too_few_wires(Case const& c, typed::Panel const& panel, typed::Circuit const& feeder, CableRun const& run) {
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

std::string fed_by(typed::Panel const& panel) {
    return panel.feeder ? fmt::format("panel \"{}\"", panel.feeder->panel) : fmt::format("\"{}\"", panel.fed_from);
}
} // namespace

Findings panel_feeder_wires(Case const& c) {
    Findings found;
    std::vector<CableRun> runs; // of all cables, reckoned when the first feeder asks for them
    for (typed::Panel const& panel : c.job.panels) {
        typed::Circuit const* feeder = panel.feeder ? circuit_of(c.job, panel.feeder->mark) : nullptr;
        if (!feeder || has_fuses(c, panel)) continue;
        if (runs.empty()) runs = cable_runs(c.job, c.book);
        if (feeder->poles == 1 && takes_two_hots(c, panel))
            found.push_back(one_hot_for_two(c, panel, *feeder));
        else if (CableRun const* run = lacking(runs, *feeder))
            found.push_back(too_few_wires(c, panel, *feeder, *run));
    }
    return found;
}

Findings panel_sub_neutral(Case const& c) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels) {
        bool const below = panel.feeder || named_above(panel.fed_from) == Above::panel;
        if (!below || has_fuses(c, panel)) continue;
        auto f =
            finding(c, "panel-sub-neutral", Severity::note, {panel.name, {}, panel.feeder ? "feeder" : "fed_from"});
        f.message = fmt::format("Panel \"{}\" is fed from {}: neutral and ground are joined at the service only, and "
                                "kept apart here",
                                panel.name, fed_by(panel));
        f.fix =
            "Take out the bonding screw or strap; land white on the neutral bar, which stands off the box, and bare "
            "and green on a ground bar screwed to the box";
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
