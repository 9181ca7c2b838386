// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Pieces are stood one after the other. A state is (spaces taken, A - B in each situation) with the fewest moves that
// lead to it; what can follow depends on the spaces alone and adds to the rest, so of two ways to the same state the
// one with more moves is never needed. Nothing else is dropped.

#include "balance/oracle/exhaustive.h"
#include "job/job.h"

#include <algorithm>
#include <array>
#include <map>
#include <stdexcept>
#include <tuple>

namespace legwork::oracle {

namespace {
std::uint32_t bit(int space) { return std::uint32_t{1} << (space - 1); }

// The spaces of a breaker whose first is `space`; one where there is no second.
std::vector<int> spaces_of(std::vector<Seat> const& all, int poles, int space) {
    std::vector<int> found{space};
    Seat const& s = all[static_cast<std::size_t>(space) - 1];
    for (std::size_t t = 0; poles == 2 && t < all.size(); ++t)
        if (all[t].column == s.column && all[t].row == s.row + 1) found.push_back(static_cast<int>(t) + 1);
    return found;
}

// Legally on a half-size breaker, which nobody moves: each space of it takes halves, and two poles reach two legs.
bool stands_on_half(typed::Panel const& panel, Phase phase, std::vector<Seat> const& all, typed::Circuit const& c) {
    if (!c.space || !c.space->half) return false;
    auto const spaces = spaces_of(all, c.poles, c.space->space);
    auto const seat = [&](int s) -> Seat const& { return all[static_cast<std::size_t>(s) - 1]; };
    if (c.poles == 2 && (spaces.size() < 2 || !two_pole_site(phase, seat(spaces[0]), seat(spaces[1])))) return false;
    return std::all_of(spaces.begin(), spaces.end(), [&](int s) {
        return seat(s).usable && std::count(panel.tandem.begin(), panel.tandem.end(), s) > 0;
    });
}

class Builder {
public:
    Builder(typed::Job const& job, typed::Panel const& panel, Today today, FeederLoads const& below)
        : job_(job),
          panel_(panel),
          phase_(phase(job, panel)),
          seats_(seats(job, panel)),
          today_(today),
          below_(below) {}

    Piece piece(typed::Circuit const& c) const {
        if (c.poles == 2) return two_poles(c);
        typed::Circuit const* o = other_half(job_, c);
        return o ? pair(c, *o) : one_pole(c);
    }

private:
    Seat const& seat(int space) const { return seats_[static_cast<std::size_t>(space) - 1]; }
    // Nothing is asked of a circuit but that it stay.
    bool filed(typed::Circuit const& c) const { return c.space && today_ == Today::stays; }
    bool on_half(typed::Circuit const& c) const { return stands_on_half(panel_, phase_, seats_, c); }
    // Where a circuit's (first) pole may land.
    std::vector<int> landings(typed::Circuit const& c) const {
        if (filed(c)) return {c.space->space};
        std::vector<int> found;
        for (int s = 1; s <= panel_.spaces; ++s) {
            bool const held = c.space && (c.fixed || on_half(c)), home = c.space && s == c.space->space;
            if (seat(s).usable && (home || (!held && reaches(c, seat(s), s)))) found.push_back(s);
        }
        return found;
    }
    static int moved(typed::Circuit const& c, int space) { return c.space && c.space->space != space ? 1 : 0; }
    // A half's space is held as a whole from the start; two halves may share it.
    std::uint32_t taken(typed::Circuit const& c, int space) const { return on_half(c) ? 0 : bit(space); }
    std::vector<std::int64_t> signed_load(typed::Circuit const& c, int space) const {
        auto const fed = below_.find(c.mark);
        auto d = minimised(fed == below_.end() ? loads(job_, c) : fed->second.sum);
        if (!seat(space).on_a)
            for (auto& v : d) v = -v;
        return d;
    }

