// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What short wires cost, against the same job with long ones; what the search of check costs at worst; and by how much
// a hard stop is missed, which is the one thing here that is read off the clock on the wall: run it on a quiet machine.

#include "balance/balance.h"
#include "balance/hard_homes.h"
#include "balance/oracle/random.h"
#include "bench.h"
#include "building/resolve.h"
#include "child.h"

#include <fmt/format.h>

#include <fstream>

namespace legwork::bench {

namespace {

// Exit status: 0 the plan holds.
int filed(typed::Job const& job) { return recheck(resolve(job), as_filed(resolve(job)), true).empty() ? 0 : 2; }

typed::Job with_long_wires(typed::Job job) {
    for (typed::Circuit& c : job.circuits) {
        c.reach_side.clear();
        c.reach_spaces.clear();
    }
    return job;
}

struct Case {
    char const* what;
    typed::Job job;
    double seconds; // for the search of check
};
std::vector<Case> cases() {
    return {{"84 spaces, two wires of three short, 8 situations", oracle::short_wires(), 1},
            {"20 panels, 400 circuits, one wire of two short", oracle::full_job(), 5},
            {"4 panels of 84 spaces, 76 decisions each", oracle::hard_homes(4), 1}};
}

Rows search_rows(Case const& c) {
    Ran const with = run([&] { return filed(c.job); });
    Rows rows{{"check's search, " + std::string(c.what),
               fmt::format("{:.2f} s, {:.0f} MiB", with.seconds, with.peak_mib),
               fmt::format("about {} s, 64 MiB", c.seconds),
               with.status == 0 && with.seconds <= 1.5 * c.seconds && with.peak_mib <= 64}};
    return rows;
}

// Panels of every size whose wires are short as in a house: the search must not be dearer by much.
Row house_row() {
    auto const all = [](bool is_short) {
        for (std::uint64_t seed = 1; seed <= 60; ++seed) {
            typed::Job job = oracle::random_job(seed, {.most_spaces = 42, .reach = true});
            BalanceOptions best;
            best.best = true;
            if (!is_short) job = with_long_wires(std::move(job));
            if (!recheck(resolve(job), balance(resolve(job), best), false).empty()) return 2;
        }
        return 0;
    };
    Ran const with = run([&] { return all(true); }), without = run([&] { return all(false); });
    double const ratio = with.seconds / std::max(without.seconds, 1e-3);
    return {"60 panels of up to 42 spaces: with short wires / with long ones", fmt::format("{:.1f} times", ratio),
            "at most 20 times", with.status == 0 && without.status == 0 && ratio <= 20};
}

Row stop_row(Case const& c, std::string const& file, double seconds) {
    std::ofstream(file) << oracle::as_toml(c.job);
    Ran const ran = run({LEGWORK_PROGRAM, "balance", file, "--seconds", fmt::format("{}", seconds)});
    double const over = ran.elapsed - seconds;
    return {fmt::format("--seconds {}, {}: time taken / time given", seconds, c.what),
            fmt::format("{:.2f} times", ran.elapsed / seconds), fmt::format("at most {:.1f} times", 1 + 0.5 / seconds),
            ran.status >= 0 && ran.status <= 1 && over <= 0.5};
}

} // namespace

Rows stop_rows() {
    Folder const folder;
    Rows rows{house_row()};
    for (Case const& c : cases()) {
        auto const more = search_rows(c);
        rows.insert(rows.end(), more.begin(), more.end());
        for (double const seconds : {1.0, 5.0}) rows.push_back(stop_row(c, folder.path() + "/job.toml", seconds));
    }
    return rows;
}

} // namespace legwork::bench
