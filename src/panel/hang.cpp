// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "panel/hang.h"

#include "panel/layout.h"

#include <algorithm>

namespace legwork {

namespace {

// Of the panel upright: column 0 holds space 1, row 1 is its row, and `first` says in which corner that is.
bool is_left_as_hung(typed::Panel const& panel, Layout const& layout, int space) {
    auto const [column, row] = layout.position(space);
    bool const first_left = panel.first == Corner::top_left || panel.first == Corner::bottom_left;
    bool const first_top = panel.first == Corner::top_left || panel.first == Corner::top_right;
    bool const left = (column == 0) == first_left;
    int const from_top = first_top ? row : layout.rows() + 1 - row;
    int const half = (layout.rows() + 1) / 2;
    switch (panel.hang) {
    case Hang::upside_down: return !left;
    case Hang::turned_left: return from_top <= half;
    case Hang::turned_right: return from_top > layout.rows() - half;
    case Hang::upright: break;
    }
    return left;
}

bool is_right_as_hung(typed::Panel panel, Layout const& layout, int space) {
    if (panel.hang == Hang::turned_left)
        panel.hang = Hang::turned_right;
    else if (panel.hang == Hang::turned_right)
        panel.hang = Hang::turned_left;
    else
        return !is_left_as_hung(panel, layout, space);
    return is_left_as_hung(panel, layout, space);
}

} // namespace

std::vector<bool> reachable(typed::Panel const& panel, typed::Circuit const& c) {
    Layout const layout(panel);
    std::vector<bool> found(static_cast<std::size_t>(std::max(panel.spaces, 0)) + 1);
    for (int s = 1; s <= panel.spaces; ++s) {
        bool ok = c.reach_spaces.empty() || std::ranges::count(c.reach_spaces, s) > 0;
        if (c.reach_side == "left") ok = ok && is_left_as_hung(panel, layout, s);
        if (c.reach_side == "right") ok = ok && is_right_as_hung(panel, layout, s);
        found[static_cast<std::size_t>(s)] = ok;
    }
    return found;
}

bool is_reach_limited(typed::Panel const& panel, typed::Circuit const& c) {
    if (c.reach_side.empty() && c.reach_spaces.empty()) return false;
    auto const found = reachable(panel, c);
    return std::find(found.begin() + 1, found.end(), false) != found.end();
}

OnIs on_is(typed::Panel const& panel, int space) {
    if (panel.hang == Hang::upright || panel.hang == Hang::upside_down) return OnIs::sideways;
    bool const first_left = panel.first == Corner::top_left || panel.first == Corner::bottom_left;
    bool const left = (Layout(panel).position(space).column == 0) == first_left;
    // Turned left, the panel's top points left and its right column comes to lie above.
    bool const above = left == (panel.hang == Hang::turned_right);
    return above ? OnIs::down : OnIs::up;
}

} // namespace legwork
