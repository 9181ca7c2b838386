// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/model/model.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

enum class Standing { absent, no, half, full };

std::size_t at(int i) { return static_cast<std::size_t>(i); }

// What one space allows its occupants of today: full-size breakers, halves side by side, or not all of them.
class Today {
public:
    Today(PanelModel const& m, ModelOptions const& options)
        : m_(m), layout_(m.panel->layout), here_(at(m.panel->spaces) + 1) {
        for (int i = 0; i < static_cast<int>(m.circuits.size()); ++i) {
            stays_.push_back(!m.today[at(i)].empty() && (options.hold_all || m.circuits[at(i)]->fixed));
            for (Spot const s : m.today[at(i)]) here_[at(s.space)].push_back({i, s.half});
        }
    }

    bool stays(int i) const { return stays_[at(i)]; }

    // A breaker is of one size: on halves only where each of its spaces takes them, else it is judged as full-size.
    Standing standing(int i) const {
        if (m_.today[at(i)].empty()) return Standing::absent;
        if (is_on_halves(i)) return Standing::half;
        return std::ranges::all_of(m_.today[at(i)], [&](Spot s) { return takes_full(i, s); }) ? Standing::full
                                                                                              : Standing::no;
    }

    // Typed in on a half, and full-size if it stays: some space of it takes no halves.
    bool grows(int i) const {
        auto const& spots = m_.today[at(i)];
        return !stays(i) && std::ranges::any_of(spots, [](Spot s) { return s.half != 0; }) &&
               !std::ranges::all_of(spots, [&](Spot s) { return layout_.is_tandem(s.space); });
    }

    // Somebody else than circuits i and j has a half of the space.
    bool is_shared(int i, int j) const {
        return std::ranges::any_of(m_.today[at(i)], [&](Spot s) {
            return std::ranges::any_of(here_[at(s.space)],
                                       [&](auto const& o) { return o.circuit != i && o.circuit != j; });
        });
    }

    // A half-size breaker could be fitted here by moving or adding something.
    bool leaves_halves() const {
        for (int s = 1; s <= m_.panel->spaces; ++s) {
            if (!layout_.is_tandem(s) || is_wall(s)) continue;
            int fixed = 0;
            for (auto const& o : here_[at(s)]) fixed += stays(o.circuit) ? (o.half ? 1 : 2) : 0;
            if (fixed < 2) return true;
        }
        return false;
    }

private:
    struct Occupant {
        int circuit;
        char half;
    };

    bool is_wall(int space) const {
        int const cell = m_.cell_of_space[at(space)];
        return cell < 0 || m_.wall[at(cell)];
    }
    bool is_plain_single(int i) const {
        return m_.circuits[at(i)]->poles == 1 && !stays(i) &&
               std::ranges::any_of(m_.units, [&](Unit const& u) { return u.a == i && u.kind == Unit::Kind::single; });
    }
    bool are_mates(int i, int j) const {
        return std::ranges::any_of(m_.units, [&](Unit const& u) {
            return u.kind == Unit::Kind::pair && ((u.a == i && u.b == j) || (u.a == j && u.b == i));
        });
    }

    // The space takes what stands on it today as halves.
    bool takes_halves(int space) const {
        auto const& here = here_[at(space)];
        return !is_wall(space) && layout_.is_tandem(space) && here.size() <= 2 &&
               std::ranges::all_of(here, [](Occupant const& o) { return o.half != 0; }) &&
               (here.size() < 2 || here[0].half != here[1].half);
    }
    bool is_on_halves(int i) const {
        auto const& spots = m_.today[at(i)];
        return !spots.empty() && std::ranges::all_of(spots, [&](Spot s) { return takes_halves(s.space); });
    }

    // Of those who are not legal as halves one can stay, as a full-size breaker. Two plain circuits may settle which;
    // the halves of a pair are settled with the pair; else who is held stays, or the first in the file.
    bool takes_full(int i, Spot s) const {
        if (is_wall(s.space)) return false;
        auto const& here = here_[at(s.space)];
        if (here.size() == 1) return true;
        // Beside a half that stays it cannot grow; if it is held it need not.
        if (std::ranges::any_of(here, [&](Occupant const& o) { return o.circuit != i && is_on_halves(o.circuit); }))
            return stays(i);
        if (here.size() == 2 && is_plain_single(here[0].circuit) && is_plain_single(here[1].circuit)) return true;
        if (here.size() == 2 && are_mates(here[0].circuit, here[1].circuit)) return true;
        auto const held = std::ranges::find_if(here, [&](Occupant const& o) { return stays(o.circuit); });
        return (held != here.end() ? held->circuit : here.front().circuit) == i;
    }

    PanelModel const& m_;
    Layout layout_;
    std::vector<std::vector<Occupant>> here_;
    std::vector<bool> stays_;
};

class Judge {
public:
    Judge(PanelModel& m, ModelOptions const& options) : m_(m), hold_all_(options.hold_all), today_(m, options) {}

