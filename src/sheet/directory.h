// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The panel directory: one sheet a panel, drawn as the panel hangs.
#pragma once

#include "sheet/sheets.h"

namespace legwork {

std::vector<Sheet> compose_directory(SheetInput const& input, Form const& form);

// Each circuit that has a name, and whether its line on this form shows the whole of it. Panels whose names surely fit
// are not laid out.
std::vector<Printed::Name> names_on_lines(SheetInput const& input, Form const& form);
// The same, every panel laid out: what the short way is held against.
std::vector<Printed::Name> names_on_laid_out_lines(SheetInput const& input, Form const& form);

} // namespace legwork
