// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A hard stop ends the search, whatever the job, and every panel has a plan all the same. How late it ends is measured
// in tests/bench; the limit here is against endless work only.

#include "balance/balance.h"
#include "balance/hard_homes.h"
#include "building/resolve.h"

#include "catch.h"

#include <algorithm>
#include <chrono>

using namespace legwork;

namespace {
constexpr double kLimit = 30; // seconds, for what should take one

class Watch {
public:
    ~Watch() { CHECK(std::chrono::duration<double>(std::chrono::steady_clock::now() - start_).count() < kLimit); }

private:
    std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

Plan stopped(typed::Job const& job, double seconds) {
    Watch const watch;
    BalanceOptions options;
    options.best = true;
    options.seconds = seconds;
    Plan const plan = balance(resolve(job), options);
    CHECK(recheck(resolve(job), plan, false) == std::vector<std::string>{});
    return plan;
}
} // namespace

TEST_CASE("balance: a hard stop ends the search, and says so", "[balance][stop]") {
    for (typed::Job const& job : {oracle::hard_homes(1), oracle::short_wires()}) {
        PanelPlan const p = stopped(job, 0.3).panels.at(0);
        CHECK(p.stopped_by_time);
        CHECK_FALSE(p.placements.empty());
        CHECK_FALSE(p.proven);
        REQUIRE(p.lower_bound_va);
        CHECK(*p.lower_bound_va < *p.least_imbalance_va);
    }
}

TEST_CASE("balance: with no time at all every panel still has its descent", "[balance][stop][slow]") {
    typed::Job const job = oracle::hard_homes(4);
    Plan const plan = stopped(job, 0);
    Plan const filed = as_filed(resolve(job));
    for (PanelPlan const& p : plan.panels) {
        REQUIRE(p.imbalance_va);
        // Panels that are alike get alike, whichever comes first.
        CHECK(p.imbalance_va == plan.panels[0].imbalance_va);
        CHECK(*p.imbalance_va * 10 < *plan_of(filed, p.panel)->imbalance_va);
    }
    CHECK_FALSE(stopped(oracle::short_wires(), 0).panels.at(0).placements.empty());
}

TEST_CASE("balance: panels share the time, none is left with its descent alone", "[balance][stop]") {
    typed::Job const job = oracle::hard_homes(2);
    Plan const none = stopped(job, 0), some = stopped(job, 3);
    for (std::size_t i = 0; i < some.panels.size(); ++i)
        CHECK(some.panels[i].imbalance_va < none.panels[i].imbalance_va);
}

TEST_CASE("as filed: counted steps end the search, whatever the job", "[balance][stop][filed][slow]") {
    for (typed::Job const& job : {oracle::hard_homes(4), oracle::short_wires(), oracle::full_job()}) {
        Watch const watch;
        Plan const plan = as_filed(resolve(job));
        CHECK(recheck(resolve(job), plan, true) == std::vector<std::string>{});
    }
}

TEST_CASE("balance: the same job gives the same plan where wires reach few spaces", "[balance][reach]") {
    typed::Job job = oracle::short_wires();
    job.situations.resize(1);
    BalanceOptions few;
    few.max_moves = 2;
    Plan const one = balance(resolve(job), few), two = balance(resolve(job), few);
    CHECK(recheck(resolve(job), one, false) == std::vector<std::string>{});
    REQUIRE_FALSE(one.panels[0].placements.empty());
    for (std::size_t i = 0; i < one.panels[0].placements.size(); ++i)
        CHECK(one.panels[0].placements[i].slots == two.panels[0].placements[i].slots);
    CHECK(one.panels[0].lower_bound_va == two.panels[0].lower_bound_va);
}
