// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How figures, quantities, dates and lists are written.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kFigureRows{
    Row{"figure/decimal", "{whole}.{part}"},
    Row{"figure/thousands", "{thousands}{rest}", "12500: thousands 12, rest 500"},
    Row{"figure/with-unit", "{figure} {unit}", "20 A"},
    Row{"figure/date", "{year}-{month}-{day}"},
    Row{"list/comma", "{words}, {more}"},
    Row{"list/semicolon", "{words}; {more}"},
    Row{"list/sentences", "{words} {more}"},
    Row{"list/or", "{words} or {more}"},
};

} // namespace legwork
