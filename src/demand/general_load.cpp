// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Lines that several methods share.
#include "codebook/cite.h"
#include "codebook/reference_phrase.h"
#include "demand/methods.h"
#include "units/text.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

namespace {
using Kind = LoadStep::Kind;

// Square feet or metres at so many VA each, to the nearest VA. An area has 1e6 grains a m², 92 903.04 a ft².
std::int64_t area_va(Area a, UnitSystem units, FloorLoads const& f) {
    return units == UnitSystem::metric ? (a.count * f.va_per_m2.value + 500'000) / 1'000'000
                                       : (a.count * f.va_per_ft2.value * 100 + 4'645'152) / 9'290'304;
}

std::int64_t add_area(Work& w, FloorLoads const& f, Phrase const& what, Area area) {
    auto const units = w.q.building.dwelling->area_units;
    auto const va = area_va(area, units, f);
    return w.steps.item(what, "floor-area",
                        say("load/each", with_unit(text(area, units)),
                            figure(units == UnitSystem::metric ? f.va_per_m2.value : f.va_per_ft2.value), figure(va)),
                        va);
}

std::int64_t add_circuits(Work& w, Phrase const& what, std::string_view topic, std::int64_t n, Figure each,
                          LoadItems const& listed, std::int64_t least) {
    if (n == 0) return 0;
    bool const asked = n == least && static_cast<std::int64_t>(listed.size()) < n;
    auto const words = asked ? say("load/so-many-asked", what, figure(n)) : say("load/so-many", what, figure(n));
    auto const va = n * each.value;
    return w.steps.item(words, topic, say("load/each", figure(n), figure(each.value), figure(va)), va,
                        marks_of(listed));
}

// Of a part of a dwelling: its share of the floor area is not known, so what is listed.
std::int64_t add_listed_general(Work& w) {
    std::int64_t va = 0;
    for (LoadItem const& i : with_demand(w.loads.items, {Demand::general}))
        va += w.steps.item(i.label, "listed", i.how, i.va, i.marks());
    add_unknown(w.unknown, with_demand(w.loads.items, {Demand::general}));
    return va;
}
} // namespace

Phrase phrase(FloorBy dimensions) { return dimensions == FloorBy::inside ? say("load/inside") : say("load/outside"); }

bool is_general(LoadItem const& item) {
    return item.demand == Demand::general || item.demand == Demand::small_appliance || item.demand == Demand::laundry;
}

Work work_on(LoadQuestion const& q) {
    Work w{q, demand_factors(q.book), loads_of(q), carries_dwelling(q.building, q.panel), StepList(q.book), {}, {}};
    w.notes = w.loads.notes;
    return w;
}

namespace {
std::optional<OtherSeason> other_season(Work const& w) {
    auto const& other = w.climate.other_side();
    if (std::ranges::none_of(other, [](LoadItem const& i) { return i.circuit->poles == 1; })) return std::nullopt;
    OtherSeason season{w.steps.total() - w.climate.va + w.climate.other_va, {}};
    auto const counted = marks_of(w.climate.counted);
    for (LineLoad const& l : w.one_line)
        if (std::ranges::find(counted, l.mark) == counted.end()) season.one_line.push_back(l);
    for (LoadItem const& i : other)
        if (i.circuit->poles == 1) season.one_line.push_back({i.circuit->mark, i.va});
    return season;
}
} // namespace

LoadCalculation finished(Work&& w, LoadMethod method, Phrase title) {
    LoadCalculation load;
    load.method = method;
    load.title = std::move(title);
    load.total_va = w.steps.total();
    load.steps = w.steps.steps();
    load.unknown = std::move(w.unknown);
    for (auto const* items : {&w.loads.items, &w.loads.managed, &w.loads.other_buildings})
        for (LoadItem const& i : *items)
            if (!i.known && !i.circuit->measured) load.unknown_loads.push_back(i.circuit->mark);
    load.notes = std::move(w.notes);
    load.other_season = other_season(w);
    load.one_line = std::move(w.one_line);
    load.whole_dwelling = w.whole;
    return load;
}

std::int64_t add_general_load(Work& w, FloorLoads const& f, std::string_view sum_topic) {
    auto const& home = *w.q.building.dwelling;
    auto const& items = w.loads.items;
    std::int64_t va = 0;
    std::vector<std::int64_t> terms;
    auto const add = [&](std::int64_t more) {
        va += more;
        if (more > 0) terms.push_back(more);
    };
    auto const kitchen = with_demand(items, {Demand::small_appliance});
    auto const laundry = with_demand(items, {Demand::laundry});
    auto const listed = [](LoadItems const& some) { return static_cast<std::int64_t>(some.size()); };
    if (!w.whole) {
        add(add_listed_general(w));
        add(add_circuits(w, say("load/small-appliance"), "small-appliance", listed(kitchen), f.small_appliance_va,
                         kitchen, 0));
        add(add_circuits(w, say("load/laundry"), "laundry", listed(laundry), f.laundry_va, laundry, 0));
        if (terms.size() > 1) w.steps.subtotal(say("load/general"), sum_topic, as_sum(terms), va);
        return va;
    }
    w.notes.push_back(say("load/area-by", phrase(f.area_by)));
    if (home.area)
        add(add_area(w, f, say("load/general-lighting"), *home.area));
    else
        w.unknown.push_back(say("load/area-missing"));
    if (home.basement) add(add_area(w, f, say("load/basement"), *home.basement));
    auto const n_kitchen = std::max(
        {listed(kitchen), f.small_appliance_least.value, std::int64_t{home.small_appliance_circuits.value_or(0)}});
    add(add_circuits(w, say("load/small-appliance"), "small-appliance", n_kitchen, f.small_appliance_va, kitchen,
                     f.small_appliance_least.value));
    auto const n_laundry = std::max(
        listed(laundry), std::int64_t{home.laundry_circuits.value_or(static_cast<int>(f.laundry_least.value))});
    add(add_circuits(w, say("load/laundry"), "laundry", n_laundry, f.laundry_va, laundry, f.laundry_least.value));
    if (auto const inside = with_demand(items, {Demand::general}); !inside.empty())
        w.notes.push_back(say("load/within-general", labels_of(inside)));
    if (terms.size() > 1) w.steps.subtotal(say("load/general"), sum_topic, as_sum(terms), va);
    return va;
}

std::int64_t add_managed(Work& w, Kind kind) {
    auto const& some = w.loads.managed;
    if (some.empty()) return 0;
    for (LoadItem const& i : some) w.steps.item(i.label, "managed", i.how, i.va, i.marks());
    auto const limit = w.q.building.dwelling->managed->limit;
    auto const most = whole_va(w.q.facts.volts * limit);
    bool const in_full = !managed_in_full(w.q, w.loads).empty();
    auto const va = in_full ? sum_va(some) : most;
    auto const words = in_full ? one_by_one({as_sum(figures(some)), say("load/within-limit", said(limit))})
                               : say("load/amps-by-volts", said(limit), said(w.q.facts.volts), figure(most));
    auto const what = in_full ? say("load/managed-all") : say("load/managed-limit");
    return kind == Kind::counted ? w.steps.counted(what, "managed", words, va, marks_of(some))
                                 : w.steps.item(what, "managed", words, va, marks_of(some));
}

void add_to_line(Work& w, Climate const& climate) {
    for (LoadItem const& i : climate.counted) add_to_line(w, i, i.va);
    w.climate = climate;
}

void add_to_line(Work& w, LoadItem const& i, std::int64_t va) {
    if (i.circuit->poles == 1 && va > 0) w.one_line.push_back({i.circuit->mark, va});
}

MotorMore largest_motor(LoadItems const& counted, LoadItems const& left_out, MotorLoads const& m) {
    MotorMore more;
    auto const look = [&](LoadItems const& some, bool are_left_out) {
        for (LoadItem const& i : some)
            if (i.motor && !i.with_motor_share && i.va > (more.motor ? more.motor->va : 0))
                more = {i, share_of(i.va, m.percent.value), are_left_out, as_share(i.va, m.percent.value)};
    };
    look(counted, false);
    if (m.left_out) look(left_out, true);
    return more;
}

void add_motor(Work& w, MotorMore const& more, MotorLoads const& m, Climate const& climate) {
    if (!more.motor) return;
    auto const& motor = *more.motor;
    w.steps.counted(more.left_out ? say("load/largest-motor-left-out", motor.label)
                                  : say("load/largest-motor", motor.label),
                    "motor", more.how, more.va, motor.marks(), more.left_out ? *m.left_out : m.percent.source);
    if (more.left_out) {
        w.steps.last_is_argued();
        w.notes.push_back(say("load/motor-left-out", motor.label, figure(m.percent.value),
                              reference_phrase(cite(w.q.book, "load-service/never-together"))));
    }
    if (climate.guess_decides) w.steps.last_is_guessed(more.va); // of the other season it may be none
    add_to_line(w, motor, more.va);
}

bool adds_climate(Loads const& loads) {
    auto const is_new = [](LoadItem const& i) { return i.is_new && is_climate(i); };
    return std::ranges::any_of(loads.items, is_new) || std::ranges::any_of(loads.managed, is_new);
}

} // namespace legwork
