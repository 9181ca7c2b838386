// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/directory_block.h"

#include <algorithm>
#include <cmath>

namespace legwork {

// `first` is a corner of the panel as its maker's cover reads upright; `hang` then turns the whole. Turned left, its
// top points left and its right column becomes the upper row; turned right, its top points right and its left column
// does.
Hanging::Hanging(Panel const& panel)
    : layout_(panel.layout),
      main_at_(panel.main_at),
      rows_reversed_(panel.first == Corner::bottom_left || panel.first == Corner::bottom_right),
      columns_swapped_(panel.first == Corner::top_right || panel.first == Corner::bottom_right),
      turned_(panel.hang == Hang::turned_left || panel.hang == Hang::turned_right),
      by_column_(panel.bus_legs == BusLegs::by_column) {
    if (panel.hang == Hang::upside_down || panel.hang == Hang::turned_left) columns_swapped_ = !columns_swapped_;
    if (panel.hang != Hang::upside_down && panel.hang != Hang::turned_right) return;
    rows_reversed_ = !rows_reversed_;
    if (main_at_) main_at_ = *main_at_ == PanelEnd::top ? PanelEnd::bottom : PanelEnd::top;
}

Hanging::Stretch Hanging::stretch(Spot slot) const {
    auto const [column, row] = layout_.position(slot.space);
    // Half a lies towards the lower rows: 7b and 9a, the inner pair of a quad, touch.
    double from = row - 1 + (slot.half == 'b' ? 0.5 : 0), to = row - (slot.half == 'a' ? 0.5 : 0);
    if (rows_reversed_) {
        from = rows() - from;
        to = rows() - to;
        std::swap(from, to);
    }
    return {columns_swapped_ ? 1 - column : column, from, to};
}

Leg Hanging::leg_of_row(int row) const {
    int const own = rows_reversed_ ? rows() - row : row + 1;
    return layout_.leg(layout_.space_at({0, own}).value_or(1));
}

Leg Hanging::leg_of_column(int column) const {
    int const own = columns_swapped_ ? 1 - column : column;
    return layout_.leg(layout_.space_at({own, 1}).value_or(1));
}

std::optional<PanelEnd> Hanging::main_end() const { return main_at_; }

std::vector<Hanging::Stretch> stretches(Hanging const& hanging, std::vector<Spot> const& slots) {
    std::vector<Hanging::Stretch> found;
    for (Spot const s : slots) found.push_back(hanging.stretch(s));
    if (found.size() != 2 || found[0].column != found[1].column) return found;
    if (found[0].from > found[1].from) std::swap(found[0], found[1]);
    if (found[0].to != found[1].from) return found;
    return {{found[0].column, found[0].from, found[1].to}};
}

std::vector<BlockSpan> page_spans(Hanging const& hanging, PanelEntries const& entries, int most) {
    int const rows = hanging.rows();
    most = std::max(most, 2);
    // joined[i]: something spans the edge between rows i - 1 and i.
    std::vector<bool> joined(static_cast<std::size_t>(rows) + 1, false);
    auto const join = [&](std::vector<Spot> const& slots) {
        double from = rows, to = 0;
        for (Spot const s : slots) {
            auto const at = hanging.stretch(s);
            from = std::min(from, at.from);
            to = std::max(to, at.to);
        }
        for (int i = static_cast<int>(std::floor(from)) + 1; i < static_cast<int>(std::ceil(to)); ++i)
            joined[static_cast<std::size_t>(i)] = true;
    };
    for (Entry const& e : entries.entries) join(e.slots);
    for (HandleTie const& t : entries.ties) join({t.first, t.second});

    std::vector<BlockSpan> spans;
    for (int from = 0; from < rows;) {
        int const pages_left = (rows - from + most - 1) / most;
        int const wanted = from + (rows - from + pages_left - 1) / pages_left; // pages of equal length
        int to = wanted;
        if (pages_left > 1) {
            auto const free = [&](int i) {
                return i > from && i <= from + most && !joined[static_cast<std::size_t>(i)];
            };
            for (int off = 0; off < most; ++off) {
                if (free(wanted - off)) {
                    to = wanted - off;
                    break;
                }
                if (free(wanted + off)) {
                    to = wanted + off;
                    break;
                }
            }
        }
        spans.push_back({from, to});
        from = to;
    }
    return spans;
}

} // namespace legwork
