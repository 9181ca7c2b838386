// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The panel directory: one sheet a panel, drawn as the panel hangs.
#pragma once

#include "sheet/sheets.h"

namespace legwork {

std::vector<Sheet> compose_directory(SheetInput const& input, Form const& form);

// Each circuit that has a name, and whether its line on this form shows the whole of it.
std::vector<Printed::Name> names_on_lines(Building const& building, Plan const& plan, Form const& form,
                                          TextWidth const& widths);

} // namespace legwork
