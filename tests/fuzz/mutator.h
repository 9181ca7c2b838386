// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "fuzz/dice.h"

#include <string>
#include <string_view>

namespace fuzz {

// Each target's own: another input like this one.
std::string changed(std::string_view text, Dice& dice);

} // namespace fuzz
