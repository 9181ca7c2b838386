// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/job.h"
#include "twin.h"

#include <algorithm>
#include <map>

namespace twin {

namespace {
struct Row {
    Kind kind;
    bool fixed = false, motor = false;
    bool lasts = false;     // hours at full load: storage water heaters, heating, vehicle chargers
    bool not_lasts = false; // known not to: cooking, drying, tools, what is plugged in
};

// What the trade knows of each use.
std::map<std::string, Row> const& rows() {
    using enum Kind;
    static std::map<std::string, Row> const table{
        {"receptacles", {light, false, false, false, true}},
        {"lighting", {light}},
        {"kitchen counter", {kitchen, false, false, false, true}},
        {"refrigerator", {light}},
        {"dishwasher", {appliance, true}},
        {"disposer", {appliance, true, true, false, true}},
        {"microwave", {appliance, false, false, false, true}},
        {"range", {cooking, false, false, false, true}},
        {"cooktop", {cooking, false, false, false, true}},
        {"oven", {cooking, false, false, false, true}},
        {"laundry", {laundry, false, false, false, true}},
        {"dryer", {dryer, false, false, false, true}},
        {"bathroom", {light, false, false, false, true}},
        {"bath fan", {light, true, true}},
        {"outdoor", {light, false, false, false, true}},
        {"garage", {light, false, false, false, true}},
        {"workshop", {light, false, false, false, true}},
        {"well pump", {appliance, true, true}},
        {"door opener", {appliance, true, true, false, true}},
        {"gate operator", {appliance, true, true, false, true}},
        {"pump", {appliance, true, true}},
        {"outdoor pump", {appliance, true, true}},
        {"attic fan", {appliance, true, true}},
        {"pool pump", {appliance, true, true}},
        {"pool heater", {full, true}},
        {"hydromassage tub", {appliance, true, true, false, true}},
        {"sauna", {appliance, true, false, false, true}},
        {"kiln", {appliance, false, false, true}},
        {"electric fireplace", {appliance}},
        {"battery charger", {appliance}},
        {"air handler", {heat, true, false, true}},
        {"sump pump", {appliance, true, true}},
        {"water heater", {appliance, true, false, true}},
        {"heat pump water heater", {appliance, true, false, true}},
        {"tankless water heater", {full, true}},
        {"furnace", {heat, true, false, true}},
        {"boiler", {heat, true, false, true}},
        {"heat pump", {pump, true, true}},
        {"backup heat", {backup, true, false, true}},
        {"air conditioner", {cool, true, true}},
        {"baseboard", {heat, true, false, true}},
        {"heating", {heat, true, false, true}},
        {"floor heating", {heat, true, false, true}},
        {"vehicle charger", {vehicle, true, false, true}},
        {"hot tub", {full, true}},
        {"welder", {appliance, false, false, false, true}},
        {"appliance", {appliance}},
        {"central vacuum", {appliance, false, true, false, true}},
        {"freezer", {appliance}},
        {"smoke alarms", {light, true}},
        {"network", {light}},
        {"power supply", {light, true}},
        {"surge protector", {appliance, true}},
        {"feeder", {appliance, true}},
        {"spare", {appliance}},
    };
    return table;
}

bool in(std::vector<std::string> const& list, std::string const& word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

// A spare with a wire and a load is none: then nobody knows what it is.
std::string use_of(typed::Circuit const& c) {
    bool const draws = (c.load && c.load->count > 0) || (c.measured && c.measured->count > 0);
    return c.use == "spare" && draws && !c.run.empty() ? std::string() : c.use;
}

// Sources feed the panel; a spare or a surge protector draws nothing unless the file says so.
bool draws(typed::Circuit const& c) {
    if (in({"generator inlet", "solar", "battery", "main"}, c.use)) return false;
    return !(in({"spare", "surge protector"}, use_of(c)) && !c.load);
}

void walk(typed::Job const& job, std::string const& name, std::vector<typed::Circuit const*>& found) {
    for (typed::Circuit const& c : job.circuits) {
        if (c.panel != name) continue;
        typed::Panel const* below = nullptr;
        for (typed::Panel const& p : job.panels)
            if (p.feeder && p.feeder->panel == c.panel && p.feeder->mark == c.mark) below = &p;
        bool const feeds = below && std::any_of(job.circuits.begin(), job.circuits.end(),
                                                [&](auto& o) { return o.panel == below->name; });
        if (!feeds) found.push_back(&c);
    }
    for (typed::Panel const& p : job.panels)
        if (p.feeder && p.feeder->panel == name) walk(job, p.name, found);
}

// In the file's order, so that of two equal motors the same is named.
std::vector<typed::Circuit const*> under(typed::Job const& job, typed::Panel const& panel) {
    std::vector<typed::Circuit const*> found;
    walk(job, panel.name, found);
    std::sort(found.begin(), found.end());
    return found;
}

bool is_beyond(typed::Circuit const& c) { return c.use == "feeder" && c.load; }

int count_drawing(typed::Job const& job, typed::Panel const& panel) {
    int n = 0;
    for (auto const* c : under(job, panel)) n += draws(*c) && !is_beyond(*c);
    return n;
}

std::string building_of(typed::Job const& job, typed::Circuit const& c) {
    return c.building.empty() ? panel_of(job, c.panel)->building : c.building;
}

// People live where they cook and wash; else where no building is named; where all is named, in the first.
bool in_the_home(typed::Job const& job, typed::Circuit const& c) {
    static std::vector<std::string> const living{
        "kitchen counter", "refrigerator", "dishwasher", "disposer", "microwave",       "range", "cooktop", "oven",
        "laundry",         "dryer",        "bathroom",   "bath fan", "hydromassage tub"};
    std::vector<std::string> names;
    for (typed::Circuit const& one : job.circuits)
        if (draws(one) && one.use != "feeder" && in(living, one.use))
            return building_of(job, c) == building_of(job, one);
    for (typed::Circuit const& one : job.circuits)
        if (draws(one) && one.use != "feeder") names.push_back(building_of(job, one));
    auto const home = names.empty() || in(names, "") ? std::string() : names.front();
    return building_of(job, c) == home;
}

Load load_of(House const& h, typed::Circuit const& c) {
    Load l;
    l.circuit = &c;
    l.use = use_of(c);
    auto const at = rows().find(l.use);
    Row const row = at == rows().end() ? Row{c.poles == 1 ? Kind::light : Kind::appliance} : at->second;
    l.elsewhere = h.job->dwelling && !in_the_home(*h.job, c);
    l.kind = row.kind == Kind::light && (c.poles == 2 || l.elsewhere) ? Kind::appliance : row.kind;
    l.known = c.load || c.mca;
    auto const volts = c.poles == 2 ? h.volts : 120;
    auto const grains = c.load ? c.load->count : volts * (c.mca ? c.mca->count : c.measured ? c.measured->count : 0);
    l.va = (grains + 500) / 1000;
    // A neutral: one pole, or a cable with a third insulated conductor that is not a switched wire or a spare.
    bool const third = !c.run.empty() && c.run.front().kind.ends_with("/3") && c.third.empty();
    l.neutral = c.poles == 1 || third || c.third == "neutral";
    l.motor = c.motor ? *c.motor : row.motor;
    l.has_quarter = !c.load && c.mca;
    l.fixed = c.fastened ? *c.fastened : row.fixed;
    l.moves_air = c.use == "furnace" || c.use == "air handler";
    l.blows = l.moves_air && l.va <= 1'800 && (l.va > 0 || c.poles == 1);
    l.is_new = !c.existing;
    bool const lights = c.use == "lighting" && (!h.job->dwelling || !h.nec);
    l.lasts = c.continuous ? *c.continuous : row.lasts || lights;
    l.presumed = !h.nec && !c.continuous && !l.lasts && !l.motor && !row.not_lasts;
    return l;
}

} // namespace

House house(typed::Job const& job, typed::Panel const& panel) {
    House h;
    h.job = &job;
    h.panel = &panel;
    h.nec = job.code.starts_with("NEC");
    h.year = std::stoi(job.code.substr(job.code.size() - 4));
    typed::Panel const* top = &panel;
    while (top->feeder) top = panel_of(job, top->feeder->panel);
    auto const kind = top->supply->kind;
    h.wye = kind == SupplyKind::wye_120_208;
    h.two_hots = h.wye || kind == SupplyKind::split_120_240;
    h.volts = h.wye ? 208 : h.two_hots ? 240 : 120;
    auto const mine = count_drawing(job, panel);
    h.whole = job.dwelling && (!panel.feeder || (mine > 0 && mine == count_drawing(job, *top)));
    for (auto const* c : under(job, panel)) {
        if (!draws(*c) || c->off) continue;
        auto const& home = job.dwelling;
        bool const held = home && home->energy_management && in(home->energy_management->circuits, c->mark);
        (held ? h.held : is_beyond(*c) ? h.beyond : h.loads).push_back(load_of(h, *c));
    }
    return h;
}

Va part(Va va, Va percent) { return (va * percent + 50) / 100; }

Va sum(Loads const& loads) {
    Va all = 0;
    for (Load const& l : loads) all += l.va;
    return all;
}

bool unknown(Loads const& loads) {
    return std::any_of(loads.begin(), loads.end(), [](Load const& l) { return !l.known; });
}

Loads of(Loads const& loads, std::initializer_list<Kind> kinds) {
    return those(loads, [&](Load const& l) { return std::find(kinds.begin(), kinds.end(), l.kind) != kinds.end(); });
}

bool holds(House const& h) {
    if (h.held.empty()) return false;
    auto const limit = (h.volts * h.job->dwelling->energy_management->limit.count + 500) / 1000;
    return unknown(h.held) || sum(h.held) > limit;
}

Va held_va(House const& h) {
    if (!holds(h)) return sum(h.held);
    return (h.volts * h.job->dwelling->energy_management->limit.count + 500) / 1000;
}

Va beyond_va(House const& h, bool new_only) {
    return sum(those(h.beyond, [&](Load const& l) { return l.is_new || !new_only; }));
}

namespace {
bool named(std::vector<std::string> const& group, Load const& l) {
    return in(group, l.circuit->mark) || in(group, l.use);
}

bool said_together(typed::Job const& job, Load const& a, Load const& b) {
    for (auto const& group : job.dwelling ? job.dwelling->together : std::vector<std::vector<std::string>>{})
        if (named(group, a) && named(group, b)) return true;
    return false;
}
} // namespace

Season season(House const& h, Loads const& loads, HeatShares const& shares) {
    Season s;
    Va winter = 0;
    Loads rooms, rest, cooling = of(loads, {Kind::cool}), pumps = of(loads, {Kind::pump});
    // Every furnace and air handler has a fan inside, which takes 1800 VA at most: with cooling it turns as well, and
    // a share of the heat that is less than the fan alone would be too little.
    Loads fans, fans_of_heat;
    for (Load const& l : of(loads, {Kind::heat})) {
        Load fan = l;
        fan.va = std::min<Va>(l.va, 1'800);
        if (l.blows || (l.moves_air && l.va > 0 && part(l.va, shares.rest) <= fan.va)) {
            fans.push_back(fan);
            continue;
        }
        (shares.is_room && shares.is_room(h, l) ? rooms : rest).push_back(l);
        if (l.moves_air) fans_of_heat.push_back(fan);
    }
    auto const in_rooms = sum(rooms);
    winter += shares.bands ? std::min<Va>(in_rooms, 10'000) + part(std::max<Va>(in_rooms - 10'000, 0), 75)
                           : part(in_rooms, shares.rooms);
    winter += part(sum(rest), shares.rest);
    auto const backup = of(loads, {Kind::backup});
    auto const locked = those(backup, [](Load const& l) { return l.circuit->interlocked; });
    auto const free = those(backup, [](Load const& l) { return !l.circuit->interlocked; });
    winter += part(sum(free), shares.backup);
    s.winter = rooms;
    s.winter.insert(s.winter.end(), rest.begin(), rest.end());
    s.winter.insert(s.winter.end(), free.begin(), free.end());
    // Backup heat that stops a heat pump: the smallest, since nobody says which.
    auto const least = std::min_element(pumps.begin(), pumps.end(), [](auto& a, auto& b) { return a.va < b.va; });
    bool const swaps = !locked.empty() && (least == pumps.end() || part(sum(locked), shares.backup) > least->va);
    for (auto p = pumps.begin(); p != pumps.end(); ++p) {
        if (swaps && p == least) continue;
        winter += p->va;
        s.winter.push_back(*p);
    }
    if (swaps) {
        winter += part(sum(locked), shares.backup);
        s.winter.insert(s.winter.end(), locked.begin(), locked.end());
    }
    auto const heaters = s.winter;
    for (Load const& c : cooling) {
        s.summer.push_back(c);
        if (std::none_of(heaters.begin(), heaters.end(), [&](auto& w) { return said_together(*h.job, c, w); }))
            continue;
        winter += c.va;
        s.winter.push_back(c);
    }
    if (!cooling.empty()) s.summer.insert(s.summer.end(), pumps.begin(), pumps.end());
    // The fan turns all year, and is no heat of which a share would do.
    winter += sum(fans);
    s.winter.insert(s.winter.end(), fans.begin(), fans.end());
    if (!cooling.empty()) s.summer.insert(s.summer.end(), fans.begin(), fans.end());
    if (!cooling.empty()) s.summer.insert(s.summer.end(), fans_of_heat.begin(), fans_of_heat.end());
    s.winter_va = winter;
    take(s, winter >= sum(s.summer), of(loads, {Kind::heat, Kind::pump, Kind::backup, Kind::cool}));
    return s;
}

void take(Season& s, bool winter, Loads const& climate) {
    s.va = winter ? s.winter_va : sum(s.summer);
    s.counted = winter ? s.winter : s.summer;
    s.left_out = those(climate, [&](Load const& l) {
        return std::none_of(s.counted.begin(), s.counted.end(), [&](auto& c) { return c.circuit == l.circuit; });
    });
}

} // namespace twin
