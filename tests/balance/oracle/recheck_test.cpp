// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Plans that lie: `recheck` must see what the recount of the tests sees. Each plan is true first, then one thing in it
// is changed.

#include "balance/balance.h"
#include "balance/oracle/random.h"
#include "balance/oracle/recount.h"
#include "building/resolve.h"

#include "catch.h"

using namespace legwork;
using namespace legwork::oracle;

namespace {
Placement& any(Dice& dice, PanelPlan& p) {
    return p.placements[static_cast<std::size_t>(dice.below(static_cast<int>(p.placements.size())))];
}

// Changes one thing; the circuit's leg is put right where it stands, so that only the place is wrong.
std::string tamper(Dice& dice, typed::Job const& job, PanelPlan& p) {
    Placement& one = any(dice, p);
    Placement& two = any(dice, p);
    auto const all = seats(job, job.panels[0]);
    auto const put_leg_right = [&](Placement& x) {
        if (x.leg) x.leg = all[static_cast<std::size_t>(x.slots[0].space) - 1].on_a ? Leg::a : Leg::b;
    };
    switch (dice.below(8)) {
    case 0:
        one.slots[0].space = dice.from(1, job.panels[0].spaces);
        put_leg_right(one);
        return one.circuit + " elsewhere";
    case 1:
        if (one.slots.size() == two.slots.size()) std::swap(one.slots, two.slots);
        put_leg_right(one);
        put_leg_right(two);
        return one.circuit + " for " + two.circuit;
    case 2: ++p.moves; return "moves";
    case 3: p.imbalance_va = p.imbalance_va.value_or(0) + 1; return "imbalance";
    case 4: p.situations[0].leg_a_va += 7; return "a leg";
    case 5: p.situations.back().imbalance_va += 1; return "a situation";
    case 6: one.slots.clear(); return one.circuit + " nowhere";
    default:
        if (one.leg) one.leg = other(*one.leg);
        return one.circuit + " leg";
    }
}
} // namespace

TEST_CASE("recheck sees every change that makes a plan false", "[balance][oracle]") {
    int lies = 0;
    for (std::uint64_t seed = 70'000; seed < 70'400; ++seed) {
        typed::Job const job = random_job(seed, {.most_spaces = 10, .pair_heavy = seed % 2 == 0});
        BalanceOptions options;
        options.best = true;
        Plan const plan = balance(resolve(job), options);
        if (plan.panels[0].placements.empty()) continue;
        CHECK(recheck(resolve(job), plan, false) == std::vector<std::string>{});
        Dice dice(seed);
        for (int i = 0; i < 8; ++i) {
            Plan changed = plan;
            auto const what = tamper(dice, job, changed.panels[0]);
            if (recount(job, changed.panels[0], Today::may_move).faults.empty()) continue; // another true plan
            ++lies;
            CAPTURE(seed, what, as_toml(job));
            CHECK_FALSE(recheck(resolve(job), changed, false).empty());
        }
    }
    CHECK(lies > 1000);
}
