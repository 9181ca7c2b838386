// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Colours of wires and tape, and why a wire is taped.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kWireRows{
    Row{"colour/black", "black"},
    Row{"colour/red", "red"},
    Row{"colour/blue", "blue"},
    Row{"colour/white", "white"},
    Row{"colour/grey", "grey"},
    Row{"colour/gray", "gray"},
    Row{"colour/green", "green"},
    Row{"colour/bare", "bare"},
    Row{"colour/brown", "brown"},
    Row{"colour/orange", "orange"},
    Row{"colour/yellow", "yellow"},
    Row{"colour/violet", "violet"},
    Row{"colour/purple", "purple"},
    Row{"colour/pink", "pink"},
    Row{"colour/tan", "tan"},
    Row{"colour/turquoise", "turquoise"},
    Row{"colour/silver", "silver"},
    Row{"colour/gold", "gold"},
    Row{"colour/natural", "natural"},
    Row{"colour/striped", "{ground} with {stripe} stripe"},
    Row{"colour/with", "{ground} with {other}"},
    Row{"colour/two", "{ground}/{other}"},
    Row{"reference/practice", "common practice"},
    Row{"reference/unread", "{edition} (not read yet)"},
    Row{"reference/number", "{section} (number from memory)"},
    Row{"reference/numbers", "{section} (numbers from memory)"},
    Row{"reference/second-number", "{section} (second number from memory)"},
    Row{"reference/two-numbers", "{section} (two numbers from memory)"},
};

} // namespace legwork
