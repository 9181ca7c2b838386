// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit's outlets are and where they stand, for the rules that judge by place.
#pragma once

#include "building/building.h"
#include "codebook/protection.h"

#include <vector>

namespace legwork {

// From room, name, use and building; of a circuit that names no building, its panel's.
Outlets outlets_of(Building const& building, Circuit const& circuit);
// The circuit's own first, then what each of the other things on it makes of them: "Lights and plugs".
std::vector<Outlets> outlets_by_thing(Building const& building, Circuit const& circuit,
                                      std::vector<Use const*> const& things);

} // namespace legwork
