// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How many feeders or branch circuits may supply one outbuilding.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

struct OutbuildingSupplies {
    bool one_only;                 // the code demands it; else it is custom
    Figure feeders_from_one_panel; // so many feeders (no branch circuits) may do where all begin in one panel
    Figure other_volts;            // supplies that may do where each has its own voltage
};

// Sources: NEC 225.30, one supply, as trade pages tell it; its exceptions by texts of the editions: different voltages,
// and from 2020 on up to six feeders of one panel whose disconnects stand together. The CE Code: no rule found.
inline OutbuildingSupplies const& outbuilding_supplies(CodeBook const& book) { return book.outbuilding.table(); }

} // namespace legwork
