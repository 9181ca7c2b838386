// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every rule over a large panel, finding its spaces not counted; and the search that check allows itself.

#include "balance/balance.h"
#include "balance/oracle/homes.h"
#include "bench.h"
#include "building/resolve.h"
#include "child.h"
#include "rules/check.h"
#include "source_folder.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace legwork::bench {

namespace {
constexpr char const* kNames[] = {"check/84 spaces, 80 circuits, NEC 2023", "check/84 spaces, 80 circuits, CE 2024"};
constexpr char const* kCodes[] = {"NEC 2023", "CE 2024"};

struct Kind {
    char const *name, *room, *use;
};
// What a house has, so that every theme of rules has something to read.
constexpr Kind kOfOnePole[] = {
    {"Counter, left of sink", "Kitchen", "kitchen counter"},
    {"Lights", "Hall", "lighting"},
    {"Receptacles, north wall", "Bedroom", "receptacles"},
    {"Vanity", "Bathroom", "bathroom"},
    {"Refrigerator", "Pantry", "refrigerator"},
    {"Bench receptacles", "Garage", "garage"},
    {"Yard receptacles, gate", "Outdoors", "outdoor"},
    {"Sump pump", "Crawl space", "sump pump"},
    {"Dishwasher", "Kitchen", "dishwasher"},
    {"Washer", "Laundry room", "laundry"},
};
constexpr Kind kOfTwoPoles[] = {{"Baseboard", "Bedroom", "baseboard"},
                                {"Dryer", "Laundry room", "dryer"},
                                {"Water heater", "Utility room", "water heater"},
                                {"Kiln", "Workshop", ""}};

// Each circuit with what the rules ask for, so that none is passed over for want of a breaker or a cable.
typed::Job large_job(std::string code) {
    typed::Job job = oracle::random_home(1, {84, 3, 2, 8, 2, 1400});
    job.code = std::move(code);
    job.dwelling = typed::Dwelling{};
    std::size_t n = 0;
    for (typed::Circuit& c : job.circuits) {
        Kind const& k =
            c.poles == 2 ? kOfTwoPoles[n++ % std::size(kOfTwoPoles)] : kOfOnePole[n++ % std::size(kOfOnePole)];
        c.name = fmt::format("{}, {}", k.name, c.mark);
        c.room = k.room;
        c.use = k.use;
        c.breaker = 20_A;
        c.run = {{c.multiwire.empty() ? "12/2" : "12/3", from_mm(12'000), ""}};
    }
    return job;
}

void all_rules(benchmark::State& state, std::string const& code) {
    typed::Job const job = large_job(code);
    CodeBook const* book = code_book(code);
    if (!book) return state.SkipWithError("no code book");
    Building const building = resolve(job);
    Plan const plan = as_filed(building);
    for (auto _ : state) benchmark::DoNotOptimize(check(building, plan, *book));
    state.counters["circuits"] = static_cast<double>(job.circuits.size());
}

// Pairs that stand far apart, many on one leg: each look for room is dear.
typed::Job scattered(typed::Job job) {
    std::vector<typed::Circuit*> ones;
    for (typed::Circuit& c : job.circuits)
        if (c.poles == 1 && c.space) ones.push_back(&c);
    std::uint32_t random = 12345;
    for (std::size_t i = ones.size(); i > 1; --i) {
        random = random * 1664525U + 1013904223U;
        std::swap(ones[i - 1]->space, ones[(random >> 8) % i]->space);
    }
    return job;
}

struct Search {
    char const* what;
    oracle::Home home;
    bool scatter;
};
constexpr Search kSearches[] = {
    {"check's search, 84 spaces, 76 decisions, 8 situations", {84, 8, 0, 0, 8, 1900}, false},
    {"check's search, 84 spaces, 20 pairs apart, 3 situations", {84, 3, 2, 20, 4, 1900}, true},
    {"check's search, 84 spaces, 30 pairs apart, 1 situation", {84, 1, 2, 30, 4, 1900}, true},
};

Row search_row(Search const& s) {
    Ran const ran = run([&] {
        typed::Job job = oracle::random_home(3, s.home);
        if (s.scatter) job = scattered(std::move(job));
        Plan const plan = as_filed(resolve(job));
        return recheck(resolve(job), plan, true).empty() ? (plan.panels[0].proven ? 0 : 1) : 2;
    });
    bool const ok = ran.status == 0 || ran.status == 1;
    return {s.what,
            fmt::format("{:.3f} s, {:.0f} MiB, {}", ran.seconds, ran.peak_mib,
                        ran.status == 0   ? "proven"
                        : ran.status == 1 ? "not proven"
                                          : "FALSE PLAN"),
            "about 1 s, 64 MiB", ok && ran.seconds <= 1.5 && ran.peak_mib <= 64};
}
} // namespace

void register_check() {
    for (std::size_t i = 0; i < std::size(kNames); ++i)
        benchmark::RegisterBenchmark(kNames[i], [i](benchmark::State& state) {
            all_rules(state, kCodes[i]);
        })->Unit(benchmark::kMillisecond);
}

Rows check_rows(Times const& times) {
    Rows rows;
    for (std::size_t i = 0; i < std::size(kNames); ++i) {
        auto const what = fmt::format("check of 80 circuits under {}, the balance not counted", kCodes[i]);
        auto const at = times.find(kNames[i]);
        if (at == times.end())
            rows.push_back({what, "did not run", "under 20 ms", false});
        else
            rows.push_back({what, fmt::format("{:.2f} ms", at->second * 1e3), "under 20 ms", at->second < 0.020});
    }
    return rows;
}

Rows check_search_rows() {
    Rows rows;
    Ran const whole = run({LEGWORK_PROGRAM, "check", in_sources("examples/boathouse.toml")});
    rows.push_back({"check examples/boathouse.toml, the program from start to end",
                    fmt::format("{:.0f} ms", whole.seconds * 1e3), "under 100 ms",
                    whole.status == 0 && whole.seconds < 0.1});
    for (Search const& s : kSearches) rows.push_back(search_row(s));
    return rows;
}

} // namespace legwork::bench
