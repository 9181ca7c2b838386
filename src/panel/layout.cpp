// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "panel/layout.h"

#include <algorithm>
#include <cstdlib>

namespace legwork {

Layout::Layout(typed::Panel const& panel) : panel_(panel), spaces_(panel.spaces) {}

Position Layout::position(int space) const {
    if (panel_.numbering == Numbering::across) return {(space - 1) % 2, (space + 1) / 2};
    return space <= rows() ? Position{0, space} : Position{1, space - rows()};
}

std::optional<int> Layout::space_at(Position where) const {
    if (where.row < 1 || where.row > rows() || where.column < 0 || where.column > 1) return std::nullopt;
    int const space =
        panel_.numbering == Numbering::across ? 2 * where.row - 1 + where.column : where.row + where.column * rows();
    return has(space) ? std::optional(space) : std::nullopt;
}

Leg Layout::leg(int space) const {
    auto const [column, row] = position(space);
    switch (panel_.bus_legs) {
    case BusLegs::by_column: return column == 0 ? Leg::a : Leg::b;
    case BusLegs::listed:
        if (auto const i = static_cast<std::size_t>(row - 1); i < panel_.row_legs.size()) return panel_.row_legs[i];
        [[fallthrough]];
    case BusLegs::by_row: break;
    }
    return row % 2 == 1 ? Leg::a : Leg::b;
}

std::optional<int> Layout::next_in_column(int space) const {
    auto const [column, row] = position(space);
    return space_at({column, row + 1});
}

bool Layout::neighbours(int s, int t) const {
    auto const p = position(s), q = position(t);
    return p.column == q.column && std::abs(p.row - q.row) == 1;
}

bool Layout::takes_two_pole(int space) const {
    auto const next = next_in_column(space);
    return next && leg(*next) != leg(space);
}

bool Layout::is_tandem(int space) const { return std::ranges::count(panel_.tandem, space) > 0; }
bool Layout::is_blocked(int space) const { return std::ranges::count(panel_.blocked, space) > 0; }
bool Layout::is_dead(int space) const { return std::ranges::count(panel_.dead, space) > 0; }

std::vector<Spot> slots(Layout const& layout, Spot at, int poles) {
    if (!layout.has(at.space)) return {};
    if (poles == 1) return {at};
    auto const next = layout.next_in_column(at.space);
    if (!next) return {};
    char const far = at.half == 0 ? '\0' : at.half == 'a' ? 'b' : 'a';
    return {at, {*next, far}};
}

} // namespace legwork
