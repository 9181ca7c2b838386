// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a panel's bus may take from an interactive source (solar, battery) beside its main.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

struct BackfeedTable {
    // Main and source together, percent of the bus, when they stand at opposite ends of it. Within 100 % of the bus the
    // source may stand anywhere.
    Figure bus_percent, dwelling_bus_percent;
    // What counts of the source: percent of its output; nothing: the rating of its breaker.
    std::optional<Figure> output_percent;
    // All breakers, of loads and of sources but not the main, within 100 % of the bus will do too, with a sign that
    // keeps it so. Nothing: no such choice.
    std::optional<Source> all_breakers;
};
inline BackfeedTable const& backfeed(CodeBook const& book) { return book.backfeed; }

} // namespace legwork
