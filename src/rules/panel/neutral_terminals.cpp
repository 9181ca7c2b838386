// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One terminal for each neutral that lands in the panel.
#include "cable/run.h"
#include "rules/panel/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// A home run whose cable is not known brings a neutral when it is of one pole; of two poles that is not certain.
bool brings_neutral(CableRun const& run, Circuit const& first) {
    if (run.conductors.empty()) return run.kind.empty() && first.poles == 1;
    return std::ranges::find(run.conductors, ConductorJob::neutral, &Conductor::job) != run.conductors.end();
}

// The incoming neutral has its lug, so it is not counted; of a pair the shared one counts once.
int neutrals_in(Panel const& panel, std::vector<CableRun> const& runs) {
    int neutrals = 0;
    for (CableRun const& run : runs) {
        Circuit const* first = run.of->is_home_run() ? run.of->carries.front() : nullptr;
        if (first && first->panel == &panel && !first->is(PanelPart::main) && brings_neutral(run, *first)) ++neutrals;
    }
    return neutrals;
}

Finding say(Case const& c, Panel const& panel, int neutrals) {
    auto f = finding(c, panel_neutral_terminals, Gravity::usual, {panel.name, {}, "neutral_terminals"});
    f.message =
        fmt::format("Panel \"{}\" has {} for neutrals and needs {}: each neutral takes one, the shared neutral "
                    "of a pair counts once",
                    panel.name, plural(static_cast<std::size_t>(*panel.neutral_terminals), "terminal"), neutrals);
    f.fix = fmt::format("Add a neutral bar that the panel's label lists, with {} or more; never put two neutrals under "
                        "one screw",
                        plural(static_cast<std::size_t>(neutrals - *panel.neutral_terminals), "terminal"));
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    std::vector<CableRun> runs; // of all cables, reckoned when the first panel asks for them
    for (Panel const& panel : c.building.panels) {
        if (!panel.neutral_terminals || panel.is_dc()) continue;
        if (runs.empty()) runs = cable_runs(c.building, c.book);
        seen.looked();
        int const neutrals = neutrals_in(panel, runs), terminals = *panel.neutral_terminals;
        if (neutrals > terminals) seen.found(say(c, panel, neutrals));
        seen.margin(static_cast<double>(neutrals) / terminals, [&] {
            return fmt::format("{} of {} neutral terminals in panel \"{}\"", neutrals, terminals, panel.name);
        });
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_neutral_terminals{
    .id = "panel-neutral-terminals",
    .asks = "Each neutral has a terminal of its own.",
    .why = "Two neutrals under one screw: loosen it for one circuit and the other loses its neutral while it is on. "
           "The bar is tried and listed with one wire in each hole. Count the holes before the cables are pulled.",
    .remedy = "Add a neutral bar that the panel's label lists.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .judge = judge,
};

} // namespace legwork
