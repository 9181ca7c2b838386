// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The standard method for a dwelling: NEC Article 220, Part III.
#include "codebook/cooking_factors.h"
#include "demand/climate.h"
#include "demand/methods.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

namespace {
using Kind = LoadStep::Kind;

bool is_cooking(LoadItem const& i) { return i.demand == Demand::cooking && (!i.has_figure() || i.va > kCookingFromVa); }

bool is_other_appliance(LoadItem const& i) {
    return i.demand == Demand::appliance || i.demand == Demand::water_heating || i.demand == Demand::tankless ||
           i.demand == Demand::pool || (i.demand == Demand::cooking && !is_cooking(i));
}

void add_to_conductors(Work& w, NeutralParts& parts, LoadItem const& i, std::int64_t va) {
    add_to_neutral(parts, i, va);
    add_to_line(w, i, va);
}

bool is_fastened(FloorLoads const& f, LoadItem const& i) {
    return i.fixed && i.demand != Demand::cooking && i.va >= f.fixed_least_va.value && i.va > 0;
}

// Of which nothing tells whether it is fastened in place, where that decides a step.
void note_on_plain(Work& w, FloorLoads const& f, LoadItems const& appliances) {
    auto const is_plain = [&](LoadItem const& i) {
        return !i.fixed && !i.circuit->fastened && (!i.use || i.use->unspecific) && i.demand == Demand::appliance &&
               i.va >= f.fixed_least_va.value && i.va > 0;
    };
    auto const fixed = only(appliances, [&](LoadItem const& i) { return is_fastened(f, i); });
    auto const plain = only(appliances, is_plain);
    if (plain.empty() || static_cast<std::int64_t>(fixed.size() + plain.size()) < f.fixed_from.value) return;
    w.notes.push_back(
        say("load/plain-appliance", labels_of(plain), figure(f.fixed_from.value), figure(f.fixed_percent.value)));
}

// Four and more that are fastened in place count at three quarters; those on a cord count in full.
void add_appliances(Work& w, FloorLoads const& f, NeutralParts& parts) {
    auto const all = only(w.loads.items, is_other_appliance);
    add_unknown(w.unknown, all);
    note_on_plain(w, f, all);
    auto const is_fixed = [&](LoadItem const& i) { return is_fastened(f, i); };
    auto const fixed = only(all, is_fixed);
    if (fixed.size() > 1) {
        for (LoadItem const& i : fixed) w.steps.item(i.label, "fixed", i.how, i.va, i.marks());
        auto const sum = sum_va(fixed);
        bool const many = static_cast<std::int64_t>(fixed.size()) >= f.fixed_from.value;
        auto const percent = many ? f.fixed_percent.value : 100;
        w.steps.counted(many ? say("load/fixed-many", figure(static_cast<std::int64_t>(fixed.size())))
                             : say("load/fixed-few", figure(f.fixed_from.value)),
                        "fixed", one_by_one({as_sum(figures(fixed)), many ? as_share(sum, percent) : Phrase()}),
                        share_of(sum, percent), marks_of(fixed));
        for (LoadItem const& i : fixed) {
            add_to_conductors(w, parts, i, share_of(i.va, percent));
            if (many && i.neutral) parts.back().how = as_share(i.va, percent);
        }
    }
    for (LoadItem const& i : all) {
        if ((is_fixed(i) && fixed.size() > 1) || i.va == 0) continue;
        w.steps.counted(i.label, is_fixed(i) ? "fixed" : "appliance", i.how, i.va, i.marks());
        add_to_conductors(w, parts, i, i.va);
    }
}

void add_dryers(Work& w, FloorLoads const& f, NeutralParts& parts) {
    auto const dryers = with_demand(w.loads.items, {Demand::dryer});
    if (dryers.empty()) return;
    add_unknown(w.unknown, dryers);
    std::vector<std::int64_t> each;
    for (LoadItem const& i : dryers) each.push_back(std::max(i.va, f.dryer_least_va.value));
    auto const at_least = [&](LoadItem const& i) {
        return i.va >= f.dryer_least_va.value ? i.how : say("load/at-least", figure(f.dryer_least_va.value));
    };
    auto const n = static_cast<int>(dryers.size());
    auto const percent = dryer_percent(f.dryers, n);
    std::int64_t sum = 0;
    for (auto const va : each) sum += va;
    auto const va = share_of(sum, percent.value);
    auto const what = n == 1 ? dryers[0].label : say("load/dryers", figure(n));
    auto const how = n == 1 ? at_least(dryers[0]) : one_by_one({as_sum(each), as_share(sum, percent.value)});
    if (n == 1) {
        w.steps.counted(what, "dryer", how, sum, dryers[0].marks());
    } else {
        for (std::size_t i = 0; i < dryers.size(); ++i)
            w.steps.item(dryers[i].label, "dryer", at_least(dryers[i]), each[i], dryers[i].marks());
        w.steps.counted(what, "dryer", how, va, marks_of(dryers), percent.source);
    }
    parts.push_back({what, va, true, how});
}

Phrase cooking_phrase(CookingStep const& s) {
    if (s.by == CookingStep::By::nameplate) return say("load/cooking-outside");
    auto some = s.appliances == 1 ? say("load/cooking-one") : say("load/cooking-some", figure(s.appliances));
    if (s.kilowatts_above > 0) return say("load/cooking-above-12", std::move(some), figure(s.kilowatts_above));
    return say("load/cooking-column", std::move(some), std::string(1, s.column));
}

Phrase cooking_arithmetic(CookingStep const& s) {
    switch (s.by) {
    case CookingStep::By::table: return say("load/cooking-by-table", figure(s.va));
    case CookingStep::By::nameplate: return say("load/cooking-in-full", figure(s.of_va), figure(s.va));
    case CookingStep::By::percent: break;
    }
    return as_share(s.of_va, s.percent);
}

void add_cooking(Work& w, NeutralParts& parts) {
    auto const cooking = only(w.loads.items, is_cooking);
    if (cooking.empty()) return;
    add_unknown(w.unknown, cooking);
    auto const known = only(cooking, [](LoadItem const& i) { return i.has_figure(); });
    for (LoadItem const& i : known) w.steps.item(i.label, "cooking", i.how, i.va, i.marks());
    std::int64_t sum = 0;
    Phrases how;
    std::vector<std::int64_t> each;
    for (CookingStep const& s : cooking_demand(w.factors.by_floor->cooking, figures(known))) {
        auto const item = cooking_phrase(s), arithmetic = cooking_arithmetic(s);
        how.push_back(item);
        how.push_back(arithmetic);
        sum += w.steps.counted(item, "cooking", arithmetic, s.va, marks_of(known), s.source);
        each.push_back(s.va);
    }
    how.push_back(as_sum(each));
    if (sum > 0) parts.push_back({say("load/cooking"), sum, true, one_by_one(std::move(how))});
}

void add_vehicles(Work& w, FloorLoads const& f, NeutralParts& parts) {
    auto const all = with_demand(w.loads.items, {Demand::vehicle});
    add_unknown(w.unknown, all);
    auto const least = f.vehicle_least_va ? f.vehicle_least_va->value : 0;
    for (LoadItem const& i : all) {
        auto const va = std::max(i.va, least);
        w.steps.counted(i.label, "vehicle", va > i.va ? say("load/at-least", figure(least)) : i.how, va, i.marks());
        add_to_conductors(w, parts, i, va);
    }
}

// The larger of heating and cooling with the quarter of the largest motor that each brings.
ClimateShares shares_with_motor(Work const& w, FloorLoads const& f, LoadItems const& others) {
    ClimateShares shares;
    shares.more = [&w, &f, others](LoadItems const& side) {
        auto motors = others;
        motors.insert(motors.end(), side.begin(), side.end());
        auto const is_out = [&](LoadItem const& i) {
            return is_climate(i) &&
                   std::ranges::none_of(side, [&](LoadItem const& s) { return s.circuit == i.circuit; });
        };
        return largest_motor(motors, only(w.loads.items, is_out), f.motor).va;
    };
    return shares;
}
} // namespace

