// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The panel directory: one sheet a panel, drawn as the panel hangs.
#pragma once

#include "sheet/sheets.h"

namespace legwork {

std::vector<Sheet> compose_directory(SheetInput const& input, Form const& form);

// Marks of the circuits whose name does not fit this form whole.
std::vector<std::string> shortened_names(typed::Job const& job, Plan const& plan, Form const& form, TextWidth const& widths);

} // namespace legwork