    Piece one_pole(typed::Circuit const& c) const {
        Piece p{c.mark, {}};
        for (int s : landings(c)) p.choices.push_back({taken(c, s), moved(c, s), signed_load(c, s)});
        return p;
    }
    Piece two_poles(typed::Circuit const& c) const {
        Piece p{c.mark, {}};
        std::vector<std::int64_t> const even(minimised(loads(job_, c)).size(), 0);
        for (int s : landings(c))
            for (int t = s + 1; t <= panel_.spaces; ++t) {
                bool const below = seat(t).column == seat(s).column && seat(t).row == seat(s).row + 1;
                if (!below) continue;
                bool const reached = reaches(c, seat(t), t) || (c.space && !moved(c, s));
                bool const fits = reached && seat(t).usable && two_pole_site(phase_, seat(s), seat(t));
                if (fits || filed(c)) p.choices.push_back({taken(c, s) | taken(c, t), moved(c, s), even});
            }
        return p;
    }
    Piece pair(typed::Circuit const& c, typed::Circuit const& o) const {
        Piece p{c.mark + "+" + o.mark, {}};
        bool const may_stay_apart = phase_ == Phase::in_phase || (c.tie == Tie::none && o.tie == Tie::none);
        auto const at_home = [&](int s, int t) {
            if (!may_stay_apart || !c.space || !o.space) return false;
            int const here = c.space->space, there = o.space->space;
            return (s == here && t == there) || (s == there && t == here);
        };
        for (int s : landings(c))
            for (int t : landings(o)) {
                bool const two_legs = phase_ != Phase::two_legs || seat(s).on_a != seat(t).on_a;
                bool const fits = two_legs && (pair_site(panel_, phase_, seat(s), seat(t)) || at_home(s, t));
                if (!fits && !(filed(c) && filed(o))) continue;
                auto d = signed_load(c, s);
                auto const e = signed_load(o, t);
                for (std::size_t i = 0; i < d.size(); ++i) d[i] += e[i];
                p.choices.push_back({taken(c, s) | taken(o, t), moved(c, s) + moved(o, t), d});
            }
        return p;
    }

    typed::Job const& job_;
    typed::Panel const& panel_;
    Phase phase_;
    std::vector<Seat> seats_;
    Today today_;
    FeederLoads const& below_;
};

constexpr std::size_t most = 4;
struct State {
    std::uint32_t spaces;
    std::array<std::int32_t, most> d;
    std::int32_t moves;
    friend auto operator<=>(State const&, State const&) = default;
};

void add(std::array<std::int32_t, most>& to, std::vector<std::int64_t> const& d) {
    for (std::size_t i = 0; i < d.size(); ++i) to[i] += static_cast<std::int32_t>(d[i]);
}

void keep_fewest_moves(std::vector<State>& states) {
    std::sort(states.begin(), states.end());
    auto const same = [](State const& x, State const& y) { return x.spaces == y.spaces && x.d == y.d; };
    states.erase(std::unique(states.begin(), states.end(), same), states.end());
}

std::vector<Step> drops(std::map<int, std::int64_t> const& least) {
    std::vector<Step> front;
    for (auto const& [moves, imbalance] : least)
        if (front.empty() || imbalance < front.back().imbalance) front.push_back({moves, imbalance});
    return front;
}
} // namespace

Board board(typed::Job const& job, typed::Panel const& panel, Today today, FeederLoads const& below) {
    Board b;
    b.constant.assign(job.situations.empty() ? 1 : job.situations.size(), 0);
    auto const all = seats(job, panel);
    Builder const builder(job, panel, today, below);
    for (typed::Circuit const* c : circuits_on(job, panel)) {
        if (stands_on_half(panel, phase(job, panel), all, *c))
            for (int const s : spaces_of(all, c->poles, c->space->space)) b.held |= bit(s);
        typed::Circuit const* o = other_half(job, *c);
        if (o && o < c) continue; // stood with its first half
        b.pieces.push_back(builder.piece(*c));
        if (c->poles != 2 || !below.count(c->mark)) continue;
        auto const d = minimised(below.at(c->mark).difference);
        for (std::size_t i = 0; i < d.size(); ++i) b.constant[i] += d[i];
    }
    return b;
}

std::vector<Step> exhaustive(Board const& board) {
    if (board.constant.size() > most) throw std::invalid_argument("at most four situations");
    std::vector<Piece const*> order;
    for (Piece const& p : board.pieces) order.push_back(&p);
    std::stable_sort(order.begin(), order.end(),
                     [](Piece const* x, Piece const* y) { return x->choices.size() < y->choices.size(); });
    std::vector<State> states(1, State{board.held, {}, 0});
    add(states.front().d, board.constant);
    for (Piece const* p : order) {
        std::vector<State> next;
        for (State const& s : states)
            for (Choice const& c : p->choices) {
                if (s.spaces & c.spaces) continue;
                State t = s;
                t.spaces |= c.spaces;
                t.moves += c.moves;
                add(t.d, c.d);
                next.push_back(t);
            }
        keep_fewest_moves(next);
        states = std::move(next);
    }
    std::map<int, std::int64_t> least;
    for (State const& s : states) {
        std::int64_t worst = 0;
        for (auto d : s.d) worst = std::max<std::int64_t>(worst, d < 0 ? -d : d);
        auto const at = least.emplace(s.moves, worst).first;
        at->second = std::min(at->second, worst);
    }
    return drops(least);
}

} // namespace legwork::oracle
