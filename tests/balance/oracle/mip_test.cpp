// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The optimizer against general-purpose MIP solvers (GLPK's glpsol and COIN-OR's cbc), which prove each value
// themselves.

#include "balance/balance.h"
#include "balance/oracle/models.h"
#include "balance/oracle/random.h"
#include "balance/oracle/recount.h"
#include "building/resolve.h"

#include "catch.h"

using namespace legwork;
using namespace legwork::oracle;

namespace {
constexpr int kSeconds = 20;

PanelPlan best(typed::Job const& job) {
    BalanceOptions options;
    options.best = true;
    return balance(resolve(job), options).panels.at(0);
}

// The least imbalance with at most so many moves, of the trade-off told.
std::optional<std::int64_t> told(PanelPlan const& p, std::optional<int> max_moves) {
    std::optional<std::int64_t> found;
    for (TradeoffStep const& s : p.tradeoff)
        if (!max_moves || s.moves <= *max_moves) found = s.imbalance_va;
    return found;
}

void agree(Solved const& solver, std::optional<std::int64_t> const& value) {
    INFO(solver.output);
    if (value) {
        REQUIRE(solver.how == Solved::How::optimal);
        CHECK(solver.imbalance == *value);
    } else {
        CHECK(solver.how == Solved::How::infeasible);
    }
}
} // namespace

TEST_CASE("balance against glpsol: every place of every circuit", "[balance][oracle][mip]") {
    if (auto const package = missing_package("glpsol"); !package.empty()) FAIL("install the package " << package);
    for (std::uint64_t seed = 50'000; seed < 50'020; ++seed) {
        typed::Job const job = random_job(seed, {.most_spaces = 8, .most_situations = 2, .pair_heavy = seed % 2 == 0});
        CAPTURE(seed, as_toml(job));
        auto const b = board(job, job.panels[0], Today::may_move);
        PanelPlan const p = best(job);
        agree(solve_with_glpsol(full_model(b), kSeconds), told(p, {}));
        agree(solve_with_glpsol(full_model(b, 1), kSeconds), told(p, 1));
    }
}

TEST_CASE("balance against cbc: 24 and 42 spaces", "[balance][oracle][mip]") {
    if (auto const package = missing_package("cbc"); !package.empty()) FAIL("install the package " << package);
    auto const home = GENERATE(Home{24, 1, 3, 3, 2}, Home{24, 3, 3, 3, 2}, Home{24, 8, 3, 3, 2}, Home{42, 1, 5, 5, 3},
                               Home{42, 3, 5, 5, 3}, Home{42, 8, 6, 6, 3});
    for (std::uint64_t seed : {1U, 2U}) {
        typed::Job job = random_home(seed, home);
        if (seed == 2) job.circuits.back().fixed = job.circuits[5].fixed = true;
        CAPTURE(home.spaces, home.situations, seed);
        auto const l = legs(job, job.panels[0]);
        PanelPlan const p = best(job);
        REQUIRE(p.proven);
        agree(solve_with_cbc(compact_model(l), kSeconds), told(p, {}));
        agree(solve_with_cbc(compact_model(l, 3), kSeconds), told(p, 3));
        auto const recounted = recount(job, p, Today::may_move);
        CHECK(recounted.faults == std::vector<std::string>{});
        CHECK(recounted.imbalance == told(p, {}));
    }
}

namespace {
// Loads of 500 VA each, some of 1000: a solver proves such panels soon, if not those with any loads.
typed::Job coarse(typed::Job job) {
    job.situations.clear();
    for (std::size_t i = 0; i < job.circuits.size(); ++i) {
        job.circuits[i].measured.reset();
        job.circuits[i].load = VoltAmperes{i % 3 == 0 ? 1'000'000 : 500'000};
    }
    return job;
}
} // namespace

TEST_CASE("balance against cbc: wires that reach few spaces, every place of every circuit",
          "[balance][oracle][mip][reach]") {
    if (auto const package = missing_package("cbc"); !package.empty()) FAIL("install the package " << package);
    auto const kind = GENERATE(RandomPanel{.most_spaces = 24, .reach = true, .short_wires = 60},
                               RandomPanel{.most_spaces = 28, .reach = true, .within = 25},
                               RandomPanel{.most_spaces = 26, .pair_heavy = true, .reach = true});
    for (std::uint64_t seed = 60'000; seed < 60'020; ++seed) {
        typed::Job const job = coarse(random_job(seed, kind));
        CAPTURE(seed, as_toml(job));
        if (phase(job, job.panels[0]) != Phase::two_legs) continue;
        auto const b = board(job, job.panels[0], Today::may_move);
        PanelPlan const p = best(job);
        auto const recounted = recount(job, p, Today::may_move);
        if (p.imbalance_va) CHECK(recounted.faults == std::vector<std::string>{});
        CHECK((p.proven || !job.panels[0].tandem.empty()));
        agree(solve_with_cbc(full_model(b), kSeconds), told(p, {}));
        agree(solve_with_cbc(full_model(b, 2), kSeconds), told(p, 2));
    }
}
