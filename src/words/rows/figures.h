// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How figures, quantities, dates, lists and breakers are written.
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
    Row{"list/stop", "{words}."},
    Row{"breaker/two-pole", "2P {breaker}", "2P 20 A: a two-pole breaker"},
    Row{"breaker/unlike", "{one} and {other}", "two breakers of one cable: 15 and 20 A"},
    Row{"breaker/largest", "max {amps}: {gauge} downstream", "max 15 A: 14 AWG downstream"},
};

} // namespace legwork
