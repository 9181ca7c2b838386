// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The panel as the file has it is judged within counted steps, whatever the file has: pairs that stand far apart make
// every look for room dear. A wrong count shows as this test's time limit.
#include "balance/balance.h"
#include "balance/oracle/homes.h"
#include "building/resolve.h"

#include "catch.h"

#include <algorithm>

using namespace legwork;

namespace {
// The one-pole circuits of a legal panel change places at random, so that most pairs stand apart, many on one leg.
typed::Job scattered(std::uint64_t seed, oracle::Home const& home) {
    typed::Job job = oracle::random_home(seed, home);
    std::vector<typed::Circuit*> ones;
    for (typed::Circuit& c : job.circuits)
        if (c.poles == 1 && c.space) ones.push_back(&c);
    std::uint32_t random = 12345;
    for (std::size_t i = ones.size(); i > 1; --i) {
        random = random * 1664525U + 1013904223U; // Numerical Recipes' generator
        std::swap(ones[i - 1]->space, ones[(random >> 8) % i]->space);
    }
    return job;
}
} // namespace

TEST_CASE("as filed: pairs that stand apart do not make the search endless", "[balance][filed][slow]") {
    typed::Job const job = scattered(7, {84, 3, 2, 20, 4, 1900});
    Plan const plan = as_filed(resolve(job));
    REQUIRE(recheck(resolve(job), plan, true).empty());
    PanelPlan const& p = plan.panels.at(0);
    REQUIRE(p.imbalance_va);
    REQUIRE(p.least_imbalance_va);
    REQUIRE(p.lower_bound_va);
    CHECK(*p.lower_bound_va <= *p.least_imbalance_va);
    CHECK(*p.least_imbalance_va <= *p.imbalance_va);
    CHECK_FALSE(p.stopped_by_time); // no clock was looked at
    CHECK((!p.proven || p.lower_bound_va == p.least_imbalance_va));
    REQUIRE(p.tradeoff.back().imbalance_va == *p.least_imbalance_va);
}
