// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every rule over a large panel. Finding its spaces is not counted.

#include "balance/balance.h"
#include "bench.h"
#include "check/check.h"
#include "oracle_homes.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

namespace legwork::bench {

namespace {
constexpr char const* kName = "check/84 spaces, 80 circuits";

// Each circuit with what the rules ask for, so that none is passed over for want of a breaker or a cable.
Job large_job() {
    Job job = oracle::random_home(1, {84, 3, 2, 8, 2, 1400});
    for (Circuit& c : job.circuits) {
        c.name = "Receptacles, room " + c.mark;
        c.room = "Room " + c.mark;
        c.use = "receptacles";
        c.breaker = 20_A;
        c.run = {{c.multiwire.empty() ? "12/2" : "12/3", from_mm(12'000), ""}};
    }
    return job;
}

void all_rules(benchmark::State& state) {
    Job const job = large_job();
    CodeBook const* book = code_book(job.code);
    if (!book) return state.SkipWithError("no code book");
    Plan const plan = as_filed(job);
    for (auto _ : state) benchmark::DoNotOptimize(check(job, plan, *book));
    state.counters["circuits"] = static_cast<double>(job.circuits.size());
}
} // namespace

void register_check() { benchmark::RegisterBenchmark(kName, all_rules)->Unit(benchmark::kMillisecond); }

Rows check_rows(Times const& times) {
    auto const at = times.find(kName);
    if (at == times.end()) return {{"check of 80 circuits", "did not run", "under 20 ms", false}};
    return {{"check of 80 circuits on 84 spaces, the balance not counted", fmt::format("{:.2f} ms", at->second * 1e3),
             "under 20 ms", at->second < 0.020}};
}

} // namespace legwork::bench