NeutralParts standard_by_floor(Work& w, FloorLoads const& f) {
    NeutralParts parts;
    auto const general = add_general_load(w, f, "lighting-demand");
    if (general > 0)
        parts.push_back({say("load/general-after"),
                         w.steps.slices(say("load/general"), "lighting-demand", general, f.bands), false,
                         as_banded(general, f.bands)});
    add_appliances(w, f, parts);
    add_dryers(w, f, parts);
    add_cooking(w, parts);
    add_unknown(w.unknown, only(w.loads.items, is_climate));
    auto others = only(w.loads.items, is_other_appliance), managed = managed_within_limit(w.q, w.loads);
    others.insert(others.end(), managed.begin(), managed.end());
    auto const climate = add_climate(w.steps, w.q.building, w.loads.items, shares_with_motor(w, f, others));
    add_to_line(w, climate);
    add_climate_to_neutral(parts, climate);
    add_vehicles(w, f, parts);
    if (auto const va = add_managed(w, Kind::counted); va > 0)
        if (std::ranges::any_of(w.loads.managed, &LoadItem::neutral)) parts.push_back({say("load/managed"), va, false});
    auto motors = others;
    motors.insert(motors.end(), climate.counted.begin(), climate.counted.end());
    auto const more = largest_motor(motors, climate.left_out, f.motor);
    add_motor(w, more, f.motor, climate);
    add_motor_to_neutral(parts, others, climate, f.motor, more);
    return parts;
}

} // namespace legwork
