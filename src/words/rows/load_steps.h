// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The steps of a load calculation, their arithmetic, and what comes of them.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kLoadStepRows{
    Row{"load/plus", "{terms} + {more}"},
    Row{"load/equals", "{terms} = {sum}"},
    Row{"load/equals-va", "{terms} = {va} VA"},
};

} // namespace legwork
