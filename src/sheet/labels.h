// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Wire labels on die-cut sheets.
#pragma once

#include "sheet/sheets.h"

#include <vector>

namespace legwork {

// Two labels for each end of each cable, markers for the conductors of shared cables. None for a spare; no sheet when
// there is nothing to label or the form has no labels.
std::vector<Sheet> compose_labels(SheetInput const& input, Form const& form);

// What each cable feeds, and whatever else of it some label of this form does not show whole. A label so low that it
// has the mark alone asks for no more.
std::vector<Printed::Name> names_on_labels(SheetInput const& input, Form const& form);

} // namespace legwork
