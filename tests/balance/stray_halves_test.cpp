// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Circuits typed in on any half of any space, whether the panel takes halves there or not: whatever stands in the file,
// a plan holds or says why there is none. Judged by the recheck, which shares nothing with the search.

#include "balance/balance.h"
#include "balance/oracle/random.h"
#include "balance/oracle/reckon.h"
#include "building/resolve.h"

#include "catch.h"

#include <cstdlib>
#include <map>

using namespace legwork;
using namespace legwork::oracle;

namespace {
// Everybody who has a space gets any spot that nobody has yet; so do some newcomers.
class Strayer {
public:
    Strayer(std::uint64_t seed, typed::Job& job) : dice_(seed), job_(job) {}

    void scatter() {
        for (typed::Circuit& c : job_.circuits) {
            c.fixed = false;
            c.space.reset();
        }
        for (typed::Circuit& c : job_.circuits) {
            if (dice_.chance(25)) continue;
            for (int tries = 0; tries < 12 && !c.space; ++tries) stand(c, *panel_of(job_, c.panel));
            c.fixed = c.space && dice_.chance(15);
        }
    }

private:
    void stand(typed::Circuit& c, typed::Panel const& p) {
        Spot const s{dice_.from(1, p.spaces), dice_.chance(40) ? '\0' : dice_.chance(50) ? 'a' : 'b'};
        std::vector<Spot> spots{s};
        if (c.poles == 2) {
            auto const all = seats(job_, p);
            for (int t = 1; t <= p.spaces; ++t) {
                Seat const &upper = all[static_cast<std::size_t>(s.space) - 1],
                           &lower = all[static_cast<std::size_t>(t) - 1];
                if (lower.column == upper.column && lower.row == upper.row + 1)
                    spots.push_back({t, s.half == 0 ? '\0' : s.half == 'a' ? 'b' : 'a'});
            }
            if (spots.size() == 1) return;
        }
        // The reader refuses these two.
        for (Spot const t : spots) {
            if (std::count(p.blocked.begin(), p.blocked.end(), t.space)) return;
            for (char const h : halves(t))
                if (taken_.count({p.name, t.space, h})) return;
        }
        for (Spot const t : spots)
            for (char const h : halves(t)) taken_[{p.name, t.space, h}] = true;
        c.space = s;
    }
    static std::string halves(Spot s) { return s.half ? std::string(1, s.half) : std::string("ab"); }

    Dice dice_;
    typed::Job& job_;
    std::map<std::tuple<std::string, int, char>, bool> taken_;
};

typed::Job stray_job(std::uint64_t seed) {
    RandomPanel const kind{.most_spaces = seed % 4 == 0 ? 16 : 10,
                           .most_situations = 2,
                           .pair_heavy = seed % 3 == 0,
                           .halves = true,
                           .reach = seed % 5 == 0};
    typed::Job job = seed % 7 == 0 ? random_job_with_sub_panel(seed) : random_job(seed, kind);
    Strayer(seed, job).scatter();
    return job;
}

std::uint64_t asked(char const* name, std::uint64_t otherwise) {
    char const* const text = std::getenv(name);
    return text ? std::strtoull(text, nullptr, 10) : otherwise;
}
} // namespace

TEST_CASE("balance: whatever halves the file has, the plan adds up", "[balance][halves]") {
    std::uint64_t const first = asked("LEGWORK_SEED", 90'000), cases = asked("LEGWORK_CASES", 1500);
    int plans = 0;
    for (std::uint64_t seed = first; seed < first + cases; ++seed) {
        typed::Job const job = stray_job(seed);
        CAPTURE(seed, as_toml(job));
        BalanceOptions best, few;
        best.best = true;
        few.max_moves = static_cast<int>(seed % 4);
        for (auto const& options : {best, few, BalanceOptions{}}) {
            Plan const plan = balance(resolve(job), options);
            CHECK(recheck(resolve(job), plan, false) == std::vector<std::string>{});
            plans += !plan.panels[0].placements.empty();
        }
        CHECK(recheck(resolve(job), as_filed(resolve(job)), true) == std::vector<std::string>{});
    }
    CHECK(plans > static_cast<int>(cases)); // of three a job
}

namespace {
typed::Job one_panel(int spaces, std::vector<int> tandem) {
    typed::Job job;
    typed::Panel p;
    p.name = "Main";
    p.spaces = spaces;
    p.supply = typed::Supply{};
    p.tandem = std::move(tandem);
    job.panels.push_back(p);
    return job;
}
typed::Circuit& add(typed::Job& job, std::string mark, int poles, Spot at) {
    typed::Circuit c;
    c.mark = std::move(mark);
    c.panel = "Main";
    c.poles = poles;
    c.space = at;
    return job.circuits.emplace_back(std::move(c));
}
std::vector<Spot> spots_of(typed::Job const& job, std::string_view mark) {
    Plan const plan = balance(resolve(job));
    REQUIRE(recheck(resolve(job), plan, false) == std::vector<std::string>{});
    CHECK(plan.panels[0].moves == 0);
    Placement const* const p = placement_of(plan, mark);
    REQUIRE(p);
    return p->slots;
}
} // namespace

TEST_CASE("balance: a two-pole breaker on halves, of which one space takes none, becomes full-size",
          "[balance][halves]") {
    for (auto const& tandem : std::vector<std::vector<int>>{{}, {2}, {4}}) {
        typed::Job job = one_panel(8, tandem);
        add(job, "HEAT", 2, {2, 'b'});
        CHECK(spots_of(job, "HEAT") == std::vector<Spot>{{2, 0}, {4, 0}});
    }
    typed::Job job = one_panel(8, {2, 4});
    add(job, "HEAT", 2, {2, 'b'});
    CHECK(spots_of(job, "HEAT") == std::vector<Spot>{{2, 'b'}, {4, 'a'}});
}

TEST_CASE("balance: a circuit of a pair on a half that its space does not take becomes full-size",
          "[balance][halves]") {
    typed::Job job = one_panel(8, {2});
    for (auto const& [mark, at] : {std::pair{"LEFT", Spot{2, 'b'}}, std::pair{"RIGHT", Spot{4, 'b'}}}) {
        typed::Circuit& c = add(job, mark, 1, at);
        c.multiwire = "counter";
        c.tie = Tie::handle_tie;
    }
    CHECK(spots_of(job, "LEFT") == std::vector<Spot>{{2, 'b'}});
    CHECK(spots_of(job, "RIGHT") == std::vector<Spot>{{4, 0}});
}

TEST_CASE("balance: beside a half that stays no breaker becomes full-size", "[balance][halves]") {
    typed::Job job = one_panel(8, {2});
    add(job, "HEAT", 2, {2, 'b'});
    add(job, "LIGHT", 1, {2, 'a'});
    Plan const plan = balance(resolve(job));
    REQUIRE(recheck(resolve(job), plan, false) == std::vector<std::string>{});
    CHECK(placement_of(plan, "LIGHT")->slots == std::vector<Spot>{{2, 'a'}});
    CHECK(plan.panels[0].moves == 1);
}
