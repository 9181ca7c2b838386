// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/seats/seats.h"

#include "balance/seats/line_pass.h"

#include <algorithm>

namespace legwork {

namespace {

std::size_t at(int i) { return static_cast<std::size_t>(i); }

int cost_of(int moves) { return moves >= kImpossible ? kNoWay : kMoveCost * moves; }

// Keeps the cheapest seat on the same cells.
void add(std::vector<Seat>& seats, Seat const& s) {
    if (s.cost >= kNoWay) return;
    auto const cells = [](Seat const& x) {
        return x.is_two() ? std::minmax(x.cells[0], x.cells[1])
                          : std::pair<int const&, int const&>(x.cells[0], x.cells[0]);
    };
    auto const same = std::ranges::find_if(seats, [&](Seat const& t) { return cells(t) == cells(s); });
    if (same == seats.end())
        seats.push_back(s);
    else if (s.cost < same->cost)
        *same = s;
}

} // namespace

Seats::Seats(PanelModel const& model) : model_(model) {
    // Legs in phase are no kinds to tell cells by: there neighbours of a line take turns.
    bool second = false;
    for (int c = 0; c < model.cells(); ++c) {
        bool const on_a = model.legs == Legs::two ? model.leg[at(c)] == Leg::a : !second;
        side_.push_back(on_a ? 1 : -1);
        second = !model.line_end[at(c)] && !second;
    }
    for (std::size_t i = 0; i < model.units.size(); ++i)
        if (is_limited(model.units[i])) limited_.push_back(static_cast<int>(i));
    by_sign_.resize(model.units.size());
    for (std::size_t i = 0; i < model.units.size(); ++i)
        for (int sign : {-1, 0, 1}) by_sign_[i][index(sign)] = sitter(static_cast<int>(i), sign);
}

bool Seats::is_limited(Unit const& u) const {
    if (u.held) return false;
    auto const is_short = [&](int circuit, bool held) {
        return circuit >= 0 && !held && !model_.reach[at(circuit)].empty();
    };
    return is_short(u.a, u.a_held) || is_short(u.b, u.b_held);
}

std::vector<Sitter> Seats::sitters(Signs const& signs) const {
    std::vector<Sitter> all;
    for (std::size_t i = 0; i < model_.units.size(); ++i)
        if (!model_.units[i].held) all.push_back(by_sign_[i][index(model_.legs == Legs::two ? signs[i] : 0)]);
    return all;
}

std::vector<int> Seats::neighbours(int cell) const {
    std::vector<int> found;
    if (cell > 0 && model_.joined(cell - 1, cell)) found.push_back(cell - 1);
    if (cell + 1 < model_.cells() && model_.joined(cell, cell + 1)) found.push_back(cell + 1);
    return found;
}

Sitter Seats::sitter(int unit, int sign) const {
    Unit const& u = model_.units[at(unit)];
    Sitter s;
    s.unit = unit;
    if (u.held) return s;
    bool const limited = std::ranges::count(limited_, unit) > 0;
    if (u.half_held()) {
        s.kind = Sitter::Kind::single;
        seat_half(s, u);
    } else if (u.kind == Unit::Kind::single) {
        s.kind = limited ? Sitter::Kind::single : Sitter::Kind::any_single;
        seat_single(s, u, sign);
    } else {
        s.kind = limited ? Sitter::Kind::pair : Sitter::Kind::any_pair;
        seat_wide(s, u, sign);
    }
    return s;
}

// The other half comes beside the one that is held, or stays where it legally is.
void Seats::seat_half(Sitter& s, Unit const& u) const {
    auto const moves = unit_moves(model_, u, 0);
    int const known = u.a_held ? u.cell_a : u.cell_b, home = u.a_held ? u.cell_b : u.cell_a;
    int const other = u.a_held ? u.b : u.a;
    auto const fate = u.a_held ? Fate::keep_a : Fate::keep_b;
    int const beside = cost_of(u.a_held ? moves.keep_a : moves.keep_b);
    if (u.home_ok && is_free(home)) add(s.seats, {{home, -1}, cost_of(moves.home), Fate::home, 0});
    if (known < 0) return;
    for (int const c : neighbours(known))
        if (is_free(c) && model_.reaches(other, c)) add(s.seats, {{c, -1}, beside, fate, 0});
}

void Seats::seat_single(Sitter& s, Unit const& u, int sign) const {
    auto const moves = unit_moves(model_, u, sign);
    s.lift = cost_of(moves.lift);
    if (u.home_ok && is_free(u.cell_a)) add(s.seats, {{u.cell_a, -1}, cost_of(moves.home), Fate::home, 0});
    if (s.kind == Sitter::Kind::any_single) return;
    for (int c = 0; c < model_.cells(); ++c)
        if (is_free(c) && (sign == 0 || side(c) == sign) && model_.reaches(u.a, c))
            add(s.seats, {{c, -1}, s.lift, Fate::lift, 0});
}

void Seats::seat_wide(Sitter& s, Unit const& u, int sign) const {
    auto const moves = unit_moves(model_, u, sign);
    bool const two_legs = model_.legs == Legs::two && u.kind == Unit::Kind::pair;
    // A two-pole breaker moves two conductors.
    s.lift = cost_of(moves.lift) + (u.kind == Unit::Kind::two_pole && moves.lift > 0);
    auto const reach = [&](int circuit, int cell) { return circuit < 0 || model_.reaches(circuit, cell); };
    int const b = u.b >= 0 ? u.b : u.a;
    auto const signed_at = [&](int cell_of_a) { return static_cast<signed char>(two_legs ? side(cell_of_a) : 0); };
    if (u.home_ok && is_free(u.cell_a) && is_free(u.cell_b)) {
        bool const stays = sign == 0 || !two_legs || side(u.cell_a) == sign;
        if (stays)
            add(s.seats, {{u.cell_a, u.cell_b}, 0, Fate::home, signed_at(u.cell_a)});
        else if (reach(u.a, u.cell_b) && reach(b, u.cell_a)) // turned over in place
            add(s.seats, {{u.cell_b, u.cell_a}, cost_of(moves.home), Fate::home, signed_at(u.cell_b)});
    }
    if (u.keep_a) seat_beside(s, u, Fate::keep_a, cost_of(moves.keep_a), sign);
    if (u.keep_b) seat_beside(s, u, Fate::keep_b, cost_of(moves.keep_b), sign);
    if (s.kind == Sitter::Kind::any_pair) return;
    for (int c = 0; c + 1 < model_.cells(); ++c) {
        if (!model_.joined(c, c + 1) || !is_free(c) || !is_free(c + 1)) continue;
        for (auto const& [p, q] : {std::pair{c, c + 1}, std::pair{c + 1, c}}) {
            if (u.b < 0 && p != c) continue;
            if (sign != 0 && two_legs && side(p) != sign) continue;
            if (reach(u.a, p) && reach(b, q)) add(s.seats, {{p, q}, s.lift, Fate::lift, signed_at(p)});
        }
    }
}

// One half stays, the other comes to its other side.
void Seats::seat_beside(Sitter& s, Unit const& u, Fate fate, int cost, int sign) const {
    bool const a_stays = fate == Fate::keep_a;
    int const cell = a_stays ? u.cell_a : u.cell_b, left = a_stays ? u.cell_b : u.cell_a;
    if (cost >= kNoWay || !is_free(cell)) return;
    for (int const c : neighbours(cell)) {
        if (!is_free(c) || (u.home_ok && c == left) || !model_.reaches(a_stays ? u.b : u.a, c)) continue;
        int const cell_of_a = a_stays ? cell : c;
        auto const own = static_cast<signed char>(model_.legs == Legs::two ? side(cell_of_a) : 0);
        if (sign != 0 && own != 0 && own != sign) continue;
        add(s.seats, {a_stays ? std::array{cell, c} : std::array{c, cell}, cost, fate, own});
    }
}

} // namespace legwork
