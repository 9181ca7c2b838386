// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Source of the expected values: the file itself names the proof of each (exhaustive placement and two MIP solvers).

#include "balance/balance.h"
#include "balance/oracle/instances.h"
#include "balance/oracle/judge.h"
#include "balance/oracle/random.h"
#include "building/resolve.h"

#include "catch.h"

using namespace legwork;
using namespace legwork::oracle;

namespace {
// New circuits are not yet placed on halves, by the optimizer or by the exhaustive judge.
bool needs_new_halves(Instance const& i) { return i.name == "tandem"; }
} // namespace

TEST_CASE("balance agrees with the worked panels", "[balance][oracle]") {
    for (Instance const& i : instances()) {
        if (needs_new_halves(i)) continue;
        CAPTURE(i.name, as_toml(i.job));
        CHECK(judge(i.job) == std::vector<std::string>{});
    }
}

TEST_CASE("balance makes no false claim where only half-size breakers would make room", "[balance][oracle]") {
    for (Instance const& i : instances()) {
        if (!needs_new_halves(i)) continue;
        Plan const plan = balance(resolve(i.job));
        PanelPlan const& p = plan.panels.at(0);
        if (p.placements.empty()) {
            CHECK_FALSE(p.why.empty()); // honest: it does not place on halves
            CHECK_FALSE(p.imbalance_va);
        } else {
            CHECK(p.least_imbalance_va == i.tradeoff.back().imbalance);
        }
    }
}
