// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The judges against each other, so that one that is wrong is not believed: exhaustive placement, GLPK's glpsol and
// COIN-OR's cbc on the full model, cbc on the compact one, sums of leg A.

#include "balance/oracle/homes.h"
#include "balance/oracle/instances.h"
#include "balance/oracle/models.h"
#include "balance/oracle/random.h"
#include "balance/oracle/subset_sum.h"
#include "job/job.h"

#include "catch.h"

using namespace legwork;
using namespace legwork::oracle;

namespace {
std::optional<std::int64_t> within(std::vector<Step> const& front, int max_moves) {
    std::optional<std::int64_t> found;
    for (Step const& s : front)
        if (s.moves <= max_moves) found = s.imbalance;
    return found;
}

std::optional<std::int64_t> proven(Solved const& s) {
    INFO(s.output);
    REQUIRE((s.how == Solved::How::optimal || s.how == Solved::How::infeasible));
    return s.how == Solved::How::optimal ? std::optional(s.imbalance) : std::nullopt;
}
} // namespace

TEST_CASE("judges: exhaustive placement finds the proven answers of the worked panels", "[oracle]") {
    auto const all = instances();
    REQUIRE(all.size() >= 7);
    for (Instance const& i : all) {
        if (i.name == "tandem") continue; // new circuits on halves: not judged yet
        CAPTURE(i.name);
        CHECK(exhaustive(board(i.job, i.job.panels[0], Today::may_move)) == i.tradeoff);
    }
}

TEST_CASE("judges: exhaustive placement and both solvers on the full model", "[oracle][mip]") {
    for (char const* solver : {"glpsol", "cbc"})
        if (auto const package = missing_package(solver); !package.empty()) FAIL("install the package " << package);
    for (std::uint64_t seed = 60'000; seed < 60'025; ++seed) {
        typed::Job const job = random_job(seed, {.most_spaces = 8, .most_situations = 2, .pair_heavy = seed % 2 == 0});
        CAPTURE(seed, as_toml(job));
        auto const b = board(job, job.panels[0], Today::may_move);
        auto const front = exhaustive(b);
        for (int moves : {1, 12}) {
            CHECK(proven(solve_with_glpsol(full_model(b, moves), 20)) == within(front, moves));
            CHECK(proven(solve_with_cbc(full_model(b, moves), 20)) == within(front, moves));
        }
    }
}

TEST_CASE("judges: legs alone give the same as every place of every circuit", "[oracle][mip]") {
    if (auto const package = missing_package("cbc"); !package.empty()) FAIL("install the package " << package);
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        int const situations = seed % 2 == 0 ? 1 : 3;
        typed::Job const job = random_home(seed, {12, situations, 1, 2, static_cast<int>(seed % 3)});
        CAPTURE(seed, as_toml(job));
        auto const front = exhaustive(board(job, job.panels[0], Today::may_move));
        auto const l = legs(job, job.panels[0]);
        for (int moves : {0, 2, 12}) CHECK(proven(solve_with_cbc(compact_model(l, moves), 20)) == within(front, moves));
        if (situations > 1) continue;
        CHECK(subset_sum(l, 12) == front);
        CHECK(subset_sum_least(l) == front.back().imbalance);
    }
}
