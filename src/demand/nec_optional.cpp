// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The optional methods for a dwelling: new (NEC 220.82) and existing (NEC 220.83). Appliances by their nameplates, one
// demand on all of it, heating and cooling apart.
#include "demand/climate.h"
#include "demand/methods.h"

#include <fmt/format.h>

namespace legwork {

namespace {
using Kind = LoadStep::Kind;

bool is_appliance(LoadItem const& i) { return !is_general(i) && !is_climate(i); }

// The general load of both: what is listed and, for existing dwellings without new heat, the heating too.
std::int64_t add_nameplates(Work& w, FloorLoads const& f, std::string_view topic) {
    std::vector<std::int64_t> terms;
    if (auto const general = add_general_load(w, f); general > 0) terms.push_back(general);
    for (LoadItem const& i : only(w.loads.items, is_appliance))
        terms.push_back(w.steps.item(i.label, topic, i.how, i.va, i.marks()));
    add_unknown(w.unknown, only(w.loads.items, [](LoadItem const& i) { return !is_general(i); }));
    if (auto const managed = add_managed(w, Kind::item); managed > 0) terms.push_back(managed);
    std::int64_t sum = 0;
    for (auto const t : terms) sum += t;
    if (terms.size() > 1) w.steps.subtotal("All of this", topic, as_sum(terms), sum);
    return sum;
}
} // namespace

void optional_new(Work& w, FloorLoads const& f, OptionalLoads const& o) {
    auto const sum = add_nameplates(w, f, "optional");
    w.steps.slices("All of this", "optional", sum, o.bands);
    auto const rooms = w.q.job.dwelling->thermostats.value_or(0);
    bool const many = rooms >= o.many_from.value;
    if (!with_demand(w.loads.items, {Demand::space_heat}).empty())
        w.notes.push_back(many ? fmt::format("Heat of {} rooms controlled by themselves counts at {} %.", rooms,
                                             o.many_heat_percent.value)
                               : fmt::format("Heat counts at {} %; at {} % where {} rooms or more have a thermostat of "
                                             "their own: `thermostats` in [dwelling] says so.",
                                             o.heat_percent.value, o.many_heat_percent.value, o.many_from.value));
    ClimateShares shares;
    shares.heat_percent = many ? o.many_heat_percent.value : o.heat_percent.value;
    shares.backup_percent = o.backup_percent.value;
    shares.topic = shares.rest_topic = shares.cooling_topic = "optional-heat";
    add_climate(w.steps, w.q.job, w.loads.items, shares);
}

void optional_existing(Work& w, FloorLoads const& f, ExistingLoads const& e) {
    bool const new_climate = adds_climate(w.loads.items);
    ClimateShares shares;
    std::string_view const topic = new_climate ? "existing-heat" : "existing";
    shares.topic = shares.rest_topic = shares.cooling_topic = topic;
    shares.kind = new_climate ? Kind::counted : Kind::item;
    auto sum = add_nameplates(w, f, topic);
    if (!new_climate) {
        auto const climate = add_climate(w.steps, w.q.job, w.loads.items, shares);
        if (!climate.empty) {
            w.steps.subtotal("All of this with heating or cooling", topic, as_sum({sum, climate.va}), sum + climate.va);
            sum += climate.va;
        }
    }
    w.steps.slices("All of this", topic, sum, e.bands);
    if (new_climate) add_climate(w.steps, w.q.job, w.loads.items, shares);
}

} // namespace legwork
