// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The odd corners of a panel, one small case each. Every figure here can be checked with a pencil.

#include "balance/balance.h"
#include "building/resolve.h"

#include "catch.h"

#include <algorithm>
#include <cstdlib>

using namespace legwork;

namespace {
struct On {
    typed::Job job;

    explicit On(int spaces) {
        typed::Panel p;
        p.name = "Main";
        p.spaces = spaces;
        p.supply = typed::Supply{};
        job.panels.push_back(p);
    }
    typed::Panel& panel() { return job.panels[0]; }
    typed::Circuit& add(std::string mark, std::int64_t va, int space = 0, int poles = 1) {
        typed::Circuit c;
        c.mark = std::move(mark);
        c.panel = "Main";
        c.poles = poles;
        c.tie = poles == 2 ? Tie::two_pole_breaker : Tie::none;
        c.load = VoltAmperes{va * 1000};
        if (space) c.space = Spot{space, 0};
        return job.circuits.emplace_back(std::move(c));
    }
    void pair(std::string group, std::int64_t a, std::int64_t b, int first = 0, int second = 0,
              Tie tie = Tie::handle_tie) {
        for (auto const& [mark, va, space] : {std::tuple{group + "1", a, first}, std::tuple{group + "2", b, second}}) {
            typed::Circuit& c = add(mark, va, space);
            c.multiwire = group;
            c.tie = tie;
        }
    }
};

PanelPlan best(typed::Job const& job) {
    BalanceOptions options;
    options.best = true;
    auto const plan = balance(resolve(job), options);
    CAPTURE(plan.panels[0].why);
    REQUIRE(recheck(resolve(job), plan, false) == std::vector<std::string>{});
    return plan.panels[0];
}

std::int64_t step_at(PanelPlan const& p, int moves) { // the least imbalance with at most so many moves
    std::int64_t least = -1;
    for (auto const& s : p.tradeoff)
        if (s.moves <= moves) least = s.imbalance_va;
    return least;
}

int space_of(PanelPlan const& p, std::string_view mark) {
    auto const at = std::ranges::find(p.placements, mark, &Placement::circuit);
    REQUIRE(at != p.placements.end());
    REQUIRE(at->slots.size() == 1);
    return at->slots[0].space;
}
} // namespace

TEST_CASE("balance: single gaps hold no pair, however many there are", "[balance][traps]") {
    On on(12); // free: 1, 5 + 7, 4 (the rest blocked): even in number on both legs, room for one pair only
    on.panel().blocked = {2, 3, 6, 8, 9, 10, 11, 12};
    on.pair("K", 900, 500);
    REQUIRE(best(on.job).imbalance_va == 400);
    on.pair("L", 900, 500);
    auto const plan = balance(resolve(on.job));
    REQUIRE_FALSE(plan.panels[0].imbalance_va);
    CAPTURE(plan.panels[0].why);
    REQUIRE(plan.panels[0].why.find("the gaps hold 1 of 2: 1, 5+7, 4") != std::string::npos);
}

TEST_CASE("balance: 42 spaces have 22 of one leg and 20 of the other", "[balance][traps]") {
    On on(42);
    for (int s = 1; s <= 42; ++s) on.add("C" + std::to_string(s), 100);
    auto const got = best(on.job); // 22 against 20 circuits of 100 VA: no layout is more even
    REQUIRE(got.imbalance_va == 200);
    REQUIRE(got.proven);
}

TEST_CASE("balance: on a full panel one circuit alone cannot change legs", "[balance][traps]") {
    On on(4); // rows 1 (A): 1, 2; 2 (B): 3, 4
    on.add("C1", 1000, 1);
    on.add("C2", 800, 2);
    on.add("C3", 300, 3);
    on.add("C4", 100, 4);
    auto const got = best(on.job); // 1800 against 400; best 1000 + 100 against 800 + 300
    REQUIRE(got.imbalance_va == 0);
    REQUIRE(step_at(got, 1) == 1400); // one move has nowhere to go
    REQUIRE(step_at(got, 2) == 0);    // two change places: C2 and C4
    REQUIRE(got.moves == 2);
}

TEST_CASE("balance: a pair turned over needs no free space and counts two moves", "[balance][traps]") {
    On on(4);
    on.pair("K", 1000, 400, 1, 3);
    on.add("C1", 500, 2).fixed = true;
    on.add("C2", 100, 4).fixed = true;
    auto const got = best(on.job); // 1500 against 500; turned over 900 against 1100
    REQUIRE(got.imbalance_va == 200);
    REQUIRE(got.moves == 2);
    REQUIRE(space_of(got, "K1") == 3);
    REQUIRE(space_of(got, "K2") == 1);
}

TEST_CASE("balance: a pair never spans the foot of one column and the head of the other", "[balance][traps]") {
    On on(8);
    on.panel().numbering = Numbering::down; // 1 to 4 one column, 5 to 8 the other: 4 and 5 are no neighbours
    on.panel().blocked = {1, 2, 3, 6, 7, 8};
    on.pair("K", 900, 500);
    REQUIRE_FALSE(balance(resolve(on.job)).panels[0].imbalance_va);
    on.panel().blocked = {1, 2, 5, 6, 7, 8}; // 3 and 4 are
    REQUIRE(best(on.job).imbalance_va == 400);
}

