// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A turned panel in small: two rows of breakers as they hang, each with its space and mark, so that the lines below
// can stay upright.
#pragma once

#include "sheet/directory_block.h"
#include "sheet/pen.h"

namespace legwork {

inline constexpr Mm kMapHeight = 34;

void add_panel_map(Pen const& pen, BlockInput const& input, std::string const& main_words, Mm x, Mm y, Mm width);

} // namespace legwork
