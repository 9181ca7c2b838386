// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Room for circuits of the years to come in the panel of a dwelling.
#include "check/panel_rules.h"
#include "codebook/positions.h"
#include "codebook/uses.h"
#include "panel/feeds.h"
#include "panel/layout.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// A panel at the meter that feeds other panels and nothing else.
bool only_feeds_panels(typed::Job const& job, typed::Panel const& panel) {
    auto const others = [&](typed::Circuit const& c) {
        Use const* use = use_named(c.use);
        bool const no_load = c.use == "spare" || (use && use->source);
        return c.panel == panel.name && !no_load && c.use != "feeder" && !fed_panel(job, c);
    };
    auto const feeds_one = [&](typed::Circuit const& c) { return c.panel == panel.name && fed_panel(job, c); };
    return std::ranges::any_of(job.circuits, feeds_one) && std::ranges::none_of(job.circuits, others);
}

// The panel that the service of a dwelling ends in, in no outbuilding, alternating current; behind a panel that only
// feeds others the one it feeds.
bool is_service_panel(typed::Job const& job, typed::Panel const& panel) {
    if (!panel.building.empty() || only_feeds_panels(job, panel)) return false;
    typed::Panel const* above = panel.feeder ? panel_of(job, panel.feeder->panel) : nullptr;
    if (panel.feeder && (!above || !only_feeds_panels(job, *above))) return false;
    auto const sources = feeds(job, panel);
    return std::ranges::none_of(sources, [](Feed const& f) { return is_dc(f.kind); });
}

// It and the sub-panels of the same building below it, in the file's order.
std::vector<typed::Panel const*> with_sub_panels(typed::Job const& job, typed::Panel const& top) {
    std::vector<typed::Panel const*> all{&top};
    for (std::size_t i = 0; i < all.size(); ++i)
        for (typed::Panel const& p : job.panels)
            if (p.feeder && p.feeder->panel == all[i]->name && p.building == top.building &&
                std::ranges::find(all, &p) == all.end())
                all.push_back(&p);
    return all;
}

struct Positions {
    int all = 0, taken = 0;
    int left() const { return all - taken; }
};
// A space that takes half-size breakers is two positions, unless a full-size breaker stands on it. A breaker without a
// wire leaves its position free, and a main among the spaces is no position.
Positions positions_of(Case const& c, typed::Panel const& panel) {
    Layout const layout(panel);
    Positions p;
    auto const worth = [&](int space) { return layout.is_tandem(space) ? 2 : 1; };
    for (int s = 1; s <= panel.spaces; ++s)
        if (!layout.is_blocked(s) && !layout.is_dead(s)) p.all += worth(s);
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (circuit.panel != panel.name || circuit.use == "spare") continue;
        Placement const* at = placement_of(c.plan, circuit.mark);
        int takes = 0;
        if (!at || at->slots.empty())
            takes = circuit.poles;
        else
            for (Spot const s : at->slots) takes += s.half == 0 ? worth(s.space) : 1;
        (circuit.use == "main" ? p.all : p.taken) += circuit.use == "main" ? -takes : takes;
    }
    if (panel.circuits_max) p.all = std::min(p.all, *panel.circuits_max);
    return p;
}

// Electric heat that warms the whole dwelling. A heat pump, with or without its backup, may warm one room only.
enum class CentralHeat { no, perhaps, yes };
CentralHeat central_heat(typed::Job const& job) {
    auto found = CentralHeat::no;
    for (typed::Circuit const& c : job.circuits) {
        if (c.poles != 2) continue; // the blower of a fuel furnace
        if (c.use == "furnace" || c.use == "boiler") return CentralHeat::yes;
        if (c.use == "heat pump" || c.use == "backup heat") found = CentralHeat::perhaps;
    }
    return found;
}

std::optional<Amps> service_of(typed::Job const& job, typed::Panel const& panel) {
    if (panel.main) return panel.main;
    if (panel.feeder) {
        typed::Circuit const* feeder = circuit_of(job, panel.feeder->mark);
        return feeder ? feeder->breaker : std::nullopt;
    }
    std::optional<Amps> largest;
    for (Feed const& f : feeds(job, panel))
        if (f.amps && (!largest || *f.amps > *largest)) largest = f.amps;
    return largest;
}

