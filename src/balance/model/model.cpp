// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/model/model.h"

#include <algorithm>

namespace legwork {

namespace {

void number_cells(PanelModel& m) {
    Layout const& layout = m.panel->layout;
    m.cell_of_space.assign(static_cast<std::size_t>(std::max(0, m.panel->spaces)) + 1, -1);
    for (auto const& line : m.panel->lines) {
        for (int const s : line) {
            m.cell_of_space[static_cast<std::size_t>(s)] = m.cells();
            m.space_of_cell.push_back(s);
            m.leg.push_back(layout.leg(s));
            m.wall.push_back(layout.is_blocked(s) || !is_live(m.sources, layout, s));
            m.line_end.push_back(false);
        }
        if (!line.empty()) m.line_end.back() = true;
    }
}

void read_today(PanelModel& m) {
    Layout const& layout = m.panel->layout;
    for (Circuit const* c : m.circuits)
        m.today.push_back(c->space ? slots(layout, *c->space, c->poles) : std::vector<Spot>{});
}

int index_of(PanelModel const& m, Circuit const* c) {
    auto const at = std::ranges::find(m.circuits, c);
    return at == m.circuits.end() ? -1 : static_cast<int>(at - m.circuits.begin());
}

std::vector<Unit> units_of(PanelModel const& m, ModelOptions const& options) {
    std::vector<Unit> units;
    auto const left_out = [&](int i) { return std::ranges::count(options.leave_out, i) > 0; };
    for (int i = 0; i < static_cast<int>(m.circuits.size()); ++i) {
        if (left_out(i)) continue;
        Circuit const& c = *m.circuits[static_cast<std::size_t>(i)];
        Circuit const* other = c.poles == 1 && m.legs != Legs::one ? c.partner() : nullptr;
        int const j = other && other->poles == 1 ? index_of(m, other) : -1;
        // A group of more than two is refused by the reader; anyone beyond the first two stands alone.
        bool const paired = j >= 0 && other->partner() == &c && !left_out(j);
        if (paired && j < i) continue;
        Unit u;
        u.kind = paired ? Unit::Kind::pair : c.poles == 1 ? Unit::Kind::single : Unit::Kind::two_pole;
        u.a = i;
        if (paired) u.b = j;
        units.push_back(u);
    }
    return units;
}

} // namespace

PanelModel panel_model(Building const& building, Panel const& panel, std::map<std::string, LegLoads> const& below,
                       ModelOptions const& options) {
    PanelModel m;
    m.building = &building;
    m.panel = &panel;
    m.sources = panel.feeds;
    m.legs = legs(m.sources);
    m.circuits = panel.circuits;
    m.loads = circuit_loads(building, panel, below);
    // Everything on at once counts only where nobody has said what does run together.
    if (building.situations.empty()) m.minimised.push_back(0);
    for (std::size_t i = 0; i < building.situations.size(); ++i) m.minimised.push_back(i + 1);
    if (m.legs != Legs::two) m.minimised.clear();
    for (Circuit const* c : m.circuits) m.reach.push_back(c->reach);
    number_cells(m);
    read_today(m);
    m.units = units_of(m, options);
    judge_today(m, options);
    return m;
}

int UnitMoves::least() const { return std::min({home, keep_a, keep_b, lift}); }

UnitMoves unit_moves(PanelModel const& m, Unit const& u, int sign) {
    UnitMoves moves;
    auto const leg_sign = [&](int cell, bool of_b) {
        return (m.leg[static_cast<std::size_t>(cell)] == Leg::a) == of_b ? -1 : 1;
    };
    auto const matches = [&](int own) { return sign == 0 || m.legs != Legs::two || own == sign; };
    if (u.kind != Unit::Kind::pair) {
        moves.lift = u.a_here;
        if (u.home_ok && (u.kind == Unit::Kind::two_pole || matches(leg_sign(u.cell_a, false)))) moves.home = 0;
        return moves;
    }
    if (!u.half_held()) moves.lift = u.a_here + u.b_here;
    if (u.home_ok) {
        // Swapped in place both halves move; a half that is held cannot swap.
        if (matches(leg_sign(u.cell_a, false)))
            moves.home = 0;
        else if (!u.half_held())
            moves.home = 2;
    }
    if (u.keep_a && matches(leg_sign(u.cell_a, false))) moves.keep_a = u.b_here;
    if (u.keep_b && matches(leg_sign(u.cell_b, true))) moves.keep_b = u.a_here;
    return moves;
}

} // namespace legwork
