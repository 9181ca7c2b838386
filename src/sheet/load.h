// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The load calculation of each panel on AC, to be followed with a pocket calculator and handed in with a permit form.
#pragma once

#include "sheet/sheets.h"

namespace legwork {

std::vector<Sheet> compose_load(SheetInput const& input, Form const& form);

} // namespace legwork