bool has_240(typed::Job const& job, typed::Panel const& panel) {
    auto const sources = feeds(job, panel);
    return std::ranges::any_of(sources, [](Feed const& f) { return has_two_hots(f.kind); });
}

struct Need {
    int sure, perhaps; // the least that is asked for sure; what is asked if a heat pump counts for nothing
};
Need need_of(Case const& c, PositionsTable const& table, std::optional<Amps> service) {
    auto const& row = positions_row(table, service);
    int const full = row.positions, eased = row.with_central_heating;
    switch (central_heat(c.job)) {
    case CentralHeat::yes: return {eased, eased};
    case CentralHeat::perhaps: return {std::min(full, eased), full};
    case CentralHeat::no: break;
    }
    return {full, full};
}

std::optional<Finding> too_few(Case const& c, PositionsTable const& table, typed::Panel const& panel, bool sure) {
    auto const service = service_of(c.job, panel);
    auto const need = need_of(c, table, service);
    int const here = positions_of(c, panel).all;
    if (here >= need.perhaps) return std::nullopt;
    int together = 0;
    for (typed::Panel const* p : with_sub_panels(c.job, panel)) together += positions_of(c, *p).all;
    sure = sure && together < need.sure && has_240(c.job, panel) && table.source != Source::memory;
    auto f = finding(c, "panel-spare-spaces", sure ? unless_existing(panel.existing) : Severity::warning,
                     {panel.name, {}, "spaces"});
    f.reference.source = table.source;
    auto const of_service = service ? fmt::format("for a service of {}", text(*service)) : "for the smallest service";
    auto const asked = here >= need.sure ? need.perhaps : need.sure;
    f.message = fmt::format("Panel \"{}\" has {}, and a dwelling needs {} {}{}", panel.name,
                            plural(static_cast<std::size_t>(std::max(here, 0)), "breaker position"), asked, of_service,
                            here >= need.sure ? " unless its heating is central and electric" : "");
    if (together > here)
        f.message +=
            fmt::format("; its sub-panels make it {}, and whether they count is for the inspector to say", together);
    f.fix = fmt::format("Fit a panel of {} positions or more (spaces that take half-size breakers, listed under "
                        "`tandem`, are two)",
                        asked);
    return f;
}

std::optional<Finding> full(Case const& c, PositionsTable const& table, typed::Panel const& panel) {
    int left = 0;
    for (typed::Panel const* p : with_sub_panels(c.job, panel)) left += std::max(positions_of(c, *p).left(), 0);
    PanelPlan const* plan = plan_of(c.plan, panel.name);
    if (left >= table.left_free || (plan && !plan->why.empty())) return std::nullopt; // panel-no-room speaks
    auto f = finding(c, "panel-spare-spaces", Severity::warning, {panel.name, {}, "spaces"}, "panel-spare-spaces/left");
    f.reference.source = table.source;
    f.message =
        fmt::format("Panel \"{}\" has {} left free; {} must be left for later circuits", panel.name,
                    left == 0 ? "no position" : plural(static_cast<std::size_t>(left), "position"), table.left_free);
    f.fix = fmt::format("Fit a panel with {} more, or a sub-panel",
                        plural(static_cast<std::size_t>(table.left_free - left), "position"));
    return f;
}
} // namespace

Findings panel_spare_spaces(Case const& c) {
    Findings found;
    PositionsTable const* table = dwelling_positions(c.book);
    if (!table || !c.job.dwelling) return found;
    auto const services =
        std::ranges::count_if(c.job.panels, [&](typed::Panel const& p) { return is_service_panel(c.job, p); });
    for (typed::Panel const& panel : c.job.panels) {
        if (!is_service_panel(c.job, panel)) continue;
        bool const sure = services == 1; // of several, which is the dwelling's is not said
        if (auto f = too_few(c, *table, panel, sure))
            found.push_back(std::move(*f)); // that it is full too comes of it
        else if ((f = full(c, *table, panel)))
            found.push_back(std::move(*f));
    }
    return found;
}

} // namespace legwork
