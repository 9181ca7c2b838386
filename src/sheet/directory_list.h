// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Lists around the lines of the directory: a bold lead in a column of its own, then words, wrapped.
#pragma once

#include "page/text_width.h"
#include "sheet/pen.h"

#include <string>
#include <vector>

namespace legwork {

struct ListRow {
    std::string lead, words; // no lead: the words take the whole width
};

// The list is no higher than that, whatever the face; infinite with letters that are not usual ones.
Mm greatest_height(std::vector<ListRow> const& rows, Mm width, Mm x_height);

class List {
public:
    List(TextWidth const& widths, std::vector<ListRow> const& rows, Mm width, Mm x_height);

    bool empty() const { return lines_.empty(); }
    std::size_t lines() const { return lines_.size(); }
    // From the top of the first line to the lowest descender of the last.
    Mm height() const { return height(0, lines_.size()); }
    Mm height(std::size_t from, std::size_t to) const;
    // Lines from `from` on that fit into this height.
    std::size_t fitting(std::size_t from, Mm height) const;
    void add(Pen const& pen, Mm x, Mm top, std::size_t from, std::size_t to) const;
    void add(Pen const& pen, Mm x, Mm top) const { add(pen, x, top, 0, lines_.size()); }

private:
    struct SetLine {
        std::string lead, words;
        Mm x = 0;     // of the words
        Mm above = 0; // from the baseline before
    };
    Mm size_;
    std::vector<SetLine> lines_;
};

} // namespace legwork
