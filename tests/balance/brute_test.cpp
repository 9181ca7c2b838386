// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The optimizer against a slow, obvious twin: every circuit on every space, for small panels of every odd kind.

#include "balance/balance.h"
#include "building/resolve.h"
#include "panel/feeds.h"

#include "catch.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <random>
#include <sstream>

using namespace legwork;

namespace {

// Of one panel: the least imbalance for each number of moves, by trying every layout.
class Brute {
public:
    explicit Brute(typed::Job const& job)
        : job_(job), panel_(job.panels[0]), layout_(panel_), sources_(feeds(job, panel_)), at_(job.circuits.size(), 0) {
        taken_.resize(static_cast<std::size_t>(panel_.spaces) + 1);
        place(0);
    }

    // Only steps where it drops.
    std::vector<std::pair<int, std::int64_t>> front() const {
        std::vector<std::pair<int, std::int64_t>> steps;
        for (auto const& [moves, worst] : best_)
            if (steps.empty() || worst < steps.back().second) steps.push_back({moves, worst});
        return steps;
    }

private:
    bool is_free(int s) const {
        return layout_.has(s) && !taken_[static_cast<std::size_t>(s)] && !layout_.is_blocked(s) &&
               is_live(sources_, layout_, s);
    }

    void place(std::size_t i) {
        if (i == job_.circuits.size()) return finish();
        typed::Circuit const& c = job_.circuits[i];
        for (int s = 1; s <= panel_.spaces; ++s) {
            if (c.fixed && c.space->space != s) continue;
            if (!is_free(s)) continue;
            int other = 0;
            if (c.poles == 2) {
                auto const next = layout_.next_in_column(s);
                if (!next || !is_free(*next) || !layout_.takes_two_pole(s)) continue;
                other = *next;
            }
            at_[i] = s;
            if (!pair_ok(i)) continue;
            taken_[static_cast<std::size_t>(s)] = true;
            if (other) taken_[static_cast<std::size_t>(other)] = true;
            place(i + 1);
            taken_[static_cast<std::size_t>(s)] = false;
            if (other) taken_[static_cast<std::size_t>(other)] = false;
        }
    }

    bool pair_ok(std::size_t i) const {
        typed::Circuit const& c = job_.circuits[i];
        typed::Circuit const* mate = partner(job_, c);
        if (!mate || mate > &c) return true;
        auto const j = static_cast<std::size_t>(mate - job_.circuits.data());
        int const s = at_[i], t = at_[j];
        if (layout_.leg(s) == layout_.leg(t)) return false;
        bool const site = panel_.bus_legs == BusLegs::by_column ? layout_.position(s).row == layout_.position(t).row
                                                                : layout_.neighbours(s, t);
        if (site) return true;
        if (c.tie != Tie::none || mate->tie != Tie::none || !c.space || !mate->space) return false;
        return std::minmax(s, t) == std::minmax(c.space->space, mate->space->space);
    }

    void finish() {
        int moves = 0;
        std::int64_t worst = 0;
        for (std::size_t k = 0; k < std::max<std::size_t>(1, job_.situations.size()); ++k) {
            std::int64_t d = 0;
            for (std::size_t i = 0; i < at_.size(); ++i) {
                typed::Circuit const& c = job_.circuits[i];
                if (c.poles == 2) continue;
                auto const share = job_.situations.empty() ? 1'000'000 : job_.situations[k].by_mark.at(c.mark);
                auto const va = whole_va({c.load->count * share / 1'000'000});
                d += layout_.leg(at_[i]) == Leg::a ? va : -va;
            }
            worst = std::max(worst, std::abs(d));
        }
        for (std::size_t i = 0; i < at_.size(); ++i)
            moves += job_.circuits[i].space && job_.circuits[i].space->space != at_[i];
        auto const [at, fresh] = best_.try_emplace(moves, worst);
        at->second = std::min(at->second, worst);
    }

    typed::Job const& job_;
    typed::Panel const& panel_;
    Layout layout_;
    std::vector<Feed> sources_;
    std::vector<int> at_;
    std::vector<bool> taken_;
    std::map<int, std::int64_t> best_;
};

std::string numbered(char const* letter, int n) {
    std::ostringstream out;
    out << letter << n;
    return out.str();
}

class Maker {
public:
    explicit Maker(unsigned seed) : numbers_(seed) {}

    typed::Job job() {
        typed::Job job;
        typed::Panel p;
        p.name = "Main";
        p.spaces = 4 + below(5) + (below(4) == 0 ? 2 : 0);
        p.supply = typed::Supply{};
        if (below(3) == 0) p.numbering = Numbering::down;
        if (below(4) == 0) {
            p.bus_legs = BusLegs::listed;
            for (int i = 0; i < (p.spaces + 1) / 2; ++i) p.row_legs.push_back(below(2) ? Leg::a : Leg::b);
        } else if (below(6) == 0)
            p.bus_legs = BusLegs::by_column;
        for (int s = 1; s <= p.spaces; ++s) {
            if (below(9) == 0)
                p.blocked.push_back(s);
            else if (below(12) == 0)
                p.dead.push_back(s);
        }
        job.panels.push_back(p);
        int const situations = below(4);
        for (int s = 0; s < situations; ++s) job.situations.push_back({numbered("S", s), 0, {}, {}});
        fill(job);
        stand(job);
        return job;
    }

private:
    int below(int n) { return static_cast<int>(numbers_() % static_cast<unsigned>(n)); }

