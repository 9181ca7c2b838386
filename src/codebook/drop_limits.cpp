// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/drop_limits.h"

namespace legwork {

namespace {
constexpr DropLimits kNec{
    .part_percent = {3, Source::seen},
    .total_percent = {5, Source::seen},
    .unknown_percent = {80, Source::practice},
    .demanded = false,
    .dwelling_lengths = {},
};
constexpr DropLimits kCe{
    .part_percent = {3, Source::seen},
    .total_percent = {5, Source::seen},
    .unknown_percent = {80, Source::seen},
    .demanded = true,
    .dwelling_lengths = "8-102(3), Table 68 (number from memory)",
};
} // namespace

DropLimits const& drop_limits(CodeBook const& book) { return book.family == Family::nec ? kNec : kCe; }

} // namespace legwork
