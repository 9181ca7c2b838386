// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the neutral of a service or feeder carries: NEC 220.61.
#include "demand/methods.h"
#include "words/say.h"

namespace legwork {

void add_to_neutral(NeutralParts& parts, LoadItem const& i, std::int64_t va) {
    if (i.neutral && va > 0) parts.push_back({i.label, va, false});
}

void add_climate_to_neutral(NeutralParts& parts, Climate const& climate) {
    auto const uses_it = [](LoadItem const& i) { return i.neutral; };
    auto const heat = only(climate.heat, uses_it), cool = only(climate.cool, uses_it);
    // The side that asks more of the neutral, which need not be the one that counts.
    for (LoadItem const& i : sum_va(heat) >= sum_va(cool) ? heat : cool) add_to_neutral(parts, i, i.va);
}

void add_motor_to_neutral(NeutralParts& parts, MotorMore const& more) {
    if (more.motor && more.motor->neutral && more.va > 0)
        parts.push_back({say("load/largest-motor", more.motor->label), more.va, false, more.how});
}

namespace {
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
        }
    }
    load.neutral = steps.steps();
    load.neutral_va = steps.total();
}

} // namespace legwork
