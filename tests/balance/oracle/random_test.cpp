// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The optimizer against exhaustive placement on thousands of random panels of up to 12 spaces. Source of the expected
// values: every placement of every case, see exhaustive.cpp.

#include "balance/oracle/judge.h"
#include "balance/oracle/random.h"
#include "job/job.h"

#include "catch.h"

#include <cstdlib>

using namespace legwork;
using namespace legwork::oracle;

namespace {
#ifdef LEGWORK_SANITIZED
constexpr std::uint64_t kShare = 5; // the sanitizers are slow: every fifth case
#else
constexpr std::uint64_t kShare = 1;
#endif

void right_about(typed::Job const& job, std::uint64_t seed) {
    auto const faults = judge(job);
    if (faults.empty()) return;
    typed::Job const small = smallest_wrong(job);
    std::string words = "seed " + std::to_string(seed) + "\n";
    for (std::string const& f : judge(small)) words += f + "\n";
    FAIL_CHECK(words << as_toml(small));
}

void right_about_all(RandomPanel const& kind, std::uint64_t first, std::uint64_t cases) {
    for (std::uint64_t seed = first; seed < first + cases; seed += kShare) right_about(random_job(seed, kind), seed);
}

std::uint64_t asked(char const* name, std::uint64_t otherwise) {
    char const* text = std::getenv(name);
    return text ? std::strtoull(text, nullptr, 10) : otherwise;
}
} // namespace

TEST_CASE("balance against exhaustive placement: small panels of every kind", "[balance][oracle]") {
    right_about_all({.most_spaces = 8}, 1, 2000);
}

TEST_CASE("balance against exhaustive placement: up to 12 spaces", "[balance][oracle]") {
    right_about_all({.most_situations = 2}, 10'000, 400);
}

TEST_CASE("balance against exhaustive placement: full of pairs", "[balance][oracle]") {
    right_about_all({.pair_heavy = true}, 20'000, 1000);
}

TEST_CASE("balance against exhaustive placement: half-size breakers stay and count", "[balance][oracle]") {
    right_about_all({.most_spaces = 8, .halves = true}, 30'000, 500);
}

TEST_CASE("balance against exhaustive placement: two-pole breakers on halves, some spaces of which take none",
          "[balance][oracle][halves]") {
    right_about_all({.most_spaces = 10, .halves = true, .half_two_poles = true}, 31'000, 800);
}

TEST_CASE("balance against exhaustive placement: a sub-panel loads the panel above", "[balance][oracle]") {
    for (std::uint64_t seed = 40'000; seed < 40'300; seed += kShare) right_about(random_job_with_sub_panel(seed), seed);
}

TEST_CASE("balance against exhaustive placement: wires that reach few spaces", "[balance][oracle]") {
    right_about_all({.most_spaces = 10, .reach = true}, 80'000, 500);
}

TEST_CASE("balance against exhaustive placement: most wires reach few spaces", "[balance][oracle]") {
    right_about_all({.most_spaces = 10, .reach = true, .short_wires = 70, .within = 30}, 81'000, 400);
    right_about_all({.most_spaces = 12, .most_situations = 2, .reach = true, .short_wires = 60, .within = 50}, 82'000,
                    150);
    right_about_all({.most_spaces = 12, .pair_heavy = true, .reach = true, .short_wires = 50, .within = 60}, 83'000,
                    150);
}

// Not part of the suite: test_balance "[long]", with LEGWORK_SEED and LEGWORK_CASES in the environment.
TEST_CASE("balance against exhaustive placement: a long run", "[.][long][slow]") {
    std::uint64_t const first = asked("LEGWORK_SEED", 1'000'000), cases = asked("LEGWORK_CASES", 10'000);
    for (std::uint64_t seed = first; seed < first + cases; ++seed) {
        bool const pairs = seed % 3 == 0;
        RandomPanel const kind{.most_spaces = pairs ? 12 : 10,
                               .pair_heavy = pairs,
                               .halves = seed % 5 == 0,
                               .reach = seed % 2 == 0,
                               .short_wires = seed % 4 == 0 ? 30 : 70,
                               .within = seed % 8 < 4 ? 60 : 30};
        right_about(seed % 10 == 9 ? random_job_with_sub_panel(seed) : random_job(seed, kind), seed);
    }
}
