// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The load sheet.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kLoadRows{
    Row{"load/title", "Load calculation"},
};

} // namespace legwork
