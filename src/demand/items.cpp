// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "demand/items.h"

#include "codebook/cables.h"
#include "units/text.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr Volts kToNeutral = 120_V;
constexpr int kHotsAndNeutral = 3; // insulated conductors of a cable that has all three

bool contains(std::vector<std::string> const& list, std::string_view word) {
    return std::ranges::find(list, word) != list.end();
}

void add_panels_below(typed::Job const& job, std::string const& name, std::vector<std::string>& names) {
    if (contains(names, name)) return;
    names.push_back(name);
    for (typed::Panel const& p : job.panels)
        if (p.feeder && p.feeder->panel == name) add_panels_below(job, p.name, names);
}

bool is_dc(typed::Supply const& s) {
    return s.kind == SupplyKind::dc_12 || s.kind == SupplyKind::dc_24 || s.kind == SupplyKind::dc_48;
}

bool is_dc(typed::Job const& job, typed::Panel const& panel) {
    return (panel.supply && is_dc(*panel.supply)) || std::ranges::any_of(panel.supplies, [&](std::string const& name) {
               typed::Supply const* s = supply_of(job, name);
               return s && is_dc(*s);
           });
}

bool has_circuits(typed::Job const& job, typed::Panel const& panel) {
    return std::ranges::any_of(job.circuits, [&](typed::Circuit const& c) { return c.panel == panel.name; });
}

std::string label_of(typed::Circuit const& c) { return c.name.empty() ? c.mark : fmt::format("{} ({})", c.name, c.mark); }

bool has_neutral(typed::Circuit const& c) {
    if (c.poles == 1 || c.third == "neutral") return true;
    if (c.run.empty()) return false;
    auto const kind = cable_kind(c.run.front().kind);
    return kind && kind->insulated >= kHotsAndNeutral && c.third.empty();
}

// A breaker without a load of its own: a spare, a main, a source that feeds the panel, a feeder whose panel is
// reckoned.
bool is_no_load(typed::Circuit const& c, Use const* use) {
    if (!use) return false;
    if (use->source || use->demand == Demand::source) return true;
    return use->demand == Demand::none && !c.load && use->name != "feeder";
}

// A feeder to what the job does not list.
bool feeds_other_building(typed::Circuit const& c, Use const* use) { return use && use->name == "feeder" && c.load; }

std::string const& building_of(typed::Job const& job, typed::Circuit const& c) {
    typed::Panel const* panel = panel_of(job, c.panel);
    return c.building.empty() && panel ? panel->building : c.building;
}

bool is_of_a_home(Use const* use) {
    return use && (use->place == "kitchen" || use->place == "bathroom" || use->place == "laundry");
}

// The building that the dwelling is in: that of the first circuit of a kitchen, bathroom or laundry (a suite behind a
// yard panel); without one the building that needs no name, else the first named.
std::string home_building(typed::Job const& job) {
    std::vector<std::string> buildings;
    for (typed::Circuit const& c : job.circuits) {
        auto const* use = use_named(c.use);
        if (is_no_load(c, use) || (use && use->name == "feeder")) continue;
        if (is_of_a_home(use)) return building_of(job, c);
        buildings.push_back(building_of(job, c));
    }
    return buildings.empty() || contains(buildings, "") ? std::string() : buildings.front();
}

// What is plugged in at 240 V is a machine, not lamps and small things; and the floor area of a dwelling covers no
// outbuilding.
Demand demand_of(typed::Circuit const& c, Use const* use, bool elsewhere) {
    if (use && use->demand == Demand::general && (c.poles == 2 || elsewhere)) return Demand::appliance;
    if (use && use->demand != Demand::none) return use->demand;
    return use || c.poles == 2 || elsewhere ? Demand::appliance : Demand::general;
}

void take_figure(LoadItem& item, Volts volts) {
    typed::Circuit const& c = *item.circuit;
    item.known = true;
    if (c.load) {
        item.va = whole_va(*c.load);
    } else if (auto const amps = c.mca ? c.mca : c.measured) {
        item.va = whole_va(volts * *amps);
        item.with_motor_share = c.mca && item.motor;
        item.how = fmt::format("{} × {} = {} VA, {}", text(*amps), text(volts), item.va,
                               item.with_motor_share ? "by its least circuit ampacity, 125 % of its motor within it"
                               : c.mca               ? "by its least circuit ampacity"
                                                     : "as measured");
    } else {
        item.known = false;
    }
}

LoadItem item_of(LoadQuestion const& q, typed::Circuit const& c, std::string const& home) {
    LoadItem item;
    item.circuit = &c;
    item.use = use_named(c.use);
    item.elsewhere = q.job.dwelling && building_of(q.job, c) != home;
    item.demand = demand_of(c, item.use, item.elsewhere);
    item.label = label_of(c);
    item.neutral = has_neutral(c);
    item.motor = c.motor.value_or(item.use && item.use->motor);
    item.fixed = item.use && item.use->fixed;
    item.is_new = !c.existing;
    take_figure(item, c.poles == 2 ? q.facts.volts : kToNeutral);
    return item;
}
} // namespace

