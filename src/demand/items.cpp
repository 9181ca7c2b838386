// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "demand/items.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

namespace {
constexpr Volts kToNeutral = 120_V;
constexpr int kHotsAndNeutral = 3; // insulated conductors of a cable that has all three

void add_circuits(Panel const& panel, std::vector<Circuit const*>& found) {
    for (Circuit const* c : panel.circuits)
        if (!c->feeds_loads()) found.push_back(c);
    for (Panel const* below : panel.below) add_circuits(*below, found);
}

Phrase label_of(Circuit const& c) { return c.name.empty() ? Phrase(c.mark) : say("load/circuit", c.name, c.mark); }

bool has_neutral(Circuit const& c) {
    if (c.poles == 1 || c.third == ThirdWire::neutral) return true;
    if (c.run.empty()) return false;
    // Two hots, and a third conductor that nobody gives another job.
    auto const* kind = c.run.front().kind;
    return kind && kind->insulated >= kHotsAndNeutral && c.third == ThirdWire::unsaid;
}

// Common practice, no source: less heats no house, so it is what moves the air of a fuel furnace or of coils. What has
// 120 V and no figure is that, too.
constexpr std::int64_t kBlowerUpToVa = 1'800;
void take_blower(LoadItem& i) {
    if (!i.use || !i.use->moves_air) return;
    i.blower = i.va <= kBlowerUpToVa && (i.va > 0 || i.circuit->poles == 1);
    i.blower_va = std::min(i.va, kBlowerUpToVa);
}

// A breaker without a load of its own: a spare, a main, a source that feeds the panel, a feeder whose panel is
// reckoned.
bool is_no_load(Circuit const& c) {
    if (!c.use) return false;
    if (c.use->source || c.use->demand == Demand::source) return true;
    return c.use->demand == Demand::none && !c.load && !c.is(PanelPart::feeder);
}

// A feeder to what the job does not list.
bool feeds_other_building(Circuit const& c) { return c.is(PanelPart::feeder) && c.load; }

bool is_of_a_home(Use const* use) {
    return use &&
           (use->place == UsePlace::kitchen || use->place == UsePlace::bathroom || use->place == UsePlace::laundry);
}

// The building that the dwelling is in: that of the first circuit of a kitchen, bathroom or laundry (a suite behind a
// yard panel); without one the building that needs no name, else the first named.
std::string home_building(Building const& building) {
    std::vector<std::string> buildings;
    for (Circuit const& c : building.circuits) {
        if (is_no_load(c) || c.is(PanelPart::feeder)) continue;
        if (is_of_a_home(c.use)) return c.stands_in();
        buildings.push_back(c.stands_in());
    }
    return buildings.empty() || std::ranges::count(buildings, "") > 0 ? std::string() : buildings.front();
}

// What is plugged in at 240 V is a machine, not lamps and small things; and the floor area of a dwelling covers no
// outbuilding.
Demand demand_of(Circuit const& c, Use const* use, bool elsewhere) {
    if (use && use->demand == Demand::general && (c.poles == 2 || elsewhere)) return Demand::appliance;
    if (use && use->demand != Demand::none) return use->demand;
    return use || c.poles == 2 || elsewhere ? Demand::appliance : Demand::general;
}

void take_figure(LoadItem& item, Volts volts) {
    Circuit const& c = *item.circuit;
    item.known = true;
    // The nameplate first: what counts is what a thing can draw, not what it drew one day.
    if (c.load) {
        item.va = whole_va(*c.load);
    } else if (c.mca) {
        item.va = whole_va(volts * *c.mca);
        item.with_motor_share = item.motor;
        auto reckoned = say("load/amps-by-volts", said(*c.mca), said(volts), figure(item.va));
        item.how =
            item.motor ? say("load/by-mca-of-motor", std::move(reckoned)) : say("load/by-mca", std::move(reckoned));
    } else {
        item.known = false; // a code counts nameplates; what was read is the least it can be
        if (!c.measured) return;
        item.va = whole_va(volts * *c.measured);
        item.how = say("load/as-measured", say("load/amps-by-volts", said(*c.measured), said(volts), figure(item.va)));
    }
}

LoadItem item_of(LoadQuestion const& q, Circuit const& c, std::string const& home) {
    LoadItem item;
    item.circuit = &c;
    item.use = c.use;
    item.elsewhere = q.building.dwelling && c.stands_in() != home;
    item.demand = demand_of(c, item.use, item.elsewhere);
    item.label = label_of(c);
    item.neutral = has_neutral(c);
    item.motor = c.is_motor();
    item.fixed = c.fastened.value_or(item.use && item.use->fixed);
    item.is_new = !c.existing;
    take_figure(item, c.poles == 2 ? q.facts.volts : kToNeutral);
    take_blower(item);
    return item;
}
} // namespace

