// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The words of one line of the directory, set into the room they have.
#pragma once

#include "page/page.h"
#include "page/text_width.h"

#include <string>
#include <vector>

namespace legwork {

struct CellWords {
    std::string name;
    Weight weight = Weight::bold;
    std::string place;
    std::vector<std::string> warnings, remarks;
    std::string more_below; // stands in for what did not fit
};

struct CellLine {
    Mm x = 0, y = 0; // from the left of the cell; from the first baseline, downwards
    Mm x_height = 0;
    Weight weight = Weight::regular;
    std::string words;
};

struct CellText {
    std::vector<CellLine> lines;
    Mm above = 0, below = 0;           // height over and depth under the first baseline
    bool shortened = false;            // the name
    std::vector<std::string> left_out; // what did not fit; the cell says "more below"
};

struct CellSizes {
    Mm name, detail; // the largest x-heights wanted
};

// Smaller letters first, then more lines, then what is least needed is left out (for a list under the panel):
// remarks, warnings, the place; the name is shortened last.
CellText set_cell(TextWidth const& widths, CellWords const& words, Mm width, Mm height, CellSizes sizes);

// From one baseline to the next, between sizes.
Mm line_step(Mm above, Mm below);

} // namespace legwork
