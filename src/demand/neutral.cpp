// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the neutral of a service or feeder carries: NEC 220.61.
#include "demand/methods.h"
#include "words/say.h"

namespace legwork {

void add_to_neutral(NeutralParts& parts, LoadItem const& i, std::int64_t va) {
    if (i.neutral && va > 0) parts.push_back({i.label, va, false});
}

namespace {
LoadItems on_neutral(LoadItems const& some) {
    return only(some, [](LoadItem const& i) { return i.neutral; });
}

// The side that asks more of the neutral, which need not be the one that counts.
LoadItems climate_on_neutral(Climate const& climate) {
    auto const heat = on_neutral(climate.heat), cool = on_neutral(climate.cool);
    return sum_va(heat) >= sum_va(cool) ? heat : cool;
}
} // namespace

void add_climate_to_neutral(NeutralParts& parts, Climate const& climate) {
    for (LoadItem const& i : climate_on_neutral(climate)) add_to_neutral(parts, i, i.va);
}

void add_motor_to_neutral(NeutralParts& parts, LoadItems const& others, Climate const& climate, MotorLoads const& m,
                          MotorMore const& of_hots) {
    auto motors = on_neutral(others);
    auto const season = climate_on_neutral(climate);
    motors.insert(motors.end(), season.begin(), season.end());
    // What is left out for the hots may be what the neutral takes.
    auto const more = largest_motor(motors, on_neutral(climate.left_out), m);
    if (!more.motor || more.va == 0) return;
    bool const same = of_hots.motor && of_hots.motor->circuit == more.motor->circuit;
    parts.push_back({say("load/largest-motor", more.motor->label), more.va, false, more.how,
                     same ? Phrase() : say("load/neutral-motor", more.motor->label)});
}

namespace {
// 240 V loads whose neutral takes an unknown part of their current; of cooking and dryers the code says which.
LoadItems in_unknown_part(LoadItems const& items) {
    return only(items, [](LoadItem const& i) {
        return i.neutral && i.circuit->poles == 2 && i.va > 0 && i.demand != Demand::cooking &&
               i.demand != Demand::dryer;
    });
}

NeutralParts parts_of(LoadQuestion const& q, DemandFactors const& factors) {
    auto w = work_on(q);
    return q.building.dwelling ? standard_by_floor(w, *factors.by_floor) : listed(w, factors.listed);
}
} // namespace

void add_neutral(LoadCalculation& load, LoadQuestion const& q) {
    auto const& factors = demand_factors(q.book);
    if (!factors.neutral || !factors.by_floor) return;
    StepList steps(q.book);
    if (!q.facts.three_wire) {
        steps.counted(say("load/one-hot"), "neutral", {}, load.total_va);
    } else {
        auto const percent = q.facts.wye ? 100 : factors.neutral->appliance_percent.value;
        // The parts are those of the standard method, whatever method the total went by.
        for (NeutralPart const& p : parts_of(q, factors)) {
            bool const reduced = p.reduced && percent != 100;
            steps.counted(p.label, q.facts.wye ? "neutral-wye" : "neutral",
                          one_by_one({p.how, reduced ? as_share(p.va, percent) : Phrase()}),
                          reduced ? share_of(p.va, percent) : p.va);
            if (!p.argued.empty()) load.notes.push_back(p.argued);
        }
        if (auto const some = in_unknown_part(loads_of(q).items); !some.empty())
            load.notes.push_back(say("load/neutral-assumed", labels_of(some)));
    }
    load.neutral = steps.steps();
    load.neutral_va = steps.total();
}

} // namespace legwork