    void add(typed::Job& job, std::string mark, int poles, std::string group, Tie tie) {
        typed::Circuit c;
        c.mark = mark;
        c.panel = "Main";
        c.poles = poles;
        c.multiwire = group;
        c.tie = tie;
        c.load = VoltAmperes{(below(6) ? below(20) * 100 + below(3) : 0) * 1000};
        for (typed::Situation& s : job.situations) s.by_mark[mark] = below(11) * 100'000;
        job.circuits.push_back(c);
    }

    void fill(typed::Job& job) {
        int room = job.panels[0].spaces - below(3), n = 0;
        int const pair_heavy = below(3);
        while (room > 0) {
            auto const mark = numbered("C", ++n);
            int const kind = below(6);
            if (room >= 2 && kind < 1 + pair_heavy) {
                auto const tie = below(2) ? Tie::none : Tie::handle_tie;
                add(job, mark, 1, mark, tie);
                add(job, mark + "b", 1, mark, tie);
                room -= 2;
            } else if (room >= 2 && kind == 5)
                add(job, mark, 2, "", Tie::two_pole_breaker), room -= 2;
            else
                add(job, mark, 1, "", Tie::none), --room;
            if (below(12) == 0) break;
        }
    }

    // Most circuits stand somewhere today: often legally, sometimes not.
    void stand(typed::Job& job) {
        Layout const layout(job.panels[0]);
        int const style = below(4);
        if (style == 0) return;
        std::vector<bool> taken(static_cast<std::size_t>(job.panels[0].spaces) + 3);
        auto const free = [&](int s) {
            return layout.has(s) && !taken[static_cast<std::size_t>(s)] && !layout.is_blocked(s);
        };
        for (typed::Circuit& c : job.circuits) {
            if (below(5) == 0) continue;
            typed::Circuit const* mate = partner(job, c);
            for (int tries = 0; tries < 20; ++tries) {
                int s = 1 + below(job.panels[0].spaces);
                if (mate && mate < &c && mate->space && style != 3 && below(4))
                    if (auto const next = layout.next_in_column(mate->space->space)) s = *next;
                if (!free(s)) continue;
                auto const next = layout.next_in_column(s);
                if (c.poles == 2 && (!next || !free(*next))) continue;
                c.space = Spot{s, 0};
                taken[static_cast<std::size_t>(s)] = true;
                if (c.poles == 2) taken[static_cast<std::size_t>(*next)] = true;
                c.fixed = below(7) == 0;
                break;
            }
        }
    }

    std::mt19937 numbers_;
};

std::string text(typed::Job const& job) {
    std::ostringstream out;
    auto const& p = job.panels[0];
    out << p.spaces << " spaces, " << (p.numbering == Numbering::down ? "down" : "across") << ", bus "
        << static_cast<int>(p.bus_legs) << " ";
    for (Leg const l : p.row_legs) out << letter(l);
    for (int const s : p.blocked) out << " blocked " << s;
    for (int const s : p.dead) out << " dead " << s;
    out << "\n";
    for (typed::Circuit const& c : job.circuits) {
        out << c.mark << " poles " << c.poles << " load " << c.load->count / 1000 << " group " << c.multiwire
            << (c.tie != Tie::none ? " tied" : "");
        if (c.space) out << " at " << c.space->space;
        if (c.fixed) out << " fixed";
        for (auto const& s : job.situations) out << " x" << s.by_mark.at(c.mark) / 1000;
        out << "\n";
    }
    return out.str();
}

} // namespace

TEST_CASE("balance: small panels of every kind against every layout", "[balance][brute]") {
    auto const* rounds = std::getenv("LEGWORK_ROUNDS");
    unsigned const from = 1, to = rounds ? static_cast<unsigned>(std::atoi(rounds)) : 400;
    for (unsigned seed = from; seed <= to; ++seed) {
        typed::Job const job = Maker(seed).job();
        CAPTURE(seed, text(job));
        auto const front = Brute(job).front();
        BalanceOptions best;
        best.best = true;
        auto const plan = balance(resolve(job), best);
        auto const& got = plan.panels[0];
        CAPTURE(got.why);
        REQUIRE(recheck(resolve(job), plan, false) == std::vector<std::string>{});
        REQUIRE(got.placements.empty() == front.empty());
        auto const filed = as_filed(resolve(job));
        REQUIRE(recheck(resolve(job), filed, true) == std::vector<std::string>{});
        if (front.empty()) {
            REQUIRE_FALSE(got.why.empty());
            continue;
        }
        REQUIRE(got.proven);
        REQUIRE(got.tradeoff.size() == front.size());
        for (std::size_t i = 0; i < front.size(); ++i) {
            REQUIRE(got.tradeoff[i].moves == front[i].first);
            REQUIRE(got.tradeoff[i].imbalance_va == front[i].second);
        }
        REQUIRE(got.imbalance_va == front.back().second);
        REQUIRE(got.moves == front.back().first);
        for (auto const& [moves, worst] : front) {
            BalanceOptions few;
            few.max_moves = moves;
            auto const fewer = balance(resolve(job), few);
            REQUIRE(recheck(resolve(job), fewer, false) == std::vector<std::string>{});
            REQUIRE(fewer.panels[0].imbalance_va == worst);
            REQUIRE(fewer.panels[0].moves == moves);
        }
        auto const& stays = filed.panels[0];
        REQUIRE(stays.least_imbalance_va == front.back().second);
        if (front.front().first == 0) {
            REQUIRE(stays.why.empty());
            REQUIRE(stays.imbalance_va == front.front().second);
        }
    }
}
