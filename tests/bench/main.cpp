// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "bench.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <cstdio>

namespace {
using namespace legwork::bench;

// Shows the usual lines and keeps the means for the table.
class Keeper : public benchmark::ConsoleReporter {
public:
    void ReportRuns(std::vector<Run> const& runs) override {
        for (Run const& r : runs)
            if (!r.error_occurred && r.run_type == Run::RT_Iteration)
                times[r.run_name.function_name] = time_of(r) / static_cast<double>(r.iterations);
        ConsoleReporter::ReportRuns(runs);
    }
    Times times;

private:
    // Times of children are told by hand and stand as real time; all others are this process's own.
    static double time_of(Run const& r) {
        return r.run_name.time_type == "manual_time" ? r.real_accumulated_time : r.cpu_accumulated_time;
    }
};

void add(Rows& to, Rows const& more) { to.insert(to.end(), more.begin(), more.end()); }

void table(Rows const& rows) {
    fmt::print("\n{:<66} {:>22}   {:<22}\n", "what", "measured", "target");
    for (Row const& r : rows)
        fmt::print("{:<66} {:>22}   {:<22} {}\n", r.what, r.measured, r.target, r.met ? "met" : "NOT MET");
}
} // namespace

int main(int count, char** words) {
    benchmark::Initialize(&count, words);
    if (benchmark::ReportUnrecognizedArguments(count, words)) return 2;
    Rows rows = print_memory_rows();
    add(rows, balance_limit_rows());
    add(rows, check_search_rows());
    add(rows, stop_rows());
    register_print();
    register_balance();
    register_check();
    Keeper keeper;
    benchmark::RunSpecifiedBenchmarks(&keeper);
    add(rows, print_rows(keeper.times));
    add(rows, balance_rows(keeper.times));
    add(rows, check_rows(keeper.times));
    table(rows);
}