TEST_CASE("balance: spaces of one row are one leg, not two", "[balance][traps]") {
    On on(4);
    on.panel().blocked = {3, 4};
    on.pair("K", 900, 500);
    REQUIRE_FALSE(balance(resolve(on.job)).panels[0].imbalance_va);
}

TEST_CASE("balance: of a half-fixed pair the free half goes above or below", "[balance][traps]") {
    On on(6);
    on.pair("K", 900, 500, 3, 0);
    on.job.circuits[0].fixed = true;
    on.panel().blocked = {1, 2, 4, 6}; // only 5, below
    auto got = best(on.job);
    REQUIRE(space_of(got, "K2") == 5);
    on.panel().blocked = {2, 4, 5, 6}; // only 1, above
    got = best(on.job);
    REQUIRE(space_of(got, "K2") == 1);
}

TEST_CASE("balance: an untied pair may keep two spaces of two legs that are no neighbours", "[balance][traps]") {
    On on(8);
    on.pair("K", 900, 500, 1, 8, Tie::none);
    auto const got = best(on.job);
    REQUIRE(got.moves == 0);
    REQUIRE(space_of(got, "K1") == 1);
    REQUIRE(space_of(got, "K2") == 8);
    On tied(8);
    tied.pair("K", 900, 500, 1, 8); // a tie reaches neighbours only
    REQUIRE(best(tied.job).moves >= 1);
}

TEST_CASE("balance: a pair of two equal loads is never turned over", "[balance][traps]") {
    On on(8);
    on.pair("K", 700, 700, 1, 3);
    on.add("C1", 300, 2);
    auto const got = best(on.job);
    REQUIRE(got.moves == 0);
    REQUIRE(got.imbalance_va == 300);
}

TEST_CASE("balance: with no load at all nothing moves and nothing is claimed", "[balance][traps]") {
    On on(6);
    on.add("C1", 0, 1);
    on.add("C2", 0, 2);
    auto const got = best(on.job);
    REQUIRE(got.moves == 0);
    REQUIRE(got.imbalance_va == 0);
    REQUIRE(got.proven);
    On heavy(6);
    heavy.add("WH", 3000, 1, 2); // two poles: half on each leg, nothing to even
    REQUIRE(best(heavy.job).imbalance_va == 0);
}

TEST_CASE("balance: loads of an odd sum leave one VA", "[balance][traps]") {
    On on(12);
    for (int i = 0; i < 5; ++i) on.add("C" + std::to_string(i), 101 + 2 * i); // five odd loads
    auto const got = best(on.job);
    REQUIRE(got.imbalance_va.value() % 2 == 1);
    REQUIRE(got.proven);
}

TEST_CASE("balance: a bridged supply has nothing to balance", "[balance][traps]") {
    On on(6);
    on.panel().supply->kind = SupplyKind::bridged_120;
    on.add("C1", 900);
    on.add("C2", 100);
    auto const got = best(on.job);
    REQUIRE_FALSE(got.imbalance_va);
    REQUIRE(got.placements[0].slots.size() == 1);
}

TEST_CASE("balance: two half-size circuits stay together on their leg and count", "[balance][traps]") {
    On on(4);
    on.panel().tandem = {1};
    on.add("C1", 600, 1).space = Spot{1, 'a'};
    on.add("C2", 500, 1).space = Spot{1, 'b'};
    on.add("C3", 1000, 2);
    auto const got = best(on.job); // 2100 on leg A; moving C3 to leg B leaves 100
    REQUIRE(got.imbalance_va == 100);
    REQUIRE(got.moves == 1);
}

TEST_CASE("balance: the same job gives the same plan, and its own plan moves nothing", "[balance][traps]") {
    On on(24);
    for (int i = 0; i < 11; ++i) on.add("C" + std::to_string(i), 100 + (i * 37) % 900, i % 3 ? 0 : i + 1);
    on.pair("K", 1200, 300);
    on.pair("L", 250, 900);
    auto const first = best(on.job), second = best(on.job);
    REQUIRE(first.placements.size() == second.placements.size());
    for (std::size_t i = 0; i < first.placements.size(); ++i)
        REQUIRE(first.placements[i].slots == second.placements[i].slots);
    for (std::size_t i = 0; i < first.placements.size(); ++i) on.job.circuits[i].space = first.placements[i].slots[0];
    auto const again = best(on.job);
    REQUIRE(again.moves == 0);
    REQUIRE(again.imbalance_va == first.imbalance_va);
}

TEST_CASE("balance: neatness never costs a move nor a volt-ampere", "[balance][traps]") {
    On on(12);
    on.add("C1", 1000, 11);
    on.add("C2", 1000, 10);
    auto const got = best(on.job); // even already, far from the main: they stay
    REQUIRE(got.moves == 0);
    On fresh(12);
    fresh.add("C1", 1000);
    fresh.add("C2", 1000);
    auto const neat = best(fresh.job); // new ones stand together at the main's end
    REQUIRE(std::max(space_of(neat, "C1"), space_of(neat, "C2")) <= 4);
}
