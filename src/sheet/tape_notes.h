// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Tape notes: a card for each box and panel, to be cut out and taken along.
#pragma once

#include "sheet/sheets.h"

#include <vector>

namespace legwork {

// Every conductor at every end: its colour as made, its job, where it lands, its tape and whether the code allows that.
// No sheet when no circuit has a cable.
std::vector<Sheet> compose_tape_notes(SheetInput const& input, Form const& form);

// Each cable, and whether its notes on this form say whole what they say; titles of cards that are cut.
std::vector<Printed::Name> names_on_notes(SheetInput const& input, Form const& form);

} // namespace legwork
