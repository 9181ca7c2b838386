// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A form's labels as places to print on. Whoever composes a label's face asks nothing else of the stock.
#pragma once

#include "sheet/form.h"
#include "sheet/pen.h"

#include <span>
#include <vector>

namespace legwork {

struct Cell {
    Turned place;            // as cut
    std::vector<Rect> faces; // where text may stand, in the place's own coordinates; two on each side of a fold

    friend bool operator==(Cell const&, Cell const&) = default;
};

// The places of one page in reading order, those to be skipped left out; of a roll, of the longest page. None on a form
// without labels. All faces are of one size, the least that any of them has, so that labels look alike: it may be
// nothing. Text keeps clear of the die, and of what the printer does not reach.
std::vector<Cell> cells(Form const& form);

// How long the page is on which these of a form's cells are used.
Mm page_height(Form const& form, std::span<Cell const> used);

} // namespace legwork
