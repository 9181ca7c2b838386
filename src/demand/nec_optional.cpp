// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The optional methods for a dwelling: new (NEC 220.82) and existing (NEC 220.83). Appliances by their nameplates, one
// demand on all of it, heating and cooling apart.
#include "codebook/cite.h"
#include "codebook/reference_phrase.h"
#include "demand/climate.h"
#include "demand/methods.h"
#include "words/say.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
using Kind = LoadStep::Kind;

bool is_appliance(LoadItem const& i) { return !is_general(i) && !is_climate(i); }

// Where heating and cooling count apart, what a device holds back of them does too: a demand on it as on appliances
// would take less than its limit.
bool climate_is_managed(Work const& w) { return std::ranges::any_of(w.loads.managed, is_climate); }

// The general load of both, without heating and cooling. Of what a device holds back that which goes with it.
std::int64_t add_nameplates(Work& w, FloorLoads const& f, std::string_view topic, bool with_managed) {
    std::vector<std::int64_t> terms;
    if (auto const general = add_general_load(w, f, topic); general > 0) terms.push_back(general);
    for (LoadItem const& i : only(w.loads.items, is_appliance))
        terms.push_back(w.steps.item(i.label, topic, i.how, i.va, i.marks()));
    add_unknown(w.unknown, only(w.loads.items, [](LoadItem const& i) { return !is_general(i); }));
    if (with_managed)
        if (auto const managed = add_managed(w, Kind::item); managed > 0) terms.push_back(managed);
    std::int64_t sum = 0;
    for (auto const t : terms) sum += t;
    if (terms.size() > 1) w.steps.subtotal(say("load/all-of-this"), topic, as_sum(terms), sum);
    return sum;
}
// Heat of a room with a thermostat of its own; a furnace or a boiler serves the whole dwelling.
bool heats_a_room(LoadItem const& i) { return i.use && i.use->heating; }

void note_on_thermostats(Work& w, OptionalLoads const& o, int rooms, bool many) {
    auto const heat = only(with_demand(w.loads.items, {Demand::space_heat}),
                           [&](LoadItem const& i) { return !counts_as_blower(i, o.heat_percent.value); });
    if (heat.empty()) return;
    if (many && std::ranges::any_of(heat, heats_a_room))
        w.notes.push_back(say("load/rooms-heat", figure(rooms), figure(o.many_heat_percent.value)));
    else if (many)
        w.notes.push_back(say("load/whole-heat", figure(o.heat_percent.value)));
    else
        w.notes.push_back(say("load/heat-share", figure(o.heat_percent.value), figure(o.many_heat_percent.value),
                              figure(o.many_from.value)));
}

// The largest of six choices, says the code: cooling; heat pumps; heat pumps with backup heat; heat; heat of many
// rooms; heat that stores. It does not say what a home does that heats in several of these ways on the same cold
// evening. The largest alone would leave real load out, and 220.60 leaves out only what never runs together: so they
// are added, each at the share of its choice, which is never less than the largest. A note gives that one too, for an
// inspector who goes by the letter.
void add_heat(Work& w, OptionalLoads const& o) {
    auto const rooms = w.q.building.dwelling->thermostats.value_or(0);
    bool const many = rooms >= o.many_from.value;
    note_on_thermostats(w, o, rooms, many);
    std::array const many_rooms{DemandBand{0, o.many_heat_percent.value, o.many_heat_percent.source}};
    ClimateShares shares;
    shares.heat_percent = o.heat_percent.value;
    shares.backup_percent = o.backup_percent.value;
    if (many) {
        shares.separate = many_rooms;
        shares.is_separate = heats_a_room;
    }
    shares.topic = shares.rest_topic = shares.cooling_topic = "optional-heat";
    auto const climate = add_climate(w.steps, w.q.building, w.loads.items, shares);
    if (climate.ways_to_heat.size() < 2) return;
    w.notes.push_back(say("load/heats-in-ways", figure(static_cast<std::int64_t>(climate.ways_to_heat.size())),
                          reference_phrase(cite(w.q.book, "load-service/optional-heat")), figure(climate.va),
                          figure(std::max(std::ranges::max(climate.ways_to_heat), sum_va(climate.cool)))));
}
} // namespace

void optional_new(Work& w, FloorLoads const& f, OptionalLoads const& o) {
    bool const apart = climate_is_managed(w);
    auto const sum = add_nameplates(w, f, "optional", !apart);
    w.steps.slices(say("load/all-of-this"), "optional", sum, o.bands);
    add_heat(w, o);
    if (apart) add_managed(w, Kind::counted);
}

void optional_existing(Work& w, FloorLoads const& f, ExistingLoads const& e) {
    bool const new_climate = adds_climate(w.loads);
    ClimateShares shares;
    std::string_view const topic = new_climate ? "existing-heat" : "existing";
    shares.topic = shares.rest_topic = shares.cooling_topic = topic;
    shares.kind = new_climate ? Kind::counted : Kind::item;
    bool const apart = new_climate && climate_is_managed(w);
    auto sum = add_nameplates(w, f, topic, !apart);
    if (!new_climate) {
        auto const climate = add_climate(w.steps, w.q.building, w.loads.items, shares);
        if (!climate.empty) {
            w.steps.subtotal(say("load/all-with-climate"), topic, as_sum({sum, climate.va}), sum + climate.va);
            sum += climate.va;
        }
    }
    w.steps.slices(say("load/all-of-this"), topic, sum, e.bands);
    if (new_climate) add_climate(w.steps, w.q.building, w.loads.items, shares);
    if (apart) add_managed(w, Kind::counted);
}

} // namespace legwork
