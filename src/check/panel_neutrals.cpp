// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// panel-neutral-terminals: one terminal for each neutral that lands in the panel.
#include "cable/run.h"
#include "check/panel_rules.h"
#include "check/wire_rating.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// A home run whose cable is not known brings a neutral when it is of one pole; of two poles that is not certain.
bool brings_neutral(CableRun const& run, typed::Circuit const& first) {
    if (run.conductors.empty()) return run.kind.empty() && first.poles == 1;
    return std::ranges::find(run.conductors, ConductorJob::neutral, &Conductor::job) != run.conductors.end();
}

// The incoming neutral has its lug, so it is not counted; of a pair the shared one counts once.
int neutrals_in(Case const& c, typed::Panel const& panel, std::vector<CableRun> const& runs) {
    int neutrals = 0;
    for (CableRun const& run : runs) {
        typed::Circuit const* first = run.circuits.empty() || run.segment > 0 ? nullptr : circuit_of(c.job, run.circuits[0]);
        if (first && first->panel == panel.name && first->use != "main" && brings_neutral(run, *first)) ++neutrals;
    }
    return neutrals;
}
} // namespace

Findings panel_neutral_terminals(Case const& c) {
    Findings found;
    std::vector<CableRun> runs; // of all cables, reckoned when the first panel asks for them
    for (typed::Panel const& panel : c.job.panels) {
        if (!panel.neutral_terminals || has_fuses(c, panel)) continue;
        if (runs.empty()) runs = cable_runs(c.job, c.book);
        int const neutrals = neutrals_in(c, panel, runs), over = neutrals - *panel.neutral_terminals;
        if (over <= 0) continue;
        auto f = finding(c, "panel-neutral-terminals", Severity::error, {panel.name, {}, "neutral_terminals"});
        f.message =
            fmt::format("Panel \"{}\" has {} for neutrals and needs {}: each neutral takes one, the shared "
                        "neutral of a pair counts once",
                        panel.name, plural(static_cast<std::size_t>(*panel.neutral_terminals), "terminal"), neutrals);
        f.fix = fmt::format("Add a neutral bar that the panel's label lists, with {} or more; never put two neutrals "
                            "under one screw",
                            plural(static_cast<std::size_t>(over), "terminal"));
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
