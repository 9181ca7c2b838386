// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Colours of insulation and tape as drawn. They only repeat the word beside them.
#pragma once

#include "sheet/pen.h"

#include <string_view>

namespace legwork {

// A short thick piece of the conductor, lying between x and x + width about the height y. A word that is no colour we
// know leaves it unfilled.
void add_wire(Pen const& pen, Mm x, Mm y, Mm width, std::string_view color);
// A band of tape round the middle of such a piece.
void add_tape(Pen const& pen, Mm x, Mm y, Mm width, std::string_view color);

} // namespace legwork
