// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The whole trade-off against a general-purpose MIP solver proving the optimum alone, and the sizes that must be
// proven in the time a person waits.

#include "balance/balance.h"
#include "balance/oracle/models.h"
#include "bench.h"
#include "building/resolve.h"
#include "child.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

namespace legwork::bench {

namespace {
using namespace oracle;

constexpr std::uint64_t kPanels = 5; // panels a comparison
constexpr int kSolverSeconds = 120;  // the solver's limit, a panel

Home home_of(int situations) { return {42, situations, 5, 5, 3}; } // 24 decisions

PanelPlan best(typed::Job const& job) {
    BalanceOptions options;
    options.best = true;
    return balance(resolve(job), options).panels.at(0);
}

std::vector<typed::Job> panels(int situations) {
    std::vector<typed::Job> jobs;
    for (std::uint64_t seed = 1; seed <= kPanels; ++seed) jobs.push_back(random_home(seed, home_of(situations)));
    return jobs;
}

std::string own(int situations) { return fmt::format("balance/42 spaces, {} situations", situations); }
std::string solver(int situations) { return fmt::format("cbc/42 spaces, {} situations", situations); }
constexpr char const* kSolverStart = "cbc/nothing to decide";

void whole_tradeoff(benchmark::State& state, int situations) {
    auto const jobs = panels(situations);
    for (auto _ : state)
        for (typed::Job const& job : jobs)
            if (!best(job).proven) return state.SkipWithError("not proven");
}

void solver_optimum(benchmark::State& state, int situations) {
    std::vector<std::string> models;
    for (typed::Job const& job : panels(situations)) models.push_back(compact_model(legs(job, job.panels[0])));
    for (auto _ : state) {
        double const before = seconds_of_children();
        for (auto const& model : models)
            if (solve_with_cbc(model, kSolverSeconds).how != Solved::How::optimal)
                return state.SkipWithError("the solver proved nothing");
        state.SetIterationTime(seconds_of_children() - before);
    }
}

// Starting the solver and passing it a file is not solving: taken off its time.
void solver_start(benchmark::State& state) {
    auto const model = compact_model({{0}, {{{1}, true, 1, true}}, 0, 1});
    for (auto _ : state) {
        double const before = seconds_of_children();
        for (std::uint64_t i = 0; i < kPanels; ++i) solve_with_cbc(model, kSolverSeconds);
        state.SetIterationTime(seconds_of_children() - before);
    }
}

struct Limit {
    char const* what;
    Home home;
    double seconds, mib;
    bool proven;
};
// All one-pole circuits: as many decisions as a panel can ask for.
constexpr Limit kLimits[] = {
    {"30 decisions, 3 situations, whole trade-off", {42, 3, 3, 3, 3, 1900}, 0.2, 512, true},
    {"30 decisions, 8 situations, whole trade-off", {42, 8, 3, 3, 3, 1900}, 0.2, 512, true},
    {"41 decisions, 3 situations, whole trade-off", {42, 3, 0, 0, 1, 1900}, 5, 512, true},
    {"41 decisions, 8 situations, whole trade-off", {42, 8, 0, 0, 1, 1900}, 5, 512, true},
    {"84 spaces, 41 decisions, 8 situations, whole trade-off", {84, 8, 15, 11, 2, 1900}, 5, 512, true},
    {"84 spaces, 76 decisions, 8 situations, honest stop", {84, 8, 0, 0, 8, 1900}, 30, 1024, false},
    {"84 spaces, 76 decisions, 1 situation, whole trade-off", {84, 1, 0, 0, 8, 1900}, 0.2, 512, true},
};

// Exit status of the child: 0 proven, 1 honestly not, 2 a claim that does not hold together.
int answer(Home const& home) {
    PanelPlan const p = best(random_home(3, home));
    bool const holds = p.imbalance_va && p.lower_bound_va && p.least_imbalance_va == p.imbalance_va &&
                       *p.lower_bound_va <= *p.imbalance_va && !p.tradeoff.empty();
    if (!holds) return 2;
    return p.proven ? (p.lower_bound_va == p.imbalance_va ? 0 : 2) : 1;
}

Row limit_row(Limit const& l) {
    Ran const ran = run([&] { return answer(l.home); });
    char const* said[] = {"proven", "not proven", "FALSE CLAIM"};
    bool const ok = ran.status == 0 || (ran.status == 1 && !l.proven);
    return {l.what,
            fmt::format("{:.3f} s, {:.0f} MiB, {}", ran.seconds, ran.peak_mib,
                        ran.status >= 0 && ran.status < 3 ? said[ran.status] : "CRASHED"),
            fmt::format("{} s, {} MiB{}", l.seconds, l.mib, l.proven ? ", proven" : ""),
            ok && ran.seconds <= l.seconds && ran.peak_mib <= l.mib};
}
} // namespace

void register_balance() {
    for (int s : {3, 8}) {
        benchmark::RegisterBenchmark(own(s).c_str(), whole_tradeoff, s)->Unit(benchmark::kMillisecond);
        benchmark::RegisterBenchmark(solver(s).c_str(), solver_optimum, s)
            ->UseManualTime()
            ->Iterations(1)
            ->Unit(benchmark::kMillisecond);
    }
    benchmark::RegisterBenchmark(kSolverStart, solver_start)->UseManualTime()->Unit(benchmark::kMillisecond);
}

Rows balance_rows(Times const& times) {
    Rows rows;
    for (int s : {3, 8}) {
        auto const what = fmt::format("42 spaces, {} situations: cbc's optimum alone / the whole trade-off", s);
        auto const ours = times.find(own(s)), theirs = times.find(solver(s)), start = times.find(kSolverStart);
        if (ours == times.end() || theirs == times.end() || start == times.end()) {
            rows.push_back({what, "did not run", "at least 50 times", false});
            continue;
        }
        double const ratio = (theirs->second - start->second) / ours->second;
        rows.push_back({what, fmt::format("{:.0f} times", ratio), "at least 50 times", ratio >= 50});
    }
    return rows;
}

Rows balance_limit_rows() {
    Rows rows;
    for (Limit const& l : kLimits) rows.push_back(limit_row(l));
    return rows;
}

} // namespace legwork::bench
