// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A sub-panel and its feeder that nothing joins: what it draws then weighs on nothing, and nobody judges its wires.
#include "codebook/stock/source_words.h"
#include "rules/panel/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
using FeederList = std::vector<Circuit const*>;

// It is said to be a feeder, and no panel says that it hangs on it. One that has a load is reckoned with that: what it
// feeds need not be in the job.
bool feeds_nothing_known(Circuit const& c) {
    return c.is(PanelPart::feeder) && c.listed && !c.off && c.feeds.empty() && c.supplies_dc.empty();
}

FeederList loose_feeders(Panel const& panel) {
    FeederList found;
    std::ranges::copy_if(panel.circuits, std::back_inserter(found),
                         [](Circuit const* c) { return feeds_nothing_known(*c); });
    return found;
}

// The panel of the job that its `fed_from` names; a service ahead of it is none.
Panel const* named_ahead(Case const& c, Panel const& panel) {
    if (panel.feeder_said || panel.is_dc() || names_service(panel.fed_from) || speaks_of(panel.fed_from, panel.name))
        return nullptr;
    for (auto const* list : {&c.building.panels, &c.building.unlisted})
        for (Panel const& other : *list)
            if (!other.is_dc() && speaks_of(panel.fed_from, other.name)) return &other;
    return nullptr;
}

Finding not_joined(Case const& c, Panel const& panel, Panel const& ahead, FeederList const& feeders) {
    auto f = finding(c, panel_not_joined, Gravity::usual, {panel.name, {}, "fed_from"});
    f.message =
        fmt::format("Panel \"{}\" is said to be fed from \"{}\", and no `feeder` joins it to panel \"{}\": what it "
                    "draws weighs on nothing there, and its feeder's wires, drop and grounds are not judged",
                    panel.name, panel.fed_from, ahead.name);
    auto const which = feeders.size() == 1 ? ahead.name + "/" + feeders.front()->mark : ahead.name + "/MARK";
    if (!ahead.listed)
        f.fix = fmt::format("Write  feeder = \"{}\"  at [[panel]] \"{}\", with feeder_breaker, feeder_cable and "
                            "feeder_length",
                            ahead.name, panel.name);
    else
        f.fix =
            fmt::format("Write  feeder = \"{}\"  at [[panel]] \"{}\"{}", which, panel.name,
                        feeders.size() == 1 ? "" : ", with the mark of the circuit of use \"feeder\" that feeds it");
    return f;
}

Finding leads_nowhere(Case const& c, Circuit const& feeder) {
    auto f = finding(c, panel_not_joined, Gravity::usual, about(feeder, "use"));
    f.message =
        fmt::format("{} is a feeder, and no panel says that it hangs on it: what it carries is not known and not "
                    "judged",
                    feeder.mark);
    f.fix =
        fmt::format("Write  feeder = \"{}/{}\"  at the [[panel]] that it feeds; where that panel is not in the job, "
                    "give {} the load that was reckoned there",
                    panel_name(feeder), feeder.mark, feeder.mark);
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    std::vector<Panel const*> told; // whose feeder a panel's finding asks for
    for (Panel const& panel : c.building.panels) {
        Panel const* ahead = named_ahead(c, panel);
        if (!ahead && !panel.feeder_said) continue;
        seen.looked();
        if (!ahead) continue;
        seen.found(not_joined(c, panel, *ahead, loose_feeders(*ahead)));
        told.push_back(ahead);
    }
    for (Panel const& panel : c.building.panels)
        for (Circuit const* feeder : panel.circuits) {
            if (!feeder->is(PanelPart::feeder) || feeder->off) continue;
            seen.looked();
            bool const is_told = std::ranges::find(told, &panel) != told.end();
            if (feeds_nothing_known(*feeder) && !feeder->load && !is_told) seen.found(leads_nowhere(c, *feeder));
        }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_not_joined{
    .id = "panel-not-joined",
    .asks = "A panel that is fed from another of the job names its feeder, and a feeder its panel.",
    .why =
        "The load of a sub-panel goes through its feeder: its breaker and wires, the drop on the way and the panel "
        "above are judged with it. Where the job does not join them none of that is seen, and all of it looks sound.",
    .remedy = "Write  feeder = \"PANEL/MARK\"  at the sub-panel.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
