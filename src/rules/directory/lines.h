// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The lines of the directory, as the rules about names read them.
#pragma once

#include "building/building.h"

#include <string>

namespace legwork {

bool has_name(Circuit const& c);
std::string quoted(Circuit const& c); // "\"Lights\", Loft"

} // namespace legwork
