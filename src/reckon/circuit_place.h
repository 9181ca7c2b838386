// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit's outlets are and where they stand, for the rules that judge by place.
#pragma once

#include "building/building.h"
#include "codebook/protection.h"

namespace legwork {

// From room, name, use and building; of a circuit that names no building, its panel's.
Outlets outlets_of(Building const& building, Circuit const& circuit);

} // namespace legwork
