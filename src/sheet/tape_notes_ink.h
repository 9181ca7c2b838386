// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Colours of insulation and tape as drawn. They only repeat the word beside them.
#pragma once

#include "page/page.h"

#include <string_view>

namespace legwork {

// A short thick piece of the conductor, lying between x and x + width about the height y. A word that is no colour we
// know leaves it unfilled.
void add_wire(Page& page, Mm x, Mm y, Mm width, std::string_view color);
// A band of tape round the middle of such a piece.
void add_tape(Page& page, Mm x, Mm y, Mm width, std::string_view color);

} // namespace legwork
