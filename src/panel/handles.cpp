// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "panel/handles.h"

#include "panel/layout.h"

namespace legwork {

OnIs on_is(typed::Panel const& panel, int space) {
    if (panel.hang == Hang::upright || panel.hang == Hang::upside_down) return OnIs::sideways;
    bool const first_left = panel.first == Corner::top_left || panel.first == Corner::bottom_left;
    bool const left = (Layout(panel).position(space).column == 0) == first_left;
    // Turned left, the panel's top points left and its right column comes to lie above.
    bool const above = left == (panel.hang == Hang::turned_right);
    return above ? OnIs::down : OnIs::up;
}

} // namespace legwork
