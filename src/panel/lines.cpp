// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "panel/lines.h"

#include <algorithm>

namespace legwork {

namespace {

std::vector<std::vector<int>> facing_lines(Layout const& layout) {
    std::vector<std::vector<int>> lines;
    for (int row = 1; row <= layout.rows(); ++row) {
        lines.emplace_back();
        for (int column = 0; column < 2; ++column)
            if (auto const s = layout.space_at({column, row})) lines.back().push_back(*s);
    }
    return lines;
}

} // namespace

Legs legs(std::vector<Feed> const& feeds) {
    auto const has = [&](auto what) { return std::ranges::any_of(feeds, what); };
    if (has([](Feed const& f) { return has_two_hots(f.kind); })) return Legs::two;
    auto const reached = [&](Leg l) { return has([l](Feed const& f) { return energizes(f, l); }); };
    return reached(Leg::a) && reached(Leg::b) ? Legs::in_phase : Legs::one;
}

std::vector<std::vector<int>> pair_lines(typed::Panel const& panel, Legs legs) {
    Layout const layout(panel);
    if (legs == Legs::two && panel.bus_legs == BusLegs::by_column) return facing_lines(layout);
    std::vector<std::vector<int>> lines;
    for (int column = 0; column < 2; ++column) {
        lines.emplace_back();
        for (int row = 1; row <= layout.rows(); ++row) {
            auto const s = layout.space_at({column, row});
            if (!s) continue;
            auto const& line = lines.back();
            if (legs == Legs::two && !line.empty() && layout.leg(line.back()) == layout.leg(*s)) lines.emplace_back();
            lines.back().push_back(*s);
        }
    }
    return lines;
}

bool takes_two_poles(typed::Panel const& panel, Legs legs) {
    return legs != Legs::two || panel.bus_legs != BusLegs::by_column;
}

} // namespace legwork