std::vector<typed::Circuit const*> circuits_under(typed::Job const& job, typed::Panel const& panel) {
    std::vector<std::string> names;
    add_panels_below(job, panel.name, names);
    std::vector<typed::Circuit const*> found;
    for (typed::Circuit const& c : job.circuits) {
        typed::Panel const* fed = fed_panel(job, c);
        if (contains(names, c.panel) && !(fed && has_circuits(job, *fed))) found.push_back(&c);
    }
    return found;
}

bool carries_dwelling(typed::Job const& job, typed::Panel const& panel) {
    if (!job.dwelling) return false;
    auto const service = std::ranges::find_if(job.panels, [&](typed::Panel const& p) { return !p.feeder && !is_dc(job, p); });
    if (service != job.panels.end() && service->name == panel.name) return true;
    auto const loads = [](std::vector<typed::Circuit const*> const& circuits) {
        return std::ranges::count_if(circuits, [](typed::Circuit const* c) {
            auto const* use = use_named(c->use);
            return !is_no_load(*c, use) && !feeds_other_building(*c, use);
        });
    };
    return panel.feeder && service != job.panels.end() &&
           loads(circuits_under(job, panel)) == loads(circuits_under(job, *service)) &&
           loads(circuits_under(job, panel)) > 0;
}

namespace {
// What the file says and what then changes no figure: better told than passed over.
void add_ineffective(LoadQuestion const& q, Loads& loads) {
    auto const is_bare = [](LoadItem const& i) { return i.circuit->interlocked && i.demand != Demand::backup_heat; };
    if (auto const bare = only(loads.items, is_bare); !bare.empty())
        loads.notes.push_back("`interlocked` is of backup heat beside a heat pump, so it changes nothing of " +
                              labels_of(bare));
    auto const& home = q.job.dwelling;
    if (!home || !home->energy_management) return;
    for (auto const& mark : home->energy_management->circuits) {
        typed::Circuit const* c = circuit_of(q.job, mark);
        typed::Panel const* fed = c ? fed_panel(q.job, *c) : nullptr;
        if (fed && has_circuits(q.job, *fed))
            loads.notes.push_back(fmt::format("Energy management names {}, which feeds panel \"{}\": name the circuits "
                                              "there that it holds back. Now they count in full.",
                                              mark, fed->name));
    }
}
} // namespace

Loads loads_of(LoadQuestion const& q) {
    Loads loads;
    auto const& home = q.job.dwelling;
    auto const home_name = home_building(q.job);
    LoadItems off;
    for (typed::Circuit const* c : circuits_under(q.job, q.panel)) {
        if (is_no_load(*c, use_named(c->use))) continue;
        auto item = item_of(q, *c, home_name);
        bool const managed = home && home->energy_management && contains(home->energy_management->circuits, c->mark);
        bool const other = feeds_other_building(*c, item.use);
        (c->off    ? off
         : managed ? loads.managed
         : other   ? loads.other_buildings
                   : loads.items)
            .push_back(std::move(item));
    }
    add_ineffective(q, loads);
    if (!off.empty()) loads.notes.push_back("Wired and not in use, so not counted: " + labels_of(off));
    return loads;
}

LoadItems managed_within_limit(LoadQuestion const& q, Loads const& loads) {
    auto all = loads.managed;
    for (LoadItem& i : all) i.va = std::min(i.va, whole_va(q.facts.volts * q.job.dwelling->energy_management->limit));
    return all;
}

LoadItems managed_in_full(LoadQuestion const& q, Loads const& loads) {
    if (loads.managed.empty() || !std::ranges::all_of(loads.managed, &LoadItem::known)) return {};
    auto const most = whole_va(q.facts.volts * q.job.dwelling->energy_management->limit);
    return sum_va(loads.managed) <= most ? loads.managed : LoadItems{};
}

LoadItems only(LoadItems const& items, std::function<bool(LoadItem const&)> const& wanted) {
    LoadItems found;
    std::ranges::copy_if(items, std::back_inserter(found), wanted);
    return found;
}

LoadItems with_demand(LoadItems const& items, std::initializer_list<Demand> some) {
    return only(items, [&](LoadItem const& i) { return std::ranges::find(some, i.demand) != some.end(); });
}

std::int64_t sum_va(LoadItems const& items) {
    std::int64_t sum = 0;
    for (LoadItem const& i : items) sum += i.va;
    return sum;
}

std::vector<std::int64_t> figures(LoadItems const& items) {
    std::vector<std::int64_t> all;
    for (LoadItem const& i : items) all.push_back(i.va);
    return all;
}

std::vector<std::string> marks_of(LoadItems const& items) {
    std::vector<std::string> all;
    for (LoadItem const& i : items) all.push_back(i.circuit->mark);
    return all;
}

std::string labels_of(LoadItems const& items) {
    std::vector<std::string> all;
    for (LoadItem const& i : items) all.push_back(i.label);
    return fmt::format("{}", fmt::join(all, ", "));
}

void add_unknown(std::vector<std::string>& unknown, LoadItems const& items) {
    for (LoadItem const& i : items)
        if (!i.known) unknown.push_back("the load of " + i.label);
}

} // namespace legwork
