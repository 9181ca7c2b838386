// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Two runs that write one job at once: all texts are accounted for, and nobody's exit status 0 lies.

#include "judge.h"
#include "temporary_folder.h"
#include "walk.h"

#include "catch.h"

#include <algorithm>
#include <chrono>
#include <thread>

using namespace faults;

namespace {

using Words = std::vector<std::string>;

// The job after one run, and after another on top of it.
std::string written_by(Words const& words, std::string const& job) {
    TemporaryFolder const folder;
    lay_out(folder.path(), {{"job.toml", somebodys(job)}});
    auto const ran = run(folder.path(), words);
    if (ran.status != 0) throw std::runtime_error(ran.err);
    return contents(folder / "job.toml");
}

struct Pair {
    Scene first, second;
    std::string old_job, by_first, by_second, by_second_then_first, by_first_then_second;
};

Pair pair_of(Scene first, Scene second) {
    auto const old_job = first.before.at("job.toml").bytes;
    auto const by_first = first.after.at("job.toml").bytes, by_second = second.after.at("job.toml").bytes;
    return {.first = first,
            .second = second,
            .old_job = old_job,
            .by_first = by_first,
            .by_second = by_second,
            .by_second_then_first = written_by(first.words, by_second),
            .by_first_then_second = written_by(second.words, by_first)};
}

// The texts that may stand, the job first and then the kept ones, latest first, given who says that it is done.
std::vector<std::vector<std::string>> lawful(Pair const& pair, bool first_done, bool second_done) {
    auto const& ancient = pair.first.before.at("job.before.toml").bytes;
    if (!first_done) return {{pair.by_second, pair.old_job, ancient}};
    if (!second_done) return {{pair.by_first, pair.old_job, ancient}};
    if (pair.by_first == pair.by_second) return {{pair.by_first, pair.old_job, ancient}}; // nothing was left to do
    return {{pair.by_first_then_second, pair.by_first, pair.old_job, ancient},
            {pair.by_second_then_first, pair.by_second, pair.old_job, ancient}};
}

std::vector<std::string> texts(Folder const& folder) {
    std::vector<std::string> found;
    for (auto const* name : {"job.toml", "job.before.toml", "job.before-2.toml", "job.before-3.toml"})
        if (folder.contains(name)) found.push_back(folder.at(name).bytes);
    return found;
}

void check_accounts(Pair const& pair, Ran const& first, Ran const& second, Folder const& now) {
    CAPTURE(first.status, first.err, second.status, second.err);
    for (auto const* ran : {&first, &second}) {
        CHECK((ran->status == 0 || ran->status == 3));
        if (ran->status == 3) CHECK_THAT(ran->err, Contains("meanwhile"));
    }
    CHECK((first.status == 0 || second.status == 0));
    auto const found = texts(now);
    CHECK(found.size() == now.size()); // no strays
    auto const allowed = lawful(pair, first.status == 0, second.status == 0);
    CHECK(std::ranges::count(allowed, found) == 1);
}

// The second comes and does all it can before the n-th call of the first.
bool meets_at(Pair const& pair, std::string const& folder, unsigned nth) {
    lay_out(folder, pair.first.before);
    Running first(folder, pair.first.words, {.act = Act::stop, .nth = nth});
    bool const reached = first.stops();
    Running second(folder, pair.second.words, {});
    second.let_run();
    if (reached) first.go_on();
    auto const ended_first = first.end(), ended_second = second.end();
    CAPTURE(nth, ended_first.call, ended_first.path);
    check_accounts(pair, ended_first, ended_second, standing_in(folder));
    return reached;
}

std::vector<Pair> pairs() {
    return {pair_of(balance_write(), propose_write()), pair_of(propose_write(), balance_write()),
            pair_of(balance_write(), balance_write())};
}

} // namespace

TEST_CASE("a second run that comes at any call of a first", "[faults][writers]") {
    TemporaryFolder const folder;
    for (auto const& pair : pairs()) {
        INFO(pair.first.name + " met by " + pair.second.name);
        unsigned nth = 1;
        while (meets_at(pair, folder.path(), nth)) ++nth;
        REQUIRE(nth > 8);
    }
}

TEST_CASE("two runs at once, many rounds, both orders", "[faults][writers]") {
    TemporaryFolder const folder;
    int const rounds = is_long_walk() ? 300 : 15;
    for (auto const& pair : pairs())
        for (int round = 0; round < rounds; ++round) {
            INFO(pair.first.name + " and " + pair.second.name << ", round " << round);
            lay_out(folder.path(), pair.first.before);
            Running first(folder.path(), pair.first.words, {});
            std::this_thread::sleep_for(std::chrono::milliseconds(round % 12)); // from before main() to the end
            Running second(folder.path(), pair.second.words, {});
            auto const ended_first = first.end(), ended_second = second.end();
            check_accounts(pair, ended_first, ended_second, standing_in(folder.path()));
        }
}

TEST_CASE("two runs that make one job: one of them does", "[faults][writers]") {
    auto const scene = new_job();
    TemporaryFolder const folder;
    unsigned nth = 1;
    for (bool reached = true; reached; ++nth) {
        lay_out(folder.path(), scene.before);
        Running first(folder.path(), scene.words, {.act = Act::stop, .nth = nth});
        reached = first.stops();
        Running second(folder.path(), scene.words, {});
        second.let_run();
        if (reached) first.go_on();
        auto const ended_first = first.end(), ended_second = second.end();
        CAPTURE(nth, ended_first.call, ended_first.err, ended_second.err);
        CHECK(standing_in(folder.path()) == scene.after);
        auto const& refused = ended_first.status == 0 ? ended_second : ended_first;
        CHECK(ended_first.status + ended_second.status == 3);
        CHECK_THAT(refused.err, Contains("job.toml is there already"));
    }
    REQUIRE(nth > 8);
}
