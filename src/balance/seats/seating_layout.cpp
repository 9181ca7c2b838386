// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/seats/seating_layout.h"

#include <algorithm>

namespace legwork {

namespace {

using Kind = Sitter::Kind;
using Pair = SeatingMatch::Pair;

std::size_t at(int i) { return static_cast<std::size_t>(i); }

class Writer {
public:
    Writer(Seats const& seats, std::vector<Sitter> const& sitters, DealtSeats const& d)
        : seats_(seats), m_(seats.model()), sitters_(sitters), d_(d) {}

    Seating write() {
        auto const units = m_.units.size();
        Rooming& r = seating_.rooming;
        r = {std::vector<Fate>(units, Fate::lift), std::vector<int>(units, -1), {}, std::vector<int>{}};
        for (bool const wall : m_.wall) r.empty.push_back(!wall);
        seating_.signs.assign(units, 0);
        seating_.cost = d_.match.cost;
        for (std::size_t i = 0; i < units; ++i)
            if (m_.units[i].held) r.fate[i] = Fate::home;
        for (std::size_t i = 0; i < sitters_.size(); ++i) {
            if (d_.node.settled[i] >= 0)
                take(i, sitters_[i].seats[at(d_.node.settled[i])]);
            else if (d_.match.seat_of[i] >= 0)
                take(i, sitters_[i].seats[at(d_.match.seat_of[i])]);
        }
        for (Pair const& p : d_.match.pairs)
            if (p.sitter >= 0)
                take(at(p.sitter), sitters_[at(p.sitter)].seats[at(p.seat)]);
            else
                r.sites->push_back(p.upper);
        for (std::size_t i = 0; i < sitters_.size(); ++i)
            if (!d_.pair_of.empty() && d_.pair_of[i] >= 0) sign_of_pair(i, d_.match.pairs[at(d_.pair_of[i])]);
        std::ranges::sort(*r.sites);
        settle_others();
        return std::move(seating_);
    }

private:
    void take(std::size_t i, Seat const& s) {
        Rooming& r = seating_.rooming;
        auto const unit = at(sitters_[i].unit);
        r.fate[unit] = s.fate;
        if (m_.legs == Legs::two && m_.units[unit].kind == Unit::Kind::pair) seating_.signs[unit] = s.sign;
        if (m_.legs == Legs::two && m_.units[unit].kind == Unit::Kind::single)
            seating_.signs[unit] = seats_.side(s.cells[0]);
        if (s.fate == Fate::lift) {
            if (s.is_two()) r.sites->push_back(std::min(s.cells[0], s.cells[1]));
            return;
        }
        for (int const c : s.cells)
            if (c >= 0) r.empty[at(c)] = false;
        if (s.fate == Fate::home) return;
        bool const a_stays = s.fate == Fate::keep_a;
        r.other_cell[unit] = !s.is_two() ? s.cells[0] : s.cells[a_stays ? 1 : 0];
    }
    void sign_of_pair(std::size_t i, Pair const& p) {
        if (m_.legs != Legs::two || m_.units[at(sitters_[i].unit)].kind != Unit::Kind::pair) return;
        for (Seat const& s : sitters_[i].seats)
            if (s.fate == Fate::lift && std::min(s.cells[0], s.cells[1]) == p.upper)
                seating_.signs[at(sitters_[i].unit)] = s.sign;
    }

    // Who reaches everywhere stays at home if nobody took that cell; else it takes any cell, of its leg if it can.
    void settle_others() {
        Rooming& r = seating_.rooming;
        auto left = d_.match.free;
        for (Sitter const& s : sitters_) {
            if (s.kind != Kind::any_single || s.seats.empty() || !left[at(s.seats[0].cells[0])]) continue;
            int const cell = s.seats[0].cells[0];
            left[at(cell)] = r.empty[at(cell)] = false;
            r.fate[at(s.unit)] = Fate::home;
            if (m_.legs == Legs::two) seating_.signs[at(s.unit)] = seats_.side(cell);
        }
        if (m_.legs != Legs::two) return;
        int room[2] = {0, 0};
        for (std::size_t c = 0; c < left.size(); ++c)
            if (left[c]) ++room[seats_.side(static_cast<int>(c)) > 0 ? 0 : 1];
        for (Sitter const& s : sitters_) {
            if (s.kind != Kind::any_single || s.lift == 0 || r.fate[at(s.unit)] == Fate::home) continue;
            bool on_a = s.seats.empty() ? room[0] >= room[1] : seats_.side(s.seats[0].cells[0]) > 0;
            if (room[on_a ? 0 : 1] == 0) on_a = !on_a;
            --room[on_a ? 0 : 1];
            seating_.signs[at(s.unit)] = static_cast<signed char>(on_a ? 1 : -1);
        }
    }

    Seats const& seats_;
    PanelModel const& m_;
    std::vector<Sitter> const& sitters_;
    DealtSeats const& d_;
    Seating seating_;
};

} // namespace

Seating seating_of(Seats const& seats, std::vector<Sitter> const& sitters, DealtSeats const& dealt) {
    return Writer(seats, sitters, dealt).write();
}

} // namespace legwork
