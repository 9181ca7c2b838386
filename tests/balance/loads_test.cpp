// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/balance.h"
#include "building/resolve.h"

#include "catch.h"

using namespace legwork;

TEST_CASE("balance: two equal circuits go on two legs", "[balance]") {
    typed::Job job;
    job.panels.push_back({});
    job.panels[0].name = "Main";
    job.panels[0].spaces = 4;
    job.panels[0].supply = typed::Supply{};
    for (auto const* mark : {"A1", "A2"}) {
        typed::Circuit c;
        c.mark = mark;
        c.panel = "Main";
        c.load = 500_VA;
        job.circuits.push_back(c);
    }
    auto const plan = balance(resolve(job));
    REQUIRE(plan.panels[0].imbalance_va == 0);
    REQUIRE(plan.panels[0].situations[0].neutral_a == Approx(0));
}