    void run() {
        m_.halves_left_alone = today_.leaves_halves();
        for (Unit& u : m_.units) {
            u.a_here = !m_.today[at(u.a)].empty();
            u.b_here = u.b >= 0 && !m_.today[at(u.b)].empty();
            if (u.kind == Unit::Kind::pair)
                judge_pair(u);
            else
                judge_alone(u);
            u.is_block = u.home_ok && adjacent(u.cell_a, u.cell_b);
        }
        for (Unit const& u : m_.units) {
            if (u.held || u.a_held) wall_up(u.a);
            if (u.b >= 0 && (u.held || u.b_held)) wall_up(u.b);
        }
        for (int i = 0; i < static_cast<int>(m_.circuits.size()); ++i) m_.grows.push_back(today_.grows(i));
    }

private:
    int cell(int circuit, std::size_t slot = 0) const {
        auto const& t = m_.today[at(circuit)];
        return slot < t.size() ? m_.cell_of_space[at(t[slot].space)] : -1;
    }
    bool adjacent(int p, int q) const { return p >= 0 && q >= 0 && m_.joined(std::min(p, q), std::max(p, q)); }
    std::string spaces_text(int circuit) const {
        std::string words;
        for (Spot const s : m_.today[at(circuit)]) words += (words.empty() ? "" : " and ") + text(s);
        return words;
    }
    // Held as the file has it, legal or not.
    bool is_filed(int circuit) const { return hold_all_ && !m_.today[at(circuit)].empty(); }
    void contradict(std::string words) { m_.contradictions.push_back(std::move(words)); }
    void wall_up(int circuit) {
        for (Spot const s : m_.today[at(circuit)])
            if (int const c = m_.cell_of_space[at(s.space)]; c >= 0) m_.wall[at(c)] = true;
    }

    void judge_alone(Unit& u) {
        bool const two = u.kind == Unit::Kind::two_pole;
        u.cell_a = cell(u.a);
        if (two) u.cell_b = cell(u.a, 1);
        auto const standing = today_.standing(u.a);
        bool const site_ok = !two || (m_.panel->takes_two_poles && adjacent(u.cell_a, u.cell_b));
        bool const legal = standing >= Standing::half && site_ok;
        u.held = today_.stays(u.a) || (legal && standing == Standing::half);
        u.home_ok = legal && !u.held;
        if (is_filed(u.a)) return;
        if (u.held && !legal) contradict_fixed(u.a, site_ok);
        if (!u.held && two && !m_.panel->takes_two_poles)
            contradict(fmt::format(
                "{}: a two-pole breaker reaches only one leg on a bus with a leg a column; feed it from another panel",
                m_.mark(u.a)));
    }

    void contradict_fixed(int circuit, bool site_ok) {
        if (!site_ok)
            contradict(fmt::format(
                "{} is fixed on {}, where a two-pole breaker does not reach two legs; take `fixed` away or move it",
                m_.mark(circuit), spaces_text(circuit)));
        else
            contradict(
                fmt::format("{} is fixed on {}, which is dead, blocked or taken; take `fixed` away or change its space",
                            m_.mark(circuit), spaces_text(circuit)));
    }

    bool legal_together(Unit const& u) const {
        if (u.cell_a < 0 || u.cell_b < 0) return false;
        if (adjacent(u.cell_a, u.cell_b)) return true;
        // In phase it is no worse than elsewhere, but one space holds both only where it takes halves.
        if (m_.legs != Legs::two) return u.cell_a != u.cell_b || today_.standing(u.a) == Standing::half;
        bool const tied = m_.circuits[at(u.a)]->tie != Tie::none || m_.circuits[at(u.b)]->tie != Tie::none;
        return !tied && m_.leg[at(u.cell_a)] != m_.leg[at(u.cell_b)];
    }

    void judge_pair(Unit& u) {
        u.cell_a = cell(u.a);
        u.cell_b = cell(u.b);
        auto const va = today_.standing(u.a), vb = today_.standing(u.b);
        bool const a_ok = va >= Standing::half, b_ok = vb >= Standing::half;
        bool const legal = a_ok && b_ok && legal_together(u);
        bool const on_halves = legal && (va == Standing::half || vb == Standing::half);
        u.a_held = today_.stays(u.a);
        u.b_held = today_.stays(u.b);
        u.held = (u.a_held && u.b_held) || on_halves;
        if (u.held) {
            u.a_held = u.b_held = true;
            if (!legal && !(is_filed(u.a) && is_filed(u.b))) contradict_pair(u);
            return;
        }
        if (u.a_held && !a_ok && !is_filed(u.a)) contradict_fixed(u.a, true);
        if (u.b_held && !b_ok && !is_filed(u.b)) contradict_fixed(u.b, true);
        u.home_ok = legal;
        // A half whose space is shared with a stranger cannot give it up for good, nor carry it along.
        bool const a_shared = u.a_here && today_.is_shared(u.a, u.b), b_shared = u.b_here && today_.is_shared(u.b, u.a);
        if (!u.a_held && !u.b_held && a_ok && a_shared && !u.b_here) u.a_held = true;
        if (!u.a_held && !u.b_held && b_ok && b_shared && !u.a_here) u.b_held = true;
        u.keep_a = u.a_held || (a_ok && !a_shared && !u.b_held);
        u.keep_b = u.b_held || (b_ok && !b_shared && !u.a_held);
    }

    void contradict_pair(Unit const& u) {
        contradict(fmt::format("{} and {} share a neutral and are fixed on {} and {}, which {}; free one of them",
                               m_.mark(u.a), m_.mark(u.b), spaces_text(u.a), spaces_text(u.b),
                               u.cell_a >= 0 && u.cell_b >= 0 && m_.leg[at(u.cell_a)] == m_.leg[at(u.cell_b)]
                                   ? "are on one leg"
                                   : "do not stand next to each other in one column"));
    }

    PanelModel& m_;
    bool hold_all_;
    Today today_;
};

} // namespace

void judge_today(PanelModel& model, ModelOptions const& options) { Judge(model, options).run(); }

} // namespace legwork
