// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where a sheet of die-cut labels says what job it is of: in the margins around the labels, or where those are too
// narrow for a printer on the first labels of each page.
#pragma once

#include "sheet/common.h"
#include "sheet/sheets.h"

#include <string>
#include <vector>

namespace legwork {

bool margins_hold_imprint(SheetInput const& input, Form const& form);
void add_margins(Pen const& pen, SheetInput const& input, Form const& form, std::size_t number, std::size_t pages);

// The lines of each carrier label, as many labels as it takes. `page`: "page 1 of 3"; nothing on a roll, which has no
// pages to its reader.
std::vector<std::vector<std::string>> carrier_labels(SheetInput const& input, Rect area, Phrase const& page);
void add_carrier(Pen const& pen, Rect area, std::vector<std::string> const& lines);

} // namespace legwork
