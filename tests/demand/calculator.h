// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A pocket calculator: follows the arithmetic that is printed beside a step.
#pragma once

#include "demand/load.h"

#include <string>

namespace made {

// What does not come out as the line says, to the VA; empty when all does. `lines` counts what was keyed in.
std::string wrong_arithmetic(legwork::LoadStep const& step, int& lines);

} // namespace made
