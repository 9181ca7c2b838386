// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the panel's own label says of it, and how it hangs.
#include "check/panel_rules.h"
#include "codebook/demands.h"
#include "panel/feeds.h"
#include "panel/handles.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace legwork {

namespace {
// Every breaker of the panel, on a full-size space or half of one; the main is not counted among them.
int poles_of(typed::Job const& job, typed::Panel const& panel) {
    int poles = 0;
    for (typed::Circuit const& c : job.circuits)
        if (c.panel == panel.name && c.use != "main") poles += c.poles;
    return poles;
}

// Circuits whose handle, or half of it, is on when down; `spaces` takes theirs.
std::vector<std::string> on_when_down(Case const& c, typed::Panel const& panel, std::set<int>& spaces) {
    std::vector<std::string> marks;
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (circuit.panel != panel.name) continue;
        Placement const* p = placement_of(c.plan, circuit.mark);
        if (!p) continue;
        bool down = false;
        for (Spot const s : p->slots)
            if (on_is(panel, s.space) == OnIs::down) {
                spaces.insert(s.space);
                down = true;
            }
        if (down) marks.push_back(circuit.mark);
    }
    return marks;
}

bool has_fuses(typed::Job const& job, typed::Panel const& panel) {
    auto const sources = feeds(job, panel);
    return std::ranges::any_of(sources, [](Feed const& f) { return is_dc(f.kind); });
}
} // namespace

Findings panel_circuits(Case const& c) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels) {
        int const poles = poles_of(c.job, panel);
        if (!panel.circuits_max || poles <= *panel.circuits_max) continue;
        int const over = poles - *panel.circuits_max;
        auto f = finding(c, "panel-circuits", Severity::error, {panel.name, {}, "circuits_max"});
        f.message = fmt::format("Panel \"{}\" is marked for at most {}, and its breakers have {} (a two-pole breaker "
                                "counts 2, each half of a half-size one counts 1)",
                                panel.name, plural(static_cast<std::size_t>(*panel.circuits_max), "pole"), poles);
        f.fix = fmt::format("Take out {}, or put those circuits in a sub-panel or a larger panel",
                            plural(static_cast<std::size_t>(over), "pole"));
        found.push_back(std::move(f));
    }
    return found;
}

Findings panel_hang(Case const& c) {
    Findings found;
    if (!demands(c.book).up_is_on) return found;
    for (typed::Panel const& panel : c.job.panels) {
        if (has_fuses(c.job, panel)) continue; // no handles
        std::set<int> spaces;
        auto marks = on_when_down(c, panel, spaces);
        if (marks.empty()) continue;
        std::vector<std::string> numbers;
        for (int const s : spaces) numbers.push_back(std::to_string(s));
        auto f = finding(c, "panel-hang", Severity::warning, {panel.name, marks, "space"});
        f.message = fmt::format("Panel \"{}\" hangs turned {}: the breakers of its upper row are on when their handles "
                                "are down, and {} {} there ({} {})",
                                panel.name, panel.hang == Hang::turned_left ? "left" : "right", listed(marks),
                                marks.size() == 1 ? "stands" : "stand", numbers.size() == 1 ? "space" : "spaces",
                                listed(numbers));
        f.fix = "Hang the panel upright, where handles move sideways, or use the lower row only";
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
