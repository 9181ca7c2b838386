// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// `print` of a whole job against the least that any program pays which draws text.

#include "bench.h"
#include "child.h"
#include "source_folder.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

namespace legwork::bench {

namespace {
std::string const kJob = in_sources("examples/boathouse.toml");

Ran print_job(Folder const& out) {
    return run({LEGWORK_PROGRAM, "print", kJob, "--out", out.path(), "--format", "pdf", "--format", "svg"});
}
Ran blank_page(Folder const& out) { return run({BLANK_PAGE_PROGRAM, out.path() + "/blank.pdf"}); }

template <class Program>
void measure(benchmark::State& state, Program program) {
    Folder const out;
    for (auto _ : state) {
        Ran const ran = program(out);
        if (ran.status != 0) return state.SkipWithError("did not exit with 0");
        state.SetIterationTime(ran.seconds);
    }
}
} // namespace

void register_print() {
    for (auto const& [name, program] : {std::pair{"print/boathouse", &print_job}, {"print/blank page", &blank_page}})
        benchmark::RegisterBenchmark(name, [program](benchmark::State& s) { measure(s, program); })
            ->UseManualTime()
            ->MinTime(1.0)
            ->Unit(benchmark::kMillisecond);
}

Rows print_rows(Times const& times) {
    auto const job = times.find("print/boathouse"), blank = times.find("print/blank page");
    if (job == times.end() || blank == times.end())
        return {{"print examples/boathouse.toml", "did not run", "", false}};
    double const ratio = job->second / blank->second;
    return {{"print boathouse, all sheets, PDF and SVG / an empty PDF with one line",
             fmt::format("{:.2f} times", ratio), "at most 5 times", ratio <= 5}};
}

Rows print_memory_rows() {
    Folder const out;
    Ran const ran = print_job(out);
    return {{"print boathouse, all sheets, PDF and SVG: peak memory",
             ran.status == 0 ? fmt::format("{:.1f} MiB", ran.peak_mib) : fmt::format("exit {}", ran.status),
             "under 64 MiB", ran.status == 0 && ran.peak_mib < 64}};
}

} // namespace legwork::bench
