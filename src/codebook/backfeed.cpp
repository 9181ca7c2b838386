// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/backfeed.h"

namespace legwork {

namespace {
// NEC 2017 705.12(B)(2)(3), 2020 705.12(B)(3), 2023 705.12(B): read on trade pages, the sum of all breakers from
// memory.
constexpr BackfeedTable kNec{
    .bus_percent = {120, Source::seen},
    .dwelling_bus_percent = {120, Source::seen},
    .output_percent = Figure{125, Source::seen},
    .all_breakers = Source::memory,
};
// CE 64-112(4), from memory: the ratings of the overcurrent devices that supply the bus.
constexpr BackfeedTable kCe{
    .bus_percent = {120, Source::memory},
    .dwelling_bus_percent = {125, Source::memory},
    .output_percent = {},
    .all_breakers = {},
};
} // namespace

BackfeedTable const& backfeed(CodeBook const& book) { return book.family == Family::nec ? kNec : kCe; }

} // namespace legwork