std::vector<Circuit const*> circuits_under(Panel const& panel) {
    std::vector<Circuit const*> found;
    add_circuits(panel, found);
    std::ranges::sort(found, {}, &Circuit::number);
    return found;
}

bool carries_dwelling(Building const& building, Panel const& panel) {
    if (!building.dwelling) return false;
    auto const service =
        std::ranges::find_if(building.panels, [](Panel const& p) { return !p.feeder_said && !p.is_dc(); });
    if (service == building.panels.end()) return false;
    if (service->number == panel.number) return true;
    auto const loads = [](Panel const& of) {
        return std::ranges::count_if(circuits_under(of),
                                     [](Circuit const* c) { return !is_no_load(*c) && !feeds_other_building(*c); });
    };
    // With a main outside and every circuit in the panel behind it, the feeder carries the dwelling as the service
    // does.
    return panel.feeder_said && loads(panel) > 0 && loads(panel) == loads(*service);
}

namespace {
// What the file says and what then changes no figure: better told than passed over.
void add_ineffective(LoadQuestion const& q, Loads& loads) {
    auto const is_bare = [](LoadItem const& i) { return i.circuit->interlocked && i.demand != Demand::backup_heat; };
    if (auto const bare = only(loads.items, is_bare); !bare.empty())
        loads.notes.push_back(say("load/interlocked-idle", labels_of(bare)));
    auto const& home = q.building.dwelling;
    if (!home || !home->managed) return;
    for (Circuit const* c : home->managed->circuits)
        if (c->feeds_loads()) loads.notes.push_back(say("load/managed-feeder", c->mark, c->fed_panel()->name));
}
} // namespace

Loads loads_of(LoadQuestion const& q) {
    Loads loads;
    auto const& home = q.building.dwelling;
    auto const home_name = home_building(q.building);
    LoadItems off;
    for (Circuit const* c : circuits_under(q.panel)) {
        if (is_no_load(*c)) continue;
        auto item = item_of(q, *c, home_name);
        bool const managed = home && home->managed && home->managed->has(*c);
        bool const other = feeds_other_building(*c);
        (c->off    ? off
         : managed ? loads.managed
         : other   ? loads.other_buildings
                   : loads.items)
            .push_back(std::move(item));
    }
    add_ineffective(q, loads);
    if (!off.empty()) loads.notes.push_back(say("load/not-in-use", labels_of(off)));
    return loads;
}

LoadItems managed_within_limit(LoadQuestion const& q, Loads const& loads) {
    auto all = loads.managed;
    for (LoadItem& i : all) i.va = std::min(i.va, whole_va(q.facts.volts * q.building.dwelling->managed->limit));
    return all;
}

LoadItems managed_in_full(LoadQuestion const& q, Loads const& loads) {
    if (loads.managed.empty() || !std::ranges::all_of(loads.managed, &LoadItem::known)) return {};
    auto const most = whole_va(q.facts.volts * q.building.dwelling->managed->limit);
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

Phrase labels_of(LoadItems const& items) {
    Phrases all;
    for (LoadItem const& i : items) all.push_back(i.label);
    return joined("list/comma", all);
}

void add_unknown(Phrases& unknown, LoadItems const& items) {
    for (LoadItem const& i : items)
        if (!i.known)
            unknown.push_back(i.circuit->measured ? say("load/load-of-measured", i.label)
                                                  : say("load/load-of", i.label));
}

} // namespace legwork
