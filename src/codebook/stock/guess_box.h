// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the name of a box proposes, as guess_use does for a circuit.
#pragma once

#include <string_view>

namespace legwork {

// "Switch", "three-way switch, hall": the box that a switch loop ends at.
bool is_switch_box(std::string_view name);

} // namespace legwork
