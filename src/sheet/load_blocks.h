// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Pieces of a page from top to bottom that are never cut, and the pages they fill.
#pragma once

#include "sheet/common_frame.h"

#include <vector>

namespace legwork {

struct Block {
    std::vector<Mark> marks; // from the left and top of where it is put
    Mm height = 0;
    Mm above = 0;           // white above it, except at the top of a page
    bool with_next = false; // not the last of a page, when both fit on one
    int head = -1;          // of which head is repeated where it begins a page; none
};
using Blocks = std::vector<Block>;

// Pages of the form with the blocks in this order; a page holds one at least.
std::vector<Page> in_pages(Form const& form, Rect room, Blocks const& blocks, Blocks const& heads);

} // namespace legwork
