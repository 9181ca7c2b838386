// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Two ways of making room that share nothing: the pass along the lines, and the matching of circuits and cells. Where
// all wires reach everywhere both are exact, so they must agree; and the matching alone is held against every subset
// of edges.

#include "balance/oracle/random.h"
#include "balance/seats/cover.h"
#include "balance/seats/line_room.h"
#include "balance/seats/seat_room.h"
#include "building/resolve.h"
#include "job/job.h"

#include "catch.h"

#include <limits>

using namespace legwork;
using namespace legwork::oracle;

namespace {
Effort plenty() { return Effort(std::numeric_limits<std::int64_t>::max() / 2, std::size_t{1} << 40); }

// Legs for all decisions, with a count of singles on leg A that there are spaces for; none when there is no such count.
std::optional<Signs> random_legs(Dice& dice, PanelModel const& m, LegProblem const& p) {
    if (!p.has_room()) return {};
    Assignment choice;
    for (std::size_t i = 0; i < p.decisions.size(); ++i) choice.push_back(dice.chance(50));
    for (int tries = 0; tries < 1000; ++tries) {
        int const on_a = count_on_a(p, choice);
        if (on_a >= p.least_on_a && on_a <= p.most_on_a) return signs_of(m, p, choice);
        auto const i = static_cast<std::size_t>(dice.below(static_cast<int>(choice.size())));
        if (p.decisions[i].is_single) choice[i] = on_a < p.least_on_a;
    }
    return {};
}

// The cheapest set of so many edges that share no vertex and cover what must be covered.
std::optional<std::int64_t> cheapest(std::vector<std::array<int, 3>> const& edges, std::vector<int> const& must_left,
                                     std::vector<int> const& must_right, int size) {
    std::optional<std::int64_t> least;
    for (std::uint32_t set = 0; set < std::uint32_t{1} << edges.size(); ++set) {
        std::uint32_t left = 0, right = 0;
        std::int64_t cost = 0;
        int count = 0;
        bool apart = true;
        for (std::size_t e = 0; e < edges.size(); ++e) {
            if (!(set >> e & 1)) continue;
            auto const l = std::uint32_t{1} << edges[e][0], r = std::uint32_t{1} << edges[e][1];
            apart = apart && !(left & l) && !(right & r);
            left |= l;
            right |= r;
            cost += edges[e][2];
            ++count;
        }
        for (int const v : must_left) apart = apart && (left >> v & 1);
        for (int const v : must_right) apart = apart && (right >> v & 1);
        if (apart && count == size && (!least || cost < *least)) least = cost;
    }
    return least;
}
} // namespace

TEST_CASE("cover: the cheapest matching of its size, against every set of edges", "[balance][reach]") {
    int found = 0;
    for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
        Dice dice(seed);
        int const left = dice.from(1, 4), right = dice.from(1, 4), size = dice.from(0, 4);
        std::vector<std::array<int, 3>> edges;
        for (int n = dice.from(0, 10); n > 0; --n)
            edges.push_back({dice.below(left), dice.below(right), dice.from(-20, 20)});
        EdgeCover cover(left, right);
        for (auto const& [l, r, cost] : edges) cover.add(l, r, cost);
        std::vector<int> must_left, must_right;
        for (int v = 0; v < left; ++v)
            if (dice.chance(25)) cover.must_left(v), must_left.push_back(v);
        for (int v = 0; v < right; ++v)
            if (dice.chance(25)) cover.must_right(v), must_right.push_back(v);
        auto effort = plenty();
        auto const answer = cover.run(size, effort);
        auto const least = cheapest(edges, must_left, must_right, size);
        CAPTURE(seed);
        REQUIRE((answer == EdgeCover::Answer::yes) == least.has_value());
        if (!least) continue;
        ++found;
        CHECK(cover.cost() == *least);
    }
    CHECK(found > 200);
}

TEST_CASE("rooms: the pass along the lines and the matching take the same moves", "[balance][reach]") {
    int compared = 0, with_moves = 0, none = 0;
    for (std::uint64_t seed = 1; seed <= 1200; ++seed) {
        RandomPanel const kind{
            .most_spaces = seed % 3 == 0 ? 24 : 12, .pair_heavy = seed % 2 == 0, .halves = seed % 5 == 0};
        Building const home = resolve(random_job(seed, kind));
        PanelModel const m = panel_model(home, home.panels[0], {}, {});
        LineRoom const line(m);
        if (!m.contradictions.empty() || !line.is_exact()) continue;
        SeatRoom const seats(m);
        LegProblem const p = leg_problem(m);
        CAPTURE(seed, as_toml(*home.said));
        auto effort = plenty();
        if (!p.has_room()) continue;
        auto const fewest = line.fewest_moves(p.least_on_a, p.most_on_a, effort);
        CHECK(seats.fewest_moves(p.least_on_a, p.most_on_a, effort).moves == fewest.moves);
        Dice dice(seed);
        for (int n = 0; n < 6; ++n) {
            auto const signs = random_legs(dice, m, p);
            if (!signs) continue;
            auto const moves = line.extra_moves(*signs, effort).moves;
            CHECK(seats.extra_moves(*signs, effort).moves == moves);
            ++compared;
            with_moves += moves > 0 && moves < kImpossible;
            none += moves == kImpossible;
        }
    }
    CHECK(compared > 3000);
    CHECK(with_moves > 300);
    CHECK(none > 30);
}
