// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One situation, any size: the whole trade-off against a table of every reachable sum.

#include "balance/balance.h"
#include "balance/oracle/recount.h"
#include "balance/oracle/subset_sum.h"
#include "building/resolve.h"

#include "catch.h"

using namespace legwork;
using namespace legwork::oracle;

namespace {
void agrees(typed::Job const& job, int moves) {
    auto const l = legs(job, job.panels[0]);
    BalanceOptions options;
    options.best = true;
    PanelPlan const p = balance(resolve(job), options).panels.at(0);
    CHECK(p.proven);
    CHECK(p.least_imbalance_va == subset_sum_least(l));
    CHECK(recount(job, p, Today::may_move).faults == std::vector<std::string>{});
    std::vector<Step> told;
    for (TradeoffStep const& s : p.tradeoff)
        if (s.moves <= moves) told.push_back({s.moves, s.imbalance_va});
    CHECK(told == subset_sum(l, moves));
}
} // namespace

TEST_CASE("balance against subset sums: the loads of a house", "[balance][oracle]") {
    auto const [spaces, two_poles, pairs] =
        GENERATE(table<int, int, int>({{12, 1, 1}, {24, 4, 2}, {30, 0, 6}, {42, 4, 4}}));
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
        CAPTURE(spaces, seed);
        agrees(random_home(seed, {spaces, 1, two_poles, pairs, static_cast<int>(seed) - 1}), 8);
    }
}

TEST_CASE("balance against subset sums: 84 spaces", "[balance][oracle]") {
    agrees(random_home(7, {84, 1, 4, 6, 3, 1900}), 3);
}

TEST_CASE("balance against subset sums: few loads that differ, and a full panel", "[balance][oracle]") {
    typed::Job job = random_home(9, {42, 1, 3, 3, 0});
    for (std::size_t i = 0; i < job.circuits.size(); ++i)
        job.circuits[i].load = i % 5 == 0 ? 1800_VA : i % 3 == 0 ? 1000_VA : 180_VA;
    agrees(job, 8);
}
